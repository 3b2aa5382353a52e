#pragma once
// Calls of catalogue functions as a cell holds them, and what the kernel itself says of the same call.

#include "calc.hpp"

#include "functions/catalogue/catalogue.hpp"

#include <map>

namespace hearthcell::tests {

/// One call: the argument texts of a formula, and the same as the kernel is given them.
struct Call {
    Function const* function;
    std::vector<std::string> texts;
    std::vector<Value> values;

    [[nodiscard]] std::string formula() const;
    /// What the cell must show: the kernel's number, text or kind of error; of a block its first element.
    [[nodiscard]] CellValue expected() const;
};

/// The question to EXPLAIN what is right or wrong with a call.
Call question_about(Call const& call);

/// Turns examples into calls; an example's columns are written into the sheet from column AA on.
class Calls {
public:
    explicit Calls(Sheet& target) : sheet(target) {}
    Call of(Function const& function, Example const& example);

private:
    std::string place(std::span<double const> column);
    Sheet& sheet;
    std::map<double const*, std::string> places; ///< of columns that stand in the sheet already
};

/// The first example of a function that gives no error: a call to be spoilt.
Example const& sound_example(Function const& function);

std::string in_formula(double number);

CellError shown_error(Error error);

} // namespace hearthcell::tests
