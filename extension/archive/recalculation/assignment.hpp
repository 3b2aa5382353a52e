#pragma once
// What the command line says of cells by their names: read without an office.

#include <string>
#include <variant>
#include <vector>

namespace hearthcell::archive {

/// "calorific_value=18.2": what --set says. A number (12 % is 12%), or else a text.
struct Assignment {
    std::string name;
    std::variant<double, std::string> value;
};
Assignment read_assignment(std::string const& text); // throws std::invalid_argument

/// "NAME,NAME,'A sheet, odd'.B4"
std::vector<std::string> split_names(std::string const& list);

} // namespace hearthcell::archive
