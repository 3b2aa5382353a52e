#include "extension/addin/cell_call.hpp"

#include "extension/addin/arguments.hpp"

#include "functions/call/call.hpp"

namespace hearthcell::addin {
namespace {

std::size_t count(Call const& call) {
    return std::size_t(call.method.nParams);
}

Given given(Call const& call, std::size_t place) {
    return {call.method.pParams[place].pTypeRef, call.arguments[place]};
}

/// Nothing is allocated and nothing thrown unless an argument is a text or a block.
double number(Function const& function, Call const& call) {
    std::array<Scalar, most_arguments> scalars;
    std::size_t const wanted = function.arguments.size();
    for (std::size_t place = 0; place < wanted; ++place)
        scalars[place] = scalar(function.arguments[place], given(call, place));
    return call_numeric(function, std::span(scalars).first(wanted));
}

Outcome outcome(Function const& function, Call const& call) {
    std::size_t const listed = function.arguments.size();
    bool const as_listed = is_open_ended(function) ? count(call) >= listed : count(call) == listed;
    if (!as_listed) // another edition's list of types was there first
        return Failure{Reason::too_many_arguments};
    if (std::holds_alternative<Numeric>(function.kernel))
        return outcome_of(number(function, call));
    std::vector<Value> values;
    values.reserve(count(call));
    for (std::size_t place = 0; place < count(call); ++place)
        append(values, function.arguments[std::min(place, listed - 1)], given(call, place));
    return hearthcell::call(function, values);
}

/// Memory can run out, and nothing else.
template <class Work> Outcome caught(Work work) noexcept {
    try {
        return work();
    } catch (...) {
        return Failure{Reason::internal};
    }
}

} // namespace

void call_from_cell(Function const& function, Call const& call, Results const& results) noexcept {
    Outcome const found = caught([&] { return outcome(function, call); });
    if (call.method.pReturnTypeRef->eTypeClass == typelib_TypeClass_DOUBLE) {
        *static_cast<double*>(call.result) = cell_number(found);
        return;
    }
    try {
        results.make(found, static_cast<uno_Any*>(call.result));
    } catch (...) {
        results.make(Failure{Reason::internal}, static_cast<uno_Any*>(call.result));
    }
}

} // namespace hearthcell::addin
