#include "contents.hpp"

#include <charconv>

namespace hearthcell::storm {

std::string column_letters(int column) {
    std::string letters;
    for (int rest = column; rest >= 0; rest = rest / 26 - 1)
        letters.insert(letters.begin(), char('A' + rest % 26));
    return letters;
}

std::string address(int row, int column) {
    return column_letters(column) + std::to_string(row + 1);
}

std::string address(Area const& area) {
    if (area.one_cell)
        return address(area.top, area.left);
    if (area.whole_columns())
        return column_letters(area.left) + ":" + column_letters(area.right);
    return address(area.top, area.left) + ":" + address(area.bottom, area.right);
}

std::string in_formula(double number, int significant_digits) {
    char buffer[32];
    auto const [end, error] =
        std::to_chars(buffer, buffer + sizeof buffer, number, std::chars_format::general, significant_digits);
    return {buffer, end};
}

} // namespace hearthcell::storm
