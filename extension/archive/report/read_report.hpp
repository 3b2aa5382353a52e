#pragma once
// read.csv: what the arguments of carried functions read in all workbooks, and where that is far from the others.

#include "extension/archive/recalculation/outcome.hpp"

#include <map>
#include <string>
#include <vector>

namespace hearthcell::archive {

class ReadReport {
public:
    void add(std::string const& relative, std::vector<ReadOutcome> const& read);
    [[nodiscard]] std::string csv() const;
    /// A line for each argument of which some workbooks read ten times more or less than the others.
    [[nodiscard]] std::vector<std::string> oddities() const;

private:
    struct OfWorkbook {
        std::string file;
        double lowest, median, highest;
    };
    struct Argument {
        double median = 0;
        std::vector<OfWorkbook const*> odd;
    };
    static Argument summed(std::vector<OfWorkbook> const& workbooks);

    std::map<std::pair<std::string, std::string>, std::vector<OfWorkbook>> arguments_; // by function and argument
};

} // namespace hearthcell::archive
