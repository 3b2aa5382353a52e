#include "functions/about/uncertain_call.hpp"

#include "functions/catalogue/catalogue.hpp"
#include "functions/contract/cells.hpp"
#include "functions/uncertainty/correlations.hpp"

#include <algorithm>

namespace hearthcell {
namespace {

Failure of_argument(Reason reason, unsigned argument, std::size_t place) {
    return {reason, argument, unsigned(place + 1)};
}

/// The values, read just as a cell's own call would read them.
void read_values(UncertainCall& asked, Block const& values) {
    List<Argument, most_arguments> const& arguments = asked.function->arguments;
    asked.given = used_cells(values);
    if (asked.given > arguments.size()) {
        asked.failure = of_argument(Reason::too_many_values, uncertainty_argument::values, arguments.size());
        return;
    }
    std::array<Scalar, most_arguments> scalars;
    Cells cells(values);
    unsigned numbers = 0;
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        Value const value = i < asked.given ? cells.next() : Value();
        scalars[i] = read_argument(*asked.function, i, value);
        asked.known[i] = std::holds_alternative<double>(value);
        asked.number_of[i] = is_chosen(arguments[i].kind) ? no_argument : numbers++;
    }
    asked.at = resolve(*asked.function, std::span(scalars).first(arguments.size()));
    asked.failure = asked.at.failure;
    asked.inside = asked.failure.reason != Reason::none;
}

void read_uncertainties(UncertainCall& asked, Block const& values, Block const& given) {
    if (given.numbers.size() != values.numbers.size()) {
        asked.failure = {Reason::uncertainties_differ, uncertainty_argument::uncertainties};
        return;
    }
    for (std::size_t i = 0; i < given.numbers.size(); ++i) {
        double const u = is_absent(given.numbers[i]) ? 0 : given.numbers[i];
        if (u == 0)
            continue;
        if (i >= asked.given || !asked.known[i]) {
            asked.failure = of_argument(Reason::uncertainty_without_value, uncertainty_argument::uncertainties, i);
            return;
        }
        Argument const& argument = asked.function->arguments[i];
        if (u > (argument.high - argument.low) / 2) { // whatever lies within bounds scatters no wider
            asked.failure = of_argument(Reason::uncertainty_too_large, uncertainty_argument::uncertainties, i);
            return;
        }
        asked.uncertainties[asked.number_of[i]] = u;
    }
}

/// From one row a value to one row a number of the kernel.
void read_correlations_of(UncertainCall& asked, Block const& values, Value const& given) {
    if (!std::holds_alternative<Block>(given)) // left out
        return;
    std::size_t const cells = values.numbers.size();
    Correlations const read = read_correlations(std::get<Block>(given), cells);
    asked.failure = read.failure;
    asked.failure.argument = uncertainty_argument::correlations;
    if (read.failure.reason != Reason::none)
        return;
    std::size_t const numbers = asked.equation().numbers;
    asked.correlations.assign(numbers * numbers, 0);
    for (std::size_t i = 0; i < cells; ++i) {
        for (std::size_t j = 0; j < cells; ++j) {
            double const coefficient = read.coefficients[i * cells + j];
            if (i == j || coefficient == 0)
                continue;
            if (i >= asked.given || j >= asked.given || !asked.known[i] || !asked.known[j]) {
                asked.failure =
                    of_argument(Reason::correlation_without_value, uncertainty_argument::correlations, i * cells + j);
                return;
            }
            asked.correlations[asked.number_of[i] * numbers + asked.number_of[j]] = coefficient;
        }
    }
    for (std::size_t i = 0; i < numbers; ++i)
        asked.correlations[i * numbers + i] = 1;
    if (!can_be_together(asked.correlations, numbers))
        asked.failure = {Reason::correlations_contradict, uncertainty_argument::correlations};
}

} // namespace

Inputs UncertainCall::inputs() const {
    Numeric const& kernel = equation();
    return {std::span(at.numbers).first(kernel.numbers), std::span(at.choices).first(kernel.choices),
            std::span(uncertainties).first(kernel.numbers), correlations};
}

Measure UncertainCall::measure() const {
    if (!has_parts_to_choose(*function))
        return function->result.measure;
    return function->result.parts[std::size_t(at.choices[equation().choices - 1].index)].measure;
}

Bounds UncertainCall::bounds() const {
    Bounds bounds{.lowest_result = function->result.low, .highest_result = function->result.high};
    for (std::size_t i = 0; i < function->arguments.size(); ++i)
        if (number_of[i] != no_argument) {
            bounds.low[number_of[i]] = function->arguments[i].low;
            bounds.high[number_of[i]] = function->arguments[i].high;
        }
    return bounds;
}

bool UncertainCall::is_assumed(std::size_t place) const {
    return number_of[place] != no_argument && !known[place] && !is_absent(at.numbers[number_of[place]]);
}

std::size_t UncertainCall::place_of(unsigned number) const {
    return std::size_t(std::ranges::find(number_of, number) - number_of.begin());
}

UncertainCall read_uncertain_call(std::span<Value const> given) {
    UncertainCall asked;
    asked.function = find_function(std::get<std::string>(given[uncertainty_argument::function_name]));
    if (asked.function == nullptr) {
        asked.failure = {Reason::unknown_name, uncertainty_argument::function_name};
        return asked;
    }
    if (!is_differentiable(*asked.function)) {
        asked.failure = {Reason::not_differentiable, uncertainty_argument::function_name};
        return asked;
    }
    Block const& values = std::get<Block>(given[uncertainty_argument::values]);
    asked.coverage = std::get<double>(given[uncertainty_argument::coverage]);
    read_values(asked, values);
    if (asked.failure.reason == Reason::none)
        read_uncertainties(asked, values, std::get<Block>(given[uncertainty_argument::uncertainties]));
    if (asked.failure.reason == Reason::none)
        read_correlations_of(asked, values, given[uncertainty_argument::correlations]);
    return asked;
}

Failure as_a_cell_sees_it(UncertainCall const& asked) {
    return asked.inside ? Failure{asked.failure.reason} : asked.failure;
}

Propagated propagate(UncertainCall& asked) {
    Propagated const result = propagate(asked.equation(), asked.inputs());
    Failure const why = failure_of(result.value);
    if (why.reason == Reason::no_finite_slope) {
        asked.failure = of_argument(why.reason, uncertainty_argument::uncertainties, asked.place_of(why.argument));
        return result;
    }
    Result const& range = asked.function->result;
    bool const in_range = result.value >= range.low && result.value <= range.high; // false for a failure
    if (!in_range) {
        asked.failure = why.reason == Reason::none ? Failure{Reason::result_out_of_range} : why;
        asked.inside = true;
    }
    return result;
}

std::vector<Value> inner_arguments(Block const& values) {
    std::vector<Value> arguments;
    Cells cells(values);
    for (std::size_t left = used_cells(values); left > 0; --left)
        arguments.push_back(cells.next());
    return arguments;
}

} // namespace hearthcell
