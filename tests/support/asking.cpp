#include "support/asking.hpp"

#include <cmath>
#include <limits>

namespace hearthcell::tests {
namespace {

Block block_of(std::size_t rows, std::size_t columns, std::vector<Value> const& cells) {
    Block block{rows, columns, {}, {}};
    for (Value const& cell : cells) {
        if (std::string const* text = std::get_if<std::string>(&cell)) {
            block.texts.push_back({block.numbers.size(), *text});
            block.numbers.push_back(text_in_block);
        } else {
            double const* number = std::get_if<double>(&cell);
            block.numbers.push_back(number != nullptr ? *number : absent);
        }
    }
    return block;
}

} // namespace

Value column(std::vector<Value> const& cells) {
    return block_of(cells.size(), 1, cells);
}

Value row(std::vector<Value> const& cells) {
    return block_of(1, cells.size(), cells);
}

Value square(std::vector<Value> const& cells) {
    auto const side = std::size_t(std::lround(std::sqrt(double(cells.size()))));
    return block_of(side, side, cells);
}

Outcome ask(std::string const& function, std::vector<Value> const& arguments) {
    return call(*find_function(function), arguments);
}

std::string explained(std::string const& function, std::vector<Value> arguments) {
    arguments.insert(arguments.begin(), function);
    Outcome const outcome = ask("EXPLAIN", arguments);
    std::string const* text = std::get_if<std::string>(&outcome);
    return text != nullptr ? *text : "no text";
}

double number(Outcome const& outcome) {
    if (double const* found = std::get_if<double>(&outcome))
        return *found;
    ADD_FAILURE() << "no number, but reason " << int(failure_in(outcome).reason);
    return std::numeric_limits<double>::quiet_NaN();
}

Block block(Outcome const& outcome) {
    if (Block const* found = std::get_if<Block>(&outcome))
        return *found;
    ADD_FAILURE() << "no block";
    return {};
}

Failure failure_in(Outcome const& outcome) {
    if (Failure const* found = std::get_if<Failure>(&outcome))
        return *found;
    ADD_FAILURE() << "no failure";
    return {};
}

} // namespace hearthcell::tests
