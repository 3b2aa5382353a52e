#pragma once
// Random calls of all functions: from calls that make sense to calls that make none.

#include "operands.hpp"

namespace hearthcell::storm {

class RandomCalls {
public:
    RandomCalls(Chance& chance, Operands& operands);

    /// For the formula in this row of the sheet Calls.
    Call next(int row);

private:
    /// What belongs in an argument, in the form that the catalogue's examples have.
    struct Wanted {
        Argument const* argument = nullptr;
        Cell cell;
    };

    std::vector<Wanted> wanted_for(Function const& function);
    Cell random_cell(Function const& function, Argument const& argument);
    double near(double number, Argument const& argument);
    Operand sensible(Wanted const& wanted, bool nestable);
    Operand odd(bool nestable);
    Operand inner_call();
    Call call(Function const& function, bool nestable);
    void spare_time(Call& call);
    void keep_to_the_rules(Call& call);
    void explain(Function const& function, Call& call);

    Chance& chance_;
    Operands& operands_;
    std::vector<Function const*> functions_;
    int row_ = 0;
};

} // namespace hearthcell::storm
