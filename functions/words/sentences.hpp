#pragma once
// The sentences of functions/words/sentences, each a constant that is called as its entry there.

#include "functions/number/reason.hpp"
#include "functions/words/sentence.hpp"

#include <iterator>

namespace hearthcell::sentences {

#define SENTENCE(name, ...) inline constexpr Sentence name(__VA_ARGS__);
#include "functions/words/sentences/all.inc"
namespace reasons {
#include "functions/words/sentences/reasons.inc"
}
#undef SENTENCE

inline constexpr Sentence const* of_reasons[] = {
#define REASON(name, error) &reasons::name,
#include "functions/number/reasons.inc"
#undef REASON
};

/// Why a call failed. What is no failure, or none of ours, means an internal one: the last.
constexpr Sentence const& of(Reason reason) {
    auto const place = std::size_t(reason) - std::size_t(Reason::absent) - 1;
    return *of_reasons[place < std::size(of_reasons) ? place : std::size(of_reasons) - 1];
}

} // namespace hearthcell::sentences
