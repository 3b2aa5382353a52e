#include "functions/call/call.hpp"

#include "functions/call/columns.hpp"
#include "functions/call/wordy.hpp"

namespace hearthcell {
namespace {

bool is_in_range(Result const& result, double number) {
    return number >= result.low && number <= result.high; // false for NaN
}

double run(Function const& function, Resolved const& given) {
    if (given.failure.reason != Reason::none)
        return failure(given.failure.reason, given.failure.argument);
    double const result = std::get<Numeric>(function.kernel).value(given.numbers.data(), given.choices.data());
    return failed(result) || is_in_range(function.result, result) ? result : failure(Reason::result_out_of_range);
}

Outcome call_with_columns(Function const& function, std::span<Value const> values) {
    Columns const columns(function, values);
    if (columns.failure().reason != Reason::none)
        return columns.failure();
    Outcome result = std::get<Columnar>(function.kernel).answer(columns.given());
    double const* const number = std::get_if<double>(&result);
    if (number != nullptr && !is_in_range(function.result, *number))
        return Failure{Reason::result_out_of_range};
    return result;
}

Outcome call_with_words(Function const& function, std::span<Value const> given) {
    std::vector<Value> values(given.begin(), given.end());
    Failure const why = prepare_words(function, values);
    return why.reason == Reason::none ? std::get<Wordy>(function.kernel).answer(values) : Outcome(why);
}

} // namespace

double call_numeric(Function const& function, std::span<Scalar const> arguments) {
    return run(function, resolve(function, arguments));
}

Outcome call(Function const& function, std::span<Value const> arguments) {
    if (arguments.size() > function.arguments.size() && !is_open_ended(function))
        return Failure{Reason::too_many_arguments};
    if (std::holds_alternative<Numeric>(function.kernel))
        return outcome_of(run(function, resolve(function, arguments)));
    if (std::holds_alternative<Columnar>(function.kernel))
        return call_with_columns(function, arguments);
    return call_with_words(function, arguments);
}

} // namespace hearthcell
