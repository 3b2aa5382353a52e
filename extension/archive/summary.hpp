#pragma once

#include "archive/finished.hpp"

#include <map>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// What a run comes to. Holds nothing that would differ from one run to the next on the same files.
struct Summary {
    std::string edition;
    std::size_t workbooks = 0;
    std::size_t recalculated = 0;
    std::size_t changed = 0; // workbooks
    std::size_t copies = 0;
    Tally tally;
    std::map<std::string, std::size_t> problems;                // by reason
    std::vector<std::pair<std::string, std::size_t>> collected; // name and in how many workbooks it was found

    void add(Finished const& finished);
};

std::string text_of(Summary const& summary);
nlohmann::json json_of(Summary const& summary);

} // namespace hearthcell::archive
