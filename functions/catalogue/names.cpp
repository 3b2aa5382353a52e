#include "functions/catalogue/names.hpp"

#include <algorithm>

namespace hearthcell {
namespace {
// The C library's tolower asks the locale; names are plain ASCII.
constexpr char lower(char c) {
    return c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c;
}
} // namespace

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    return text;
}

bool same_name(std::string_view a, std::string_view b) {
    return std::ranges::equal(trimmed(a), trimmed(b), [](char x, char y) { return lower(x) == lower(y); });
}

Named const* find_name(NameTable const& table, std::string_view name) {
    auto const row = std::ranges::find_if(table.rows, [&](Named const& named) { return same_name(named.name, name); });
    return row == table.rows.end() ? nullptr : &*row;
}

} // namespace hearthcell
