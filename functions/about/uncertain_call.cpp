#include "functions/about/uncertain_call.hpp"

#include "functions/uncertainty/correlations.hpp"

#include <algorithm>

namespace hearthcell {
namespace {

/// Walks through a block in its order, texts included.
class Cells {
public:
    explicit Cells(Block const& values) : block(values) {}

    Value next() {
        double const number = block.numbers[place++];
        if (text < block.texts.size() && block.texts[text].place + 1 == place)
            return block.texts[text++].text;
        return is_absent(number) ? Value() : Value(number);
    }

private:
    Block const& block;
    std::size_t place = 0, text = 0;
};

std::size_t without_blanks_at_the_end(Block const& block) {
    std::size_t count = block.numbers.size();
    while (count > 0 && is_absent(block.numbers[count - 1]))
        --count;
    return count;
}

Failure of_argument(Reason reason, unsigned argument, std::size_t place) {
    return {reason, argument, unsigned(place + 1)};
}

/// The values, read just as a cell's own call would read them.
void read_values(Doubt& doubt, Block const& values) {
    List<Argument, most_arguments> const& arguments = doubt.function->arguments;
    doubt.given = without_blanks_at_the_end(values);
    if (doubt.given > arguments.size()) {
        doubt.failure = of_argument(Reason::too_many_values, doubt_argument::values, arguments.size());
        return;
    }
    std::array<Scalar, most_arguments> scalars;
    Cells cells(values);
    unsigned numbers = 0;
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        Value const value = i < doubt.given ? cells.next() : Value();
        scalars[i] = read_scalar(arguments[i], value);
        doubt.known[i] = std::holds_alternative<double>(value);
        doubt.number_of[i] = arguments[i].kind == Kind::choice ? no_argument : numbers++;
    }
    doubt.at = resolve(*doubt.function, std::span(scalars).first(arguments.size()));
    doubt.failure = doubt.at.failure;
    doubt.inside = doubt.failure.reason != Reason::none;
}

void read_uncertainties(Doubt& doubt, Block const& values, Block const& given) {
    if (given.numbers.size() != values.numbers.size()) {
        doubt.failure = {Reason::uncertainties_differ, doubt_argument::uncertainties};
        return;
    }
    for (std::size_t i = 0; i < given.numbers.size(); ++i) {
        double const u = is_absent(given.numbers[i]) ? 0 : given.numbers[i];
        if (u == 0)
            continue;
        if (i >= doubt.given || !doubt.known[i]) {
            doubt.failure = of_argument(Reason::uncertainty_without_value, doubt_argument::uncertainties, i);
            return;
        }
        Argument const& argument = doubt.function->arguments[i];
        if (u > (argument.high - argument.low) / 2) { // whatever lies within bounds scatters no wider
            doubt.failure = of_argument(Reason::uncertainty_too_large, doubt_argument::uncertainties, i);
            return;
        }
        doubt.uncertainties[doubt.number_of[i]] = u;
    }
}

/// From one row a value to one row a number of the kernel.
void read_correlations_of(Doubt& doubt, Block const& values, Value const& given) {
    if (!std::holds_alternative<Block>(given)) // left out
        return;
    std::size_t const cells = values.numbers.size();
    Correlations const read = read_correlations(std::get<Block>(given), cells);
    doubt.failure = read.failure;
    doubt.failure.argument = doubt_argument::correlations;
    if (read.failure.reason != Reason::none)
        return;
    std::size_t const numbers = doubt.equation().numbers;
    doubt.correlations.assign(numbers * numbers, 0);
    for (std::size_t i = 0; i < cells; ++i) {
        for (std::size_t j = 0; j < cells; ++j) {
            double const coefficient = read.coefficients[i * cells + j];
            if (i == j || coefficient == 0)
                continue;
            if (i >= doubt.given || j >= doubt.given || !doubt.known[i] || !doubt.known[j]) {
                doubt.failure =
                    of_argument(Reason::correlation_without_value, doubt_argument::correlations, i * cells + j);
                return;
            }
            doubt.correlations[doubt.number_of[i] * numbers + doubt.number_of[j]] = coefficient;
        }
    }
    for (std::size_t i = 0; i < numbers; ++i)
        doubt.correlations[i * numbers + i] = 1;
    if (!can_be_together(doubt.correlations, numbers))
        doubt.failure = {Reason::correlations_contradict, doubt_argument::correlations};
}

} // namespace

Inputs Doubt::inputs() const {
    Numeric const& kernel = equation();
    return {std::span(at.numbers).first(kernel.numbers), std::span(at.choices).first(kernel.choices),
            std::span(uncertainties).first(kernel.numbers), correlations};
}

std::size_t Doubt::place_of(unsigned number) const {
    return std::size_t(std::ranges::find(number_of, number) - number_of.begin());
}

Doubt read_doubt(std::span<Value const> given) {
    Doubt doubt;
    doubt.function = find_function(std::get<std::string>(given[doubt_argument::function_name]));
    if (doubt.function == nullptr) {
        doubt.failure = {Reason::unknown_name, doubt_argument::function_name};
        return doubt;
    }
    if (!is_differentiable(*doubt.function)) {
        doubt.failure = {Reason::not_differentiable, doubt_argument::function_name};
        return doubt;
    }
    Block const& values = std::get<Block>(given[doubt_argument::values]);
    doubt.coverage = std::get<double>(given[doubt_argument::coverage]);
    read_values(doubt, values);
    if (doubt.failure.reason == Reason::none)
        read_uncertainties(doubt, values, std::get<Block>(given[doubt_argument::uncertainties]));
    if (doubt.failure.reason == Reason::none)
        read_correlations_of(doubt, values, given[doubt_argument::correlations]);
    return doubt;
}

Propagated propagate(Doubt& doubt) {
    Propagated const result = propagate(doubt.equation(), doubt.inputs());
    Failure const why = failure_of(result.value);
    if (why.reason == Reason::no_finite_slope) {
        doubt.failure = of_argument(why.reason, doubt_argument::uncertainties, doubt.place_of(why.argument));
        return result;
    }
    Result const& range = doubt.function->result;
    bool const in_range = result.value >= range.low && result.value <= range.high; // false for a failure
    if (!in_range) {
        doubt.failure = why.reason == Reason::none ? Failure{Reason::result_out_of_range} : why;
        doubt.inside = true;
    }
    return result;
}

std::vector<Value> inner_arguments(Block const& values) {
    std::vector<Value> arguments;
    Cells cells(values);
    for (std::size_t left = without_blanks_at_the_end(values); left > 0; --left)
        arguments.push_back(cells.next());
    return arguments;
}

} // namespace hearthcell
