#include "extension/archive/example/other_values.hpp"

#include "extension/archive/example/constants.hpp"
#include "extension/archive/files/whole_file.hpp"
#include "extension/archive/inventory/words.hpp"
#include "extension/formulas/letters.hpp"
#include "extension/formulas/number.hpp"
#include "extension/formulas/quotes.hpp"

#include <algorithm>
#include <sstream>
#include <stdexcept>

namespace hearthcell::archive {
namespace {

bool is_in_year(std::string_view folder, std::string_view year) {
    for (std::size_t at = folder.find(year); at != std::string_view::npos; at = folder.find(year, at + 1))
        if ((at == 0 || !formulas::is_digit(folder[at - 1])) &&
            (at + year.size() == folder.size() || !formulas::is_digit(folder[at + year.size()])))
            return true;
    return false;
}

/// How exactly it says where a workbook is; 0: that is elsewhere.
std::size_t exactness(std::string_view where, std::string_view relative) {
    constexpr std::size_t as_folder = 10, as_workbook = 100'000;
    if (where == relative)
        return as_workbook;
    if (relative.starts_with(where) && relative.substr(where.size()).starts_with('/'))
        return as_folder + where.size();
    std::size_t start = 0;
    for (std::size_t slash = relative.find('/'); slash != std::string_view::npos; slash = relative.find('/', start)) {
        std::string_view const folder = relative.substr(start, slash - start);
        if (folder == where)
            return as_folder;
        if (where.size() == 4 && std::ranges::all_of(where, formulas::is_digit) && is_in_year(folder, where))
            return 1;
        start = slash + 1;
    }
    return 0;
}

std::string_view trimmed(std::string_view text) {
    std::size_t const first = text.find_first_not_of(" \t\r\"");
    return first == std::string_view::npos ? "" : text.substr(first, text.find_last_not_of(" \t\r\"") + 1 - first);
}

/// As paths are written in reports: './2013/' is '2013'.
std::string_view place(std::string_view where) {
    while (where.starts_with("./"))
        where.remove_prefix(2);
    while (where.ends_with('/'))
        where.remove_suffix(1);
    return where;
}

} // namespace

std::vector<OtherValue> other_values_in(std::filesystem::path const& file) {
    auto const text = content_of(file);
    if (!text)
        throw std::invalid_argument("--values-by-folder: cannot read " + file.string());
    std::vector<OtherValue> values;
    std::istringstream lines(*text);
    int number = 0;
    for (std::string line; std::getline(lines, line);) {
        ++number;
        if (trimmed(line).empty() || line.starts_with('#'))
            continue;
        std::size_t const second = line.rfind(','), first = second == 0 ? 0 : line.rfind(',', second - 1);
        if (second == std::string::npos || first == std::string::npos || first >= second)
            throw std::invalid_argument("--values-by-folder: line " + std::to_string(number) +
                                        " is not 'folder,argument,value'");
        std::string_view const whole = line;
        OtherValue value{std::string(place(trimmed(whole.substr(0, first)))),
                         std::string(trimmed(whole.substr(first + 1, second - first - 1))),
                         std::string(trimmed(whole.substr(second + 1)))};
        if (values.empty() && value.where == "folder" && value.value == "value")
            continue; // headings
        bool const is_per_cent = value.value.ends_with('%');
        std::string_view const digits = std::string_view(value.value).substr(0, value.value.size() - is_per_cent);
        if (value.where.empty() || value.argument.empty() || value.value.empty())
            throw std::invalid_argument("--values-by-folder: something is missing in line " + std::to_string(number));
        if (!formulas::number_in(digits))
            value.value = formulas::quoted(value.value, '"');
        values.push_back(std::move(value));
    }
    return values;
}

bool holds_for(OtherValue const& value, std::string const& relative) {
    return exactness(value.where, relative) > 0;
}

OtherValue const* other_value_of(std::string const& argument, std::vector<OtherValue> const& values,
                                 std::string const& relative) {
    OtherValue const* best = nullptr;
    std::size_t most = 0;
    for (OtherValue const& value : values)
        if (word_key(value.argument) == word_key(argument))
            if (std::size_t const exact = exactness(value.where, relative); exact > most) {
                most = exact;
                best = &value;
            }
    return best;
}

std::string with_other_values(std::string_view formula, std::vector<OtherValue> const& values,
                              std::string const& relative) {
    std::string text(formula);
    std::vector<Constant> constants = constants_in(formula);
    std::ranges::reverse(constants); // so that the others keep their places
    for (Constant const& constant : constants)
        if (OtherValue const* const best =
                constant.is_whole ? other_value_of(constant.argument, values, relative) : nullptr)
            text.replace(constant.start, constant.size, best->value);
    return text;
}

} // namespace hearthcell::archive
