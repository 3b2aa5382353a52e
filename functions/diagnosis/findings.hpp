#pragma once
// What LOGCHECK has found so far: a sentence each, with the row that it concerns.

#include "functions/contract/values.hpp"
#include "functions/words/sentences.hpp"
#include "functions/words/speaker.hpp"

#include <algorithm>
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
    boil,
    start,
    count // how many there are
};

inline constexpr std::size_t most_findings = 200;

/// The findings in the order of the rows, those of the whole log first; the first 200 of each kind are kept.
class Findings {
public:
    explicit Findings(Language language) : say(language) {}

    /// Row 0: the whole log. The words are only made for a finding that is kept.
    template <class Words> void add(FindingKind kind, unsigned row, Words words) {
        if (counts[std::size_t(kind)]++ < most_findings)
            kept.push_back({row, words(say)});
    }
    /// Two columns: the words and the row.
    Block block();

private:
    struct Finding {
        unsigned row;
        std::string words;
    };
    Speaker say;
    std::vector<Finding> kept;
    std::array<std::size_t, std::size_t(FindingKind::count)> counts{};
};

inline Block Findings::block() {
    std::ranges::stable_sort(kept, {}, &Finding::row);
    std::size_t all = 0;
    for (std::size_t const count : counts)
        all += count;
    if (all == 0)
        kept.push_back({0, say(sentences::nothing_to_remark)});
    if (all > most_findings) {
        kept.resize(most_findings);
        kept.push_back({0, say(sentences::more_findings, {{"count", std::to_string(all - most_findings)}})});
    }
    if (kept.size() == 1) // Calc repeats a single row over all rows that an array formula covers
        kept.push_back({0, ""});
    Block block{kept.size(), 2, {}, {}};
    for (Finding& finding : kept) {
        block.texts.push_back({block.numbers.size(), std::move(finding.words)});
        block.numbers.push_back(text_in_block);
        if (finding.row == 0)
            block.texts.push_back({block.numbers.size(), ""});
        block.numbers.push_back(finding.row == 0 ? text_in_block : double(finding.row));
    }
    return block;
}

} // namespace hearthcell::diagnosis
