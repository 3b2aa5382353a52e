// The pages of the summary that show what changed.

#include "extension/archive/report/pages.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_rows = 20;
constexpr auto nothing_changed = "No result changed: every formula gives what its file holds.";
constexpr int row_of_bars = 6, around_bars = 28; // mm

int height_of_bars(PageTable const& table) {
    return around_bars + row_of_bars * static_cast<int>(table.rows.size());
}

} // namespace

Page page_by_function(Summary const& summary) {
    Page page{.name = "By function", .title = "Changed results by function"};
    page.words = opening_lines(summary);
    if (summary.tally.changed() == 0) {
        page.words.emplace_back(nothing_changed);
        return page;
    }
    std::vector<std::pair<std::string, Tally::Group>> functions(summary.tally.functions.begin(),
                                                                summary.tally.functions.end());
    std::stable_sort(functions.begin(), functions.end(), [](auto const& one, auto const& other) {
        bool const others = one.first.empty(), other_others = other.first.empty(); // they come last
        return others == other_others ? one.second.cells > other.second.cells : other_others;
    });
    PageTable table{{{"function", Look::text, 52},
                     {"changed cells", Look::count, 32},
                     {"by itself", Look::count, 22},
                     {"lowest", Look::percent, 24},
                     {"highest", Look::percent, 24},
                     {"computed now by", Look::text, 104}},
                    {}};
    for (auto const& [name, group] : functions) {
        if (table.rows.size() == most_rows)
            break;
        table.rows.push_back({text_cell(name.empty() ? "other formulas" : name), count_cell(group.cells),
                              count_cell(group.own), number_cell(group.low), number_cell(group.high),
                              text_cell(basis(name))});
    }
    add_more(page, functions.size(), table.rows.size(), "functions", "summary.txt");
    page.notes.emplace_back("By itself: the cell reads no changed cell, so that its own computation changed. A cell "
                            "that calls two functions is counted for both.");
    page.notes.emplace_back("Lowest, highest: the change of the numbers, as a part of what they were.");
    page.charts.push_back({.title = "Changed cells", .series = {1}, .height = height_of_bars(table)});
    page.tables.push_back(std::move(table));
    return page;
}

Page page_by_folder(Summary const& summary, Findings const& findings) {
    Page page{.name = "By folder or year", .title = "Changed results by folder or year"};
    page.words.emplace_back("The year is the one in the name of the innermost folder that has one; without a year, the "
                            "outermost folder.");
    if (summary.tally.changed() == 0)
        page.words.emplace_back(nothing_changed);
    std::vector<std::pair<std::string, Findings::Group>> groups(findings.groups.begin(), findings.groups.end());
    if (groups.size() > most_rows) {
        std::stable_sort(groups.begin(), groups.end(),
                         [](auto const& one, auto const& other) { return one.second.changes > other.second.changes; });
        page.notes.push_back("Shown are the " + std::to_string(most_rows) + " with the most changes of " +
                             std::to_string(groups.size()) + "; the others are in changes.csv.");
        groups.resize(most_rows);
        std::sort(groups.begin(), groups.end(),
                  [](auto const& one, auto const& other) { return one.first < other.first; });
    }
    PageTable table{{{"folder or year", Look::text, 76},
                     {"workbooks", Look::count, 40},
                     {"with changes", Look::count, 40},
                     {"changed results", Look::count, 50},
                     {"problems", Look::count, 50}},
                    {}};
    for (auto const& [name, group] : groups)
        table.rows.push_back({text_cell(name), count_cell(group.workbooks), count_cell(group.with_changes),
                              count_cell(group.changes), count_cell(group.problems)});
    if (summary.tally.changed() > 0)
        page.charts.push_back({.title = "Changed results", .series = {3}, .height = height_of_bars(table)});
    page.tables.push_back(std::move(table));
    return page;
}

Page page_of_largest(Findings const& findings) {
    Page page{.name = "Largest changes", .title = "The largest changes"};
    if (findings.largest.empty()) {
        page.words.emplace_back(findings.counted == 0 ? nothing_changed
                                                      : "No number changed that can be compared: the changes are texts "
                                                        "and errors, and are in changes.csv.");
        return page;
    }
    page.words.emplace_back("Of the numbers, as a part of what they were. A click with Ctrl on a file opens it.");
    PageTable table{{{"file", Look::text, 68},
                     {"sheet", Look::text, 26},
                     {"cell", Look::text, 14},
                     {"before", Look::number, 26},
                     {"after", Look::number, 26},
                     {"change", Look::percent, 26},
                     {"formula", Look::text, 84}},
                    {}};
    std::uint64_t numbers = 0;
    for (Findings::Sized const& sized : findings.sizes)
        numbers += sized.lower + sized.higher;
    for (Findings::Large const& large : findings.largest)
        table.rows.push_back({linked_cell(large.origin), text_cell(large.sheet), text_cell(large.cell),
                              number_cell(std::strtod(large.before.c_str(), nullptr)),
                              number_cell(std::strtod(large.after.c_str(), nullptr)), number_cell(large.relative),
                              text_cell(large.formula)});
    add_more(page, numbers, table.rows.size(), "changed numbers", "changes.csv");
    if (std::uint64_t const others = findings.counted - numbers; others > 0)
        page.notes.push_back(std::to_string(others) + (others == 1 ? " change has" : " changes have") +
                             " no size (texts, errors, numbers that were 0): see the kinds in changes.csv");
    page.tables.push_back(std::move(table));
    return page;
}

Page page_of_sizes(Summary const& summary, Findings const& findings) {
    Page page{.name = "How far", .title = "How far the numbers moved"};
    if (summary.tally.changed() == 0) {
        page.words.emplace_back(nothing_changed);
        return page;
    }
    PageTable table{{{"change", Look::text, 76},
                     {"lower than before", Look::count, 60},
                     {"higher than before", Look::count, 60},
                     {"together", Look::count, 60}},
                    {}};
    for (std::size_t size = 0; size < findings.sizes.size(); ++size) {
        auto const& [lower, higher] = findings.sizes.at(size);
        table.rows.push_back({text_cell(std::string(size_words.at(size))), count_cell(lower), count_cell(higher),
                              count_cell(lower + higher)});
    }
    page.words.emplace_back("Changed numbers by the size of their change, as a part of what they were.");
    for (auto const& [kind, cells] : summary.tally.kinds)
        page.notes.push_back("Changes of the kind '" + kind + "': " + std::to_string(cells));
    if (summary.tally.volatile_cells > 0)
        page.notes.push_back("Results that change by themselves (the clock, chance), which are not counted: " +
                             std::to_string(summary.tally.volatile_cells));
    if (summary.tally.last_digits > 0)
        page.notes.push_back("Numbers that differ in the last digits only, which are not counted: " +
                             std::to_string(summary.tally.last_digits));
    page.charts.push_back({.shape = ChartShape::columns,
                           .title = "Distribution of the relative change",
                           .x_title = "size of the change",
                           .y_title = "cells",
                           .series = {1, 2},
                           .height = 95});
    page.tables.push_back(std::move(table));
    return page;
}

} // namespace hearthcell::archive
