#include "extension/archive/report/findings.hpp"

#include "extension/archive/recalculation/when.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace hearthcell::archive {
namespace {

// What fits onto a page that people read.
constexpr std::size_t most_groups = 10'000; // before it is chosen which ones are shown
constexpr std::size_t most_changes = 30;
constexpr std::size_t most_problems = 3; // of each reason
constexpr std::size_t most_rows = 25, most_remarks = 25;

} // namespace

Findings::Group& Findings::group_of(Origin const& origin) {
    std::string const name = folder_or_year(origin.relative);
    bool const room = groups.size() < most_groups || groups.contains(name);
    return groups[room ? name : "(further folders)"];
}

void Findings::workbook(Origin const& origin, Finished const& finished) {
    Group& group = group_of(origin);
    ++group.workbooks;
    group.with_changes += finished.tally.changed() > 0 ? 1 : 0;
    group.changes += finished.tally.changed();
    for (CheckRemark const& remark : finished.check.remarks)
        if (remarks.size() < most_remarks)
            remarks.push_back({origin, remark});
    for (CollectedRow const& row : finished.collected)
        collect({origin, ++rows, row});
}

void Findings::collect(Row const& row) {
    if (first_rows.size() < most_rows)
        first_rows.push_back(row);
    sample.add(row);
}

void Findings::change(Origin const& origin, ChangeRow const& row) {
    if (!counts(row))
        return;
    ++counted;
    if (row.relative_change.empty())
        return;
    double const part = std::strtod(row.relative_change.c_str(), nullptr);
    if (!std::isfinite(part))
        return;
    Sized& sized = sizes.at(size_class(part));
    ++(part < 0 ? sized.lower : sized.higher);
    auto const larger = [](Large const& one, Large const& other) {
        return std::abs(one.relative) > std::abs(other.relative);
    };
    if (largest.size() == most_changes && std::abs(part) <= std::abs(largest.back().relative))
        return;
    Large const large{origin, row.sheet, row.cell, row.formula, row.before, row.after, part};
    largest.insert(std::upper_bound(largest.begin(), largest.end(), large, larger), large);
    if (largest.size() > most_changes)
        largest.pop_back();
}

void Findings::problem(Origin const& origin, Problem const& problem) {
    ++group_of(origin).problems;
    if (auto& listed = problems[problem.reason]; listed.size() < most_problems)
        listed.push_back({origin, problem});
}

} // namespace hearthcell::archive
