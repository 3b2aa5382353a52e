#pragma once
// Between a cell and a catalogue function: UNO's values in, a cell's value or error code out. No equation here.

#include "functions/about/the_record.hpp"
#include "functions/call/call.hpp"
#include "functions/catalogue/subjects.hpp"

#include <com/sun/star/uno/Any.hxx>
#include <com/sun/star/uno/Sequence.hxx>
#include <rtl/ustring.hxx>

namespace hearthcell::adapter {

using com::sun::star::uno::Any;
using com::sun::star::uno::Sequence;
using Cells = Sequence<Sequence<Any>>;

/// A required number arrives as it is; Calc has already turned everything else into an error.
inline Scalar scalar(Argument const&, double number) {
    return {number};
}
/// An optional number, a name or a choice: looked at before it is believed.
Scalar scalar(Argument const& argument, Any const& given);

/// The NaN that makes a cell show the error of a failure.
double cell_error(Failure const& why);
inline double cell_number(double result) {
    return failed(result) ? cell_error(failure_of(result)) : result;
}

Value value_of(Any const& given);
Value value_of(Cells const& given);
inline Value value_of(double given) {
    return given;
}
Value value_of(rtl::OUString const& given);

double cell_number(Outcome const& outcome);
Any cell_value(Outcome const& outcome);

/// A numeric function: nothing is allocated and nothing thrown unless an argument is a text.
template <class... Arguments> double number(Function const& function, Arguments const&... given) noexcept {
    try {
        std::size_t place = 0;
        std::array<Scalar, sizeof...(given)> const scalars{scalar(function.arguments[place++], given)...};
        return cell_number(call_numeric(function, scalars));
    } catch (...) { // only memory can have run out
        return cell_error({Reason::internal});
    }
}

inline void append(std::vector<Value>& values, Sequence<Any> const& given) {
    for (Any const& one : given)
        values.push_back(value_of(one));
}
template <class Given> void append(std::vector<Value>& values, Given const& given) {
    values.push_back(value_of(given));
}

template <class... Arguments> Outcome outcome(Function const& function, Arguments const&... given) {
    std::vector<Value> values;
    values.reserve(sizeof...(given));
    (append(values, given), ...);
    return call(function, values);
}

/// A function of columns or texts that gives a number.
template <class... Arguments> double one_number(Function const& function, Arguments const&... given) noexcept {
    try {
        return cell_number(outcome(function, given...));
    } catch (...) {
        return cell_error({Reason::internal});
    }
}

/// A function that gives a text or a block.
template <class... Arguments> Any anything(Function const& function, Arguments const&... given) noexcept {
    try {
        return cell_value(outcome(function, given...));
    } catch (...) {
        return Any(cell_error({Reason::internal}));
    }
}

} // namespace hearthcell::adapter
