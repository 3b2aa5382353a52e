#pragma once
// How a kernel fails without throwing: it returns a quiet NaN whose payload says why, and about which argument.
// Bits 32 to 39 hold the reason, 40 to 44 the argument, 45 to 50 a signature; the low word stays 0, since the
// LibreOffice side writes the cell's error code there. Such a NaN must never go through arithmetic.

#include "functions/number/dual.hpp"

#include <bit>
#include <cstdint>

namespace hearthcell {

enum class Reason : std::uint8_t {
    none,
    absent, ///< not a failure: an optional argument that was left out and has no constant as its default
#define REASON(name, error) name,
#include "functions/number/reasons.inc"
#undef REASON
    count ///< how many there are; not a reason
};

inline constexpr unsigned no_argument = 31;

struct Failure {
    Reason reason = Reason::none;
    unsigned argument = no_argument; ///< its place in the catalogue, or no_argument
    unsigned row = 0;                ///< the reading of a column, counted from 1; 0 when it is no matter of a row
};

inline constexpr std::uint64_t failure_signature = 0x7FF8'0000'0000'0000 | std::uint64_t{0b010110} << 45;

constexpr double failure(Reason reason, unsigned argument = no_argument) {
    return std::bit_cast<double>(failure_signature | std::uint64_t{argument & 31U} << 40 |
                                 std::uint64_t{static_cast<std::uint8_t>(reason)} << 32);
}

/// What a number says about itself: Reason::none for every number, infinity and NaN that is not ours.
constexpr Failure failure_of(double number) {
    auto const bits = std::bit_cast<std::uint64_t>(number);
    auto const code = static_cast<std::uint8_t>(bits >> 32 & 0xFF);
    bool const ours = (bits & 0xFFFF'E000'FFFF'FFFF) == failure_signature && code < unsigned(Reason::count);
    return ours ? Failure{Reason(code), unsigned(bits >> 40 & 31)} : Failure{};
}

inline constexpr double absent = failure(Reason::absent);

template <class Real> constexpr bool is_absent(Real const& x) {
    return failure_of(value_of(x)).reason == Reason::absent;
}
template <class Real> constexpr bool failed(Real const& x) {
    Reason const reason = failure_of(value_of(x)).reason;
    return reason != Reason::none && reason != Reason::absent;
}

} // namespace hearthcell
