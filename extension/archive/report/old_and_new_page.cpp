// The page of the summary that sets new results beside old ones.

#include "extension/archive/report/pages.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_rows = 24, most_charts = 3;

/// Round limits for both axes, so that the line of what is the same goes from corner to corner.
std::pair<double, double> limits_of(std::vector<Agreement::Point> const& points) {
    double low = points[0].old_result, high = low;
    for (Agreement::Point const& point : points) {
        low = std::min({low, point.old_result, point.new_result});
        high = std::max({high, point.old_result, point.new_result});
    }
    double const range = std::max(high - low, 1e-3 * std::max({std::abs(low), std::abs(high), 1e-6}));
    double const step = std::pow(10, std::floor(std::log10(range))) / 2;
    return {std::floor(low / step) * step, (std::floor(high / step) + 1) * step};
}

/// Beside the page, three columns a pair: old, new, and where both are the same, from one limit to the other.
void add_points(Page& page, std::vector<Agreement::Pair> const& pairs) {
    std::size_t const shown = std::min(pairs.size(), most_charts);
    for (std::size_t pair = 0; pair < shown; ++pair) {
        auto const& columns = {
            PageColumn{"old", Look::number}, {pairs[pair].name, Look::number}, {"the same", Look::number}};
        page.points.columns.insert(page.points.columns.end(), columns);
        auto const& points = pairs[pair].points.kept();
        if (points.empty())
            continue;
        auto const [low, high] = limits_of(points);
        std::vector<std::array<PageCell, 3>> rows{{number_cell(low), {}, number_cell(low)},
                                                  {number_cell(high), {}, number_cell(high)}};
        for (Agreement::Point const& point : points)
            rows.push_back({number_cell(point.old_result), number_cell(point.new_result), {}});
        page.points.rows.resize(std::max(page.points.rows.size(), rows.size()), std::vector<PageCell>(3 * shown));
        for (std::size_t row = 0; row < rows.size(); ++row)
            std::copy(rows[row].begin(), rows[row].end(),
                      page.points.rows[row].begin() + static_cast<std::ptrdiff_t>(3 * pair));
    }
}

void add_charts(Page& page, std::vector<Agreement::Pair> const& pairs) {
    add_points(page, pairs);
    for (std::size_t pair = 0; pair < std::min(pairs.size(), most_charts); ++pair) {
        if (pairs[pair].points.kept().empty())
            continue;
        auto const [low, high] = limits_of(pairs[pair].points.kept());
        page.charts.push_back({.shape = ChartShape::points,
                               .title = pairs[pair].name,
                               .x_title = "old result",
                               .y_title = "new result",
                               .labels = 3 * pair,
                               .series = {3 * pair + 1, 3 * pair + 2},
                               .of_points = true,
                               .height = 85,
                               .last_is_line = true,
                               .low = low,
                               .high = high});
        if (auto const every = pairs[pair].points.every(); every > 1)
            page.notes.push_back(pairs[pair].name + ": the picture shows one in " + std::to_string(every) +
                                 " results.");
    }
    if (pairs.size() > most_charts)
        page.notes.push_back("Drawn are the first " + std::to_string(most_charts) + " of what was compared.");
}

} // namespace

Page page_of_old_and_new(Summary const& summary, Agreement const& agreement) {
    Page page{.name = "Old and new", .title = "New results beside old ones"};
    page.words.emplace_back("The difference of the new result, as a part of the old one. A point on the line: both are "
                            "the same. Each result is in old-and-new.csv.");
    PageTable table{{{"new=old", Look::text, 62},
                     {"folder or year", Look::text, 40},
                     {"results", Look::count, 22},
                     {"lowest", Look::percent, 24},
                     {"median", Look::percent, 24},
                     {"highest", Look::percent, 24},
                     {"the old numbers follow", Look::text, 70}},
                    {}};
    for (ComparedLine const& line : summary.compared)
        if (table.rows.size() < most_rows)
            table.rows.push_back({text_cell(line.pair), text_cell(line.group), count_cell(line.results),
                                  number_cell(line.lowest), number_cell(line.median), number_cell(line.highest),
                                  text_cell(line.follows)});
    add_more(page, summary.compared.size(), table.rows.size(), "folders or years", "old-and-new.csv");
    for (std::string const& note : notes_on(summary.compared))
        page.notes.push_back(note);
    page.notes.emplace_back("The old numbers follow the method by which this workbook's functions give what its old "
                            "formulas did. Results by different methods must not be averaged.");
    add_charts(page, agreement.pairs());
    page.tables.push_back(std::move(table));
    return page;
}

} // namespace hearthcell::archive
