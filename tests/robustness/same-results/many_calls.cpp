#include "many_calls.hpp"

#include "support/cells.hpp"

#include <cmath>
#include <cstdint>

namespace hearthcell::tests {
namespace {

/// Pseudo-random numbers by splitmix64.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : state(seed) {}

    /// From 0 to below 1.
    double part() {
        state += 0x9E3779B97F4A7C15;
        std::uint64_t mixed = (state ^ state >> 30) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ mixed >> 27) * 0x94D049BB133111EB;
        return double((mixed ^ mixed >> 31) >> 11) * 0x1p-53;
    }

private:
    std::uint64_t state;
};

/// A number near another; now and then one from anywhere in the argument's range.
double moved(double number, Argument const& argument, Dice& dice) {
    double const part = dice.part(), what = dice.part();
    if (what < 0.1 && argument.high > argument.low)
        return argument.low + part * (argument.high - argument.low);
    return what < 0.2 ? number : number * (1 + 0.2 * (part - 0.5));
}

/// Readings that stay a log: each moved by less than it lies from the next.
void move_column(Block& block, Dice& dice) {
    for (double& number : block.numbers)
        if (std::isfinite(number))
            number *= 1 + 0.002 * (dice.part() - 0.5);
}

} // namespace

void for_many_calls(unsigned of_each_example,
                    std::function<void(Function const&, std::span<Value const>)> const& act) {
    Dice dice(20240229);
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (Example const& example : function.examples)
                for (unsigned i = 0; i < of_each_example; ++i) {
                    std::vector<Value> values = values_of({example.arguments.begin(), example.arguments.end()});
                    for (std::size_t place = 0; place < values.size() && i > 0; ++place) {
                        if (double* number = std::get_if<double>(&values[place]))
                            *number = moved(*number, function.arguments[place], dice);
                        if (Block* block = std::get_if<Block>(&values[place]))
                            move_column(*block, dice);
                    }
                    act(function, values);
                }
}

} // namespace hearthcell::tests
