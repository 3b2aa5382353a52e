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

NamedRows find_name(NameTable const& table, std::string_view name) {
    std::uint32_t const wanted = fingerprint(name);
    NamedRows found;
    Named const* last = nullptr; // a row may answer to one name in two languages; its fingerprints stand together
    for (auto const& [hash, row] : table.fingerprints) {
        Named const* const candidate = &table.rows[row];
        if (hash != wanted || candidate == last || !answers_to(*candidate, name))
            continue;
        last = candidate;
        found = {found.count == 0 ? candidate : found.first, found.count + 1};
    }
    return found;
}

} // namespace hearthcell
