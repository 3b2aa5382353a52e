#include "functions/diagnosis/findings.hpp"

#include <algorithm>

namespace hearthcell::diagnosis {

Block Findings::block() {
    std::ranges::stable_sort(kept, {}, &Finding::row);
    std::size_t all = 0;
    for (std::size_t const count : counts)
        all += count;
    if (all == 0)
        kept.push_back({0, "nothing to remark"});
    if (all > most_findings) {
        kept.resize(most_findings);
        kept.push_back({0, "and " + std::to_string(all - most_findings) + " more"});
    }
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
