#include "extension/archive/report/read_report.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/archive/records/csv.hpp"
#include "extension/formulas/number.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::archive {
namespace {

constexpr double far = 10; // times
constexpr std::size_t most_named = 20;

std::string shown_number(double number) {
    return formulas::number_text(number, 12);
}

/// 0 is no amount to be ten times off.
bool is_far(double value, double median) {
    return value != 0 && median != 0 &&
           (std::abs(value) >= far * std::abs(median) || far * std::abs(value) <= std::abs(median));
}

} // namespace

void ReadReport::add(std::string const& relative, std::vector<ReadOutcome> const& read) {
    for (ReadOutcome const& one : read)
        arguments_[{one.function, one.argument}].push_back({relative, one.lowest, one.median, one.highest});
}

ReadReport::Argument ReadReport::summed(std::vector<OfWorkbook> const& workbooks) {
    std::vector<double> medians;
    for (OfWorkbook const& one : workbooks)
        medians.push_back(one.median);
    std::ranges::sort(medians);
    Argument argument{medians[medians.size() / 2], {}};
    for (OfWorkbook const& one : workbooks)
        if (is_far(one.lowest, argument.median) || is_far(one.highest, argument.median))
            argument.odd.push_back(&one);
    return argument;
}

std::string ReadReport::csv() const {
    std::string text = csv_row({"function", "argument", "workbooks", "lowest", "median", "highest", "odd"});
    for (auto const& [name, workbooks] : arguments_) {
        Argument const argument = summed(workbooks);
        auto const lowest = std::ranges::min_element(workbooks, {}, &OfWorkbook::lowest);
        auto const highest = std::ranges::max_element(workbooks, {}, &OfWorkbook::highest);
        std::string which;
        std::size_t named = 0;
        for (OfWorkbook const* const one : argument.odd)
            if (named++ < most_named)
                which += (which.empty() ? "" : "; ") + shown(one->file) + ": " +
                         shown_number(is_far(one->lowest, argument.median) ? one->lowest : one->highest);
        if (argument.odd.size() > most_named)
            which += "; and " + std::to_string(argument.odd.size() - most_named) + " more";
        text +=
            csv_row({"STOVE." + name.first, name.second, std::to_string(workbooks.size()), shown_number(lowest->lowest),
                     shown_number(argument.median), shown_number(highest->highest), which});
    }
    return text;
}

std::vector<std::string> ReadReport::oddities() const {
    std::vector<std::string> lines;
    for (auto const& [name, workbooks] : arguments_)
        if (Argument const argument = summed(workbooks); !argument.odd.empty())
            lines.push_back(name.second + " of STOVE." + name.first + " reads values ten times off the usual " +
                            shown_number(argument.median) + " in " + std::to_string(argument.odd.size()) +
                            (argument.odd.size() == 1 ? " workbook" : " workbooks") + ": see read.csv");
    return lines;
}

} // namespace hearthcell::archive
