#pragma once
// What the command line says of cells by their names: read without an office.

#include <string>
#include <variant>
#include <vector>

namespace hearthcell::archive {

/// A formula as a user types it into a cell, with = at its front.
struct TypedFormula {
    std::string text;
};

/// "calorific_value=18.2": what --set says. A number (12 % is 12%), a formula ("Results.B5==A1*2"), or else a text.
struct Assignment {
    std::string name;
    std::variant<double, std::string, TypedFormula> value;
};
Assignment read_assignment(std::string const& text); // throws std::invalid_argument

/// "Run.C20=Run.B20": what --compare says, cells, blocks of cells or names.
struct ComparedPair {
    std::string now, old;
};
ComparedPair read_pair(std::string const& text); // throws std::invalid_argument

/// "NAME,NAME,'A sheet, odd'.B4"
std::vector<std::string> split_names(std::string const& list);

} // namespace hearthcell::archive
