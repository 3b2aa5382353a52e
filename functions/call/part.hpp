#pragma once
// Which of several results a cell is given: the one that the last argument names.

#include "functions/catalogue/function.hpp"

#include <optional>

namespace hearthcell {

/// The word for all of them side by side.
inline constexpr Term all_parts("all");

struct WantedPart {
    Reason reason = Reason::none;     ///< why the argument names none
    std::optional<std::size_t> place; ///< of that part; none for all
};

/// Which part a call asks for. A function without parts to choose gives all it has.
WantedPart wanted_part(Function const& function, std::span<Value const> arguments);

/// The part with this name, in any language; none where there is no such part.
std::optional<std::size_t> part_named(Function const& function, std::string_view name);

/// Whether the word for a part is left out. An empty cell in its place arrives as 0.
bool leaves_part_out(Value const& part);

/// Takes the wanted part out of what a kernel gave. A part that has no value is a failure.
Outcome part_of(Outcome outcome, WantedPart const& wanted);

/// The same arguments, but asking for all parts, where there are several to choose from.
std::vector<Value> asking_for_all(Function const& function, std::span<Value const> arguments);

} // namespace hearthcell
