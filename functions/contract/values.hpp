#pragma once
// What goes into a function and what comes out, before it is a cell again.

#include "functions/number/reason.hpp"

#include <span>
#include <string>
#include <variant>
#include <vector>

namespace hearthcell {

/// The contents of a range, row by row. A blank is the number `absent`; a text stands in `texts` and leaves a NaN
/// with Reason::text_for_number in its place.
struct Block {
    struct Text {
        std::size_t place = 0;
        std::string text;
    };
    std::size_t rows = 0, columns = 0;
    std::vector<double> numbers;
    std::vector<Text> texts;
};

inline constexpr double text_in_block = failure(Reason::text_for_number);
constexpr bool is_text(double in_block) {
    return failure_of(in_block).reason == Reason::text_for_number;
}

/// One argument as a cell gives it. std::monostate: omitted.
using Value = std::variant<std::monostate, double, std::string, Block>;

/// What stands at a place; omitted behind the last.
inline Value const& value_at(std::span<Value const> values, std::size_t place) {
    static constexpr Value nothing;
    return place < values.size() ? values[place] : nothing;
}

/// A result. A double here is a finite number, never a coded failure.
using Outcome = std::variant<double, Failure, std::string, Block>;

/// What a number is that may be a coded failure.
inline Outcome outcome_of(double result) {
    Failure const why = failure_of(result);
    return why.reason == Reason::none ? Outcome(result) : Outcome(why);
}

} // namespace hearthcell
