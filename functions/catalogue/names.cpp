#include "functions/catalogue/names.hpp"

namespace hearthcell {

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    return text;
}

bool answers_to(Named const& row, std::string_view name) {
    bool found = false;
    for_every_name(row, [&](std::string_view one) { found = found || same_name(one, name); });
    return found;
}

namespace {

/// The name behind a fingerprint: those of a row stand together, its languages first.
std::string_view name_behind(NameTable const& table, std::size_t place) {
    std::size_t const row = table.fingerprints[place].row;
    std::size_t first = place;
    while (first > 0 && table.fingerprints[first - 1].row == row)
        --first;
    std::size_t const which = place - first;
    Named const& named = table.rows[row];
    return which < languages.size() ? named.name.in(languages[which]) : named.also[which - languages.size()];
}

} // namespace

NamedRows find_name(NameTable const& table, std::string_view name) {
    std::uint32_t const wanted = fingerprint(name);
    NamedRows found;
    Named const* last = nullptr; // a row may answer to one name in two languages
    for (std::size_t i = 0; i < table.fingerprints.size(); ++i) {
        auto const& [hash, row] = table.fingerprints[i];
        if (hash != wanted || &table.rows[row] == last || !same_name(name_behind(table, i), name))
            continue;
        last = &table.rows[row];
        found = {found.count == 0 ? last : found.first, found.count + 1};
    }
    return found;
}

} // namespace hearthcell
