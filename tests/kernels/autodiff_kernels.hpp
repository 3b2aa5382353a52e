#pragma once
// Every numeric function's kernel once more, on Boost's number type. The catalogue shows only doubles and dual numbers,
// so that they are listed here.

#include "functions/contract/choice.hpp"
#include "kernels/autodiff.hpp"

#include <map>
#include <string_view>

namespace hearthcell::tests {

/// Reads its numbers and choices as Numeric::value does: choices after the numbers, each kind in order.
using AutodiffKernel = Autodiff (*)(Autodiff const* numbers, Choice const* choices);

/// By the function's name.
std::map<std::string_view, AutodiffKernel> const& autodiff_kernels();

} // namespace hearthcell::tests
