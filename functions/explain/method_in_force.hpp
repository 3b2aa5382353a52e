#pragma once
// By which equation a call is computed, where its function knows several.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

/// The choice that decides which equation is computed: mostly whose method.
struct MethodInForce {
    std::size_t index = 0;
    std::string_view name;     ///< empty: the function knows no methods
    std::string_view argument; ///< what the choice is called
};

MethodInForce method_in_force(Function const& function, std::span<Value const> values);

} // namespace hearthcell
