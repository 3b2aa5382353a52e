#pragma once
// A call as bytes, such that any bytes are one: what a fuzzer works on.

#include "functions/catalogue/catalogue.hpp"

#include <cstdint>
#include <string>

namespace hearthcell::tests {

struct FuzzedCall {
    Function const* function;
    std::vector<Value> values;
};

/// Any bytes give a call; where they end, zeros follow.
FuzzedCall call_of(std::span<std::uint8_t const> bytes);

/// The bytes of a call, so that call_of gives it back. Blocks of up to 255 rows and columns and `most_cells` cells.
std::string bytes_of(Function const& function, std::span<Value const> values);

inline constexpr std::size_t most_cells = 1024;

} // namespace hearthcell::tests
