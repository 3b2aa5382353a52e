#include "functions/call/call.hpp"

#include "functions/call/columns.hpp"
#include "functions/call/part.hpp"
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

/// What a kernel gives, or the part of it that is wanted. The last argument is looked at when all others are right.
template <class Answer>
Outcome wanted_of(Function const& function, std::span<Value const> values, Answer const& answer) {
    WantedPart const wanted = wanted_part(function, values);
    if (wanted.reason != Reason::none)
        return Failure{wanted.reason, unsigned(function.arguments.size() - 1)};
    return part_of(answer(), wanted);
}

Outcome call_with_columns(Function const& function, std::span<Value const> values) {
    Columns const columns(function, values);
    if (columns.failure().reason != Reason::none)
        return columns.failure();
    Outcome result =
        wanted_of(function, values, [&] { return std::get<Columnar>(function.kernel).answer(columns.given()); });
    double const* const number = function.result.parts.empty() ? std::get_if<double>(&result) : nullptr;
    if (number != nullptr && !is_in_range(function.result, *number))
        return Failure{Reason::result_out_of_range};
    return result;
}

Outcome call_with_words(Function const& function, std::span<Value const> given) {
    std::vector<Value> values(given.begin(), given.end());
    Failure const why = prepare_words(function, values);
    if (why.reason != Reason::none)
        return why;
    return wanted_of(function, given, [&] { return std::get<Wordy>(function.kernel).answer(values); });
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
