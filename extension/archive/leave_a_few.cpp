#include "extension/archive/leave_a_few.hpp"

#include "extension/archive/example/plan.hpp"
#include "extension/archive/recalculation/when.hpp"

#include <algorithm>
#include <set>
#include <tuple>

namespace hearthcell::archive {

void leave_a_few(Task& task, std::vector<std::size_t> const& sheets_fit) {
    constexpr std::size_t few = 5;
    struct Aged {
        int year;
        std::filesystem::file_time_type written;
        std::size_t workbook;
    };
    std::vector<Aged> fit;
    for (std::size_t workbook = 0; workbook < task.inputs.workbooks.size(); ++workbook)
        if (sheets_fit.at(workbook) > 0) {
            Input const& input = task.inputs.workbooks[workbook];
            std::error_code none;
            fit.push_back(
                {year_of(input.relative).value_or(0), std::filesystem::last_write_time(input.source, none), workbook});
        }
    std::ranges::stable_sort(
        fit, [](Aged const& a, Aged const& b) { return std::tie(a.year, a.written) < std::tie(b.year, b.written); });
    std::set<std::size_t> chosen;
    for (std::size_t at = 0; at < few && !fit.empty(); ++at)
        chosen.insert(fit[at * (fit.size() - 1) / (few - 1)].workbook);
    Inputs left{{}, task.inputs.base, {}};
    std::vector<std::vector<std::vector<Label>>> labels;
    for (std::size_t const workbook : chosen) {
        left.workbooks.push_back(task.inputs.workbooks[workbook]);
        labels.push_back(task.examples->labels[workbook]);
    }
    task.examples->labels = std::move(labels);
    task.inputs = std::move(left);
}

} // namespace hearthcell::archive
