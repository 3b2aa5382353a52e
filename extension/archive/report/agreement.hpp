#pragma once
// How new results lie beside old ones, counted as rows of old-and-new.csv pass, in room that does not grow with them.

#include "extension/archive/records/old_and_new_csv.hpp"
#include "extension/archive/report/every_nth.hpp"

#include <cstdint>
#include <map>

namespace hearthcell::archive {

/// The relative differences of one pair in one folder or year.
class Spread {
public:
    void add(OldAndNewRow const& row);

    std::uint64_t results = 0;  // both a number
    std::uint64_t per_cent = 0; // of these, old results in per cent
    std::uint64_t alone = 0;    // rows of which one is no number
    double lowest = 0, highest = 0;
    [[nodiscard]] std::optional<double> median() const;
    [[nodiscard]] std::uint64_t every() const { return sample_.every(); } // one in so many is in the median

    /// "WBT 3, within 0.1 %"; empty where the method makes no difference.
    [[nodiscard]] std::string follows() const;

private:
    void add_to_methods(OldAndNewRow const& row, double old_result);

    static constexpr std::array<double, 5> bounds{1e-6, 1e-4, 1e-3, 5e-3, 1e-2};
    /// By method and bound: how many old numbers lie so near to those by the method.
    std::array<std::array<std::uint64_t, bounds.size()>, methods.size()> within_{};
    std::uint64_t by_methods_ = 0; // results that are not the same by all methods
    EveryNth<double> sample_{2'000};
};

/// All that the summary shows of --compare.
class Agreement {
public:
    explicit Agreement(std::vector<std::string> const& pairs);
    void add(std::string const& file, OldAndNewRow const& row);

    struct Point {
        double old_result, new_result;
    };
    struct Pair {
        std::string name;
        std::map<std::string, Spread> groups = {}; // by folder or year
        Spread all = {};
        EveryNth<Point> points{600}; // old results as fractions where they were in per cent
    };
    [[nodiscard]] std::vector<Pair> const& pairs() const { return pairs_; }

private:
    std::vector<Pair> pairs_;
};

/// A line of the summary: a pair, or a pair in one folder or year.
struct ComparedLine {
    std::string pair, group; // the group is empty for the pair as a whole
    std::uint64_t results = 0, per_cent = 0, alone = 0;
    std::optional<double> lowest, median, highest;
    std::string follows;
    std::uint64_t every = 1; // one in so many results is in the median
};
std::vector<ComparedLine> lines_of(Agreement const& agreement);

/// What has to be said with the lines.
std::vector<std::string> notes_on(std::vector<ComparedLine> const& lines);

} // namespace hearthcell::archive
