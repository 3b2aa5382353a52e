#pragma once
// What EXPLAIN answers about a call, taken apart.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hearthcell::checking {

/// A result as an answer gives it.
struct Figure {
    double number = 0;
    bool is_share = false;
};

/// What is wrong or odd about one call.
struct Finding {
    enum class Kind { odd, empty_cell, wrong } kind = Kind::odd;
    std::string sentence;                          // or the argument whose cell is empty
    std::optional<Figure> meant = {}, result = {}; // with the slip mended; as it is
};

/// What holds for every call of a kind.
struct Note {
    std::string kind, text;
    auto operator<=>(Note const&) const = default;
};

struct Findings {
    std::vector<Finding> findings;
    std::vector<Note> notes;
};

/// See functions/explain/call_check.hpp. An answer of any other form is a finding as a whole.
Findings findings_in(std::string_view answer);

} // namespace hearthcell::checking
