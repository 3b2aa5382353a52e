#pragma once
// Twins: every numeric function's kernel once more, on Boost's number type. The catalogue shows only doubles and
// dual numbers, so the test of a subject registers the twin beside its published values.

#include "functions/contract/kernel.hpp"
#include "support/autodiff.hpp"

#include <map>
#include <string_view>

namespace hearthcell::tests {

/// Reads its numbers and choices as Numeric::value does: choices after the numbers, each kind in order.
using TwinKernel = Autodiff (*)(Autodiff const* numbers, Choice const* choices);

/// By the function's name.
inline std::map<std::string_view, TwinKernel>& all_twins() {
    static std::map<std::string_view, TwinKernel> twins;
    return twins;
}

struct Twins {
    using Pair = std::pair<std::string_view const, TwinKernel>;
    Twins(std::initializer_list<Pair> twins) {
        for (Pair const& twin : twins)
            all_twins().insert(twin);
    }
};

} // namespace hearthcell::tests
