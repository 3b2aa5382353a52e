#pragma once
// What LOGCHECK has found so far: a sentence each, with the row that it concerns.

#include "functions/contract/values.hpp"

#include <array>
#include <string>

namespace hearthcell::diagnosis {

enum class FindingKind {
    text,
    half_row,
    clock,
    time,
    gap,
    unit,
    reading_unit,
    jump,
    above_boiling,
    stuck,
    start,
    count // how many there are
};

inline constexpr std::size_t most_findings = 200;

/// The findings in the order of the rows, those of the whole log first; the first 200 of each kind are kept.
class Findings {
public:
    /// Row 0: the whole log. The words are only made for a finding that is kept.
    template <class Words> void add(FindingKind kind, unsigned row, Words words) {
        if (counts[std::size_t(kind)]++ < most_findings)
            kept.push_back({row, words()});
    }
    /// Two columns: the words and the row.
    Block block();

private:
    struct Finding {
        unsigned row;
        std::string words;
    };
    std::vector<Finding> kept;
    std::array<std::size_t, std::size_t(FindingKind::count)> counts{};
};

} // namespace hearthcell::diagnosis
