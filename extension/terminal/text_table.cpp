#include "extension/terminal/text_table.hpp"

#include <algorithm>

namespace hearthcell {
namespace {

constexpr auto gap = "  ";

bool starts_a_character(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0) != 0x80;
}

std::size_t width(std::string const& text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), starts_a_character));
}

std::string padded(std::string const& text, std::size_t to, bool right) {
    std::string const space(to - std::min(to, width(text)), ' ');
    return right ? space + text : text + space;
}

std::string repeated(std::string const& text, std::size_t times) {
    std::string line;
    while (times-- > 0)
        line += text;
    return line;
}

std::string without_end(std::string line) {
    line.erase(line.find_last_not_of(' ') + 1);
    return line + "\n";
}

} // namespace

std::string draw(TextTable const& table) {
    std::vector<std::size_t> widths(table.numeric.size(), 0);
    for (auto const& row : table.rows)
        for (std::size_t column = 0; column < row.size(); ++column)
            widths.at(column) = std::max(widths.at(column), width(row[column]));

    std::string text;
    for (std::size_t number = 0; number < table.rows.size(); ++number) {
        auto const& row = table.rows[number];
        std::string line;
        std::string rule;
        for (std::size_t column = 0; column < row.size(); ++column) {
            if (widths.at(column) == 0)
                continue;
            line += gap + padded(row[column], widths.at(column), table.numeric.at(column));
            rule += gap + repeated("─", widths.at(column));
        }
        if (line.find_first_not_of(' ') != std::string::npos)
            text += without_end(line);
        if (number + 1 == table.heading_rows)
            text += rule + "\n";
    }
    return text;
}

} // namespace hearthcell
