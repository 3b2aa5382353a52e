#pragma once
// A function's own checks and kernel, put into sentences.

#include "functions/catalogue/function.hpp"
#include "functions/words/speaker.hpp"

namespace hearthcell {

enum class Verdict {
    fine,
    in_part, ///< some of several results could not be computed
    odd,     ///< computed, but something looks like a slip
    wrong,   ///< not computed
};

struct Explanation {
    Verdict verdict = Verdict::fine;
    std::string text;        ///< as a cell shows it: "Fine: …", "Odd: …", or what is wrong and was probably meant
    std::string what_is_odd; ///< the text without "Odd: "; empty where nothing is odd
};

Explanation explained_in(Language language, Function const& function, std::span<Value const> arguments);

inline std::string explain(Function const& function, std::span<Value const> arguments,
                           Language language = Language::english) {
    return explained_in(language, function, arguments).text;
}

/// Of a row or column of results: how many failed, and why the first one did; "Fine." where none did.
std::string about_cells(Speaker const& say, Function const& function, std::span<Value const> arguments,
                        Block const& results);

} // namespace hearthcell
