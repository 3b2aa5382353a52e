// The page of the summary that shows what was collected, over time.

#include "extension/archive/recalculation/when.hpp"
#include "extension/archive/report/pages.hpp"
#include "extension/formulas/number.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_names = 8, most_charts = 3;

/// Where on the axis of time a workbook stands.
struct Time {
    enum class From { day, year, order } from = From::order;
    std::size_t name = 0; // of those that are collected: the one that is a day

    [[nodiscard]] std::optional<double> of(Findings::Row const& row) const {
        switch (from) {
        case From::day:
            return day_in(row.values.at(name).value);
        case From::year:
            return year_of(row.origin.relative);
        case From::order:
            return static_cast<double>(row.number);
        }
        return std::nullopt;
    }
};

/// A collected name whose values are days; else the folder's year; else the order of the files.
Time time_in(std::vector<Findings::Row> const& rows, std::size_t names) {
    for (std::size_t name = 0; name < names; ++name) {
        bool any = false, all = true;
        for (Findings::Row const& row : rows) {
            std::string const& text = row.values.at(name).value;
            any = any || day_in(text);
            all = all && (text.empty() || day_in(text));
        }
        if (any && all)
            return {Time::From::day, name};
    }
    bool const years = std::all_of(rows.begin(), rows.end(),
                                   [](Findings::Row const& row) { return year_of(row.origin.relative).has_value(); });
    return {years && !rows.empty() ? Time::From::year : Time::From::order, 0};
}

constexpr std::array time_words{"day", "year", "row of collected.csv"};

std::string heading(Summary const& summary, Findings const& findings, std::size_t name) {
    std::string text = summary.collected_columns[name].heading;
    for (Findings::Row const& row : findings.sample.kept())
        if (std::string const& unit = row.values.at(name).unit; !unit.empty())
            return text + ", " + unit;
    return text;
}

PageCell value_cell(Collected const& one) {
    if (auto const number = formulas::number_in(one.value))
        return {*number, {}};
    return text_cell(one.value);
}

/// Beside the page, for the charts: time and every collected name.
PageTable points_of(Findings const& findings, std::vector<std::string> const& headings, Time const& time) {
    PageTable points{{{time_words.at(std::size_t(time.from)), time.from == Time::From::day ? Look::day : Look::number}},
                     {}};
    for (std::string const& text : headings)
        points.columns.push_back({text, Look::number});
    for (Findings::Row const& row : findings.sample.kept()) {
        auto const when = time.of(row);
        if (!when)
            continue;
        std::vector<PageCell> cells{number_cell(when)};
        for (std::size_t name = 0; name < headings.size(); ++name)
            cells.push_back(number_cell(formulas::number_in(row.values.at(name).value)));
        points.rows.push_back(std::move(cells));
    }
    std::stable_sort(points.rows.begin(), points.rows.end(), [](auto const& one, auto const& other) {
        return std::get<double>(one[0].value) < std::get<double>(other[0].value);
    });
    return points;
}

bool has_numbers(PageTable const& points, std::size_t column) {
    return std::any_of(points.rows.begin(), points.rows.end(),
                       [&](auto const& row) { return std::holds_alternative<double>(row[column].value); });
}

void add_charts(Page& page, Summary const& summary, Findings const& findings, Time const& time) {
    for (std::size_t column = 1; column < page.points.columns.size(); ++column)
        if (page.charts.size() < most_charts && !summary.collected_columns[column - 1].row_number &&
            has_numbers(page.points, column))
            page.charts.push_back({.shape = ChartShape::points,
                                   .title = page.points.columns[column].heading,
                                   .x_title = time_words.at(std::size_t(time.from)),
                                   .series = {column},
                                   .of_points = true,
                                   .height = 75,
                                   .days = time.from == Time::From::day});
    if (page.charts.empty())
        page.notes.emplace_back("There is no number among the results that could be drawn.");
    if (std::size_t const left_out = findings.sample.kept().size() - page.points.rows.size(); left_out > 0)
        page.notes.push_back(std::to_string(left_out) + " without a day are not in the picture.");
    if (findings.sample.every() > 1)
        page.notes.push_back("The picture shows one in " + std::to_string(findings.sample.every()) +
                             " rows of collected.csv.");
}

std::string explanation(Summary const& summary, Time const& time) {
    switch (time.from) {
    case Time::From::day:
        return "Time is the day that was collected as '" + summary.collected_columns[time.name].heading + "'.";
    case Time::From::year:
        return "Time is the year in the name of the folder, since no day was collected.";
    case Time::From::order:
        return "In the order of the files, since no day was collected and not every folder has a year in its name.";
    }
    return {};
}

} // namespace

Page page_of_collected(Summary const& summary, Findings const& findings) {
    Page page{.name = "Collected", .title = "Collected results over time"};
    std::size_t const names = summary.collected_columns.size();
    std::size_t const shown = std::min(names, most_names);
    if (findings.rows == 0) {
        page.words.emplace_back("Nothing was collected: no workbook could be done.");
        return page;
    }
    Time const time = time_in(findings.sample.kept(), names);
    page.words.push_back(explanation(summary, time));
    PageTable table{{{"file", Look::text, 86}}, {}};
    std::vector<std::string> headings;
    for (std::size_t name = 0; name < names; ++name)
        headings.push_back(heading(summary, findings, name));
    for (std::size_t name = 0; name < shown; ++name)
        table.columns.push_back({headings[name], Look::number, std::min(30, static_cast<int>(180 / shown))});
    for (Findings::Row const& row : findings.first_rows) {
        std::vector<PageCell> cells{linked_cell(row.origin)};
        for (std::size_t name = 0; name < shown; ++name)
            cells.push_back(value_cell(row.values.at(name)));
        table.rows.push_back(std::move(cells));
    }
    add_more(page, findings.rows, table.rows.size(), "rows", "collected.csv");
    add_more(page, names, shown, "columns", "collected.csv");
    page.points = points_of(findings, headings, time);
    add_charts(page, summary, findings, time);
    page.tables.push_back(std::move(table));
    return page;
}

} // namespace hearthcell::archive
