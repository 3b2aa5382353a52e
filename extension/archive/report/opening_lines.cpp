// The first lines of a summary: what was found and what was done.

#include "extension/archive/report/summary.hpp"

#include <algorithm>
#include <sstream>

namespace hearthcell::archive {
namespace {

std::string counted(std::size_t number, char const* one, char const* many) {
    return std::to_string(number) + " " + (number == 1 ? one : many);
}

/// First of all: 'nothing changed' means nothing where nothing of ours was met.
std::string what_was_found(Summary const& summary) {
    std::uint64_t const by_hand = summary.tally.formulas - summary.tally.ours - summary.tally.given;
    std::string const others = counted(by_hand, "formula", "formulas") + " without";
    if (summary.tally.ours + summary.tally.given == 0)
        return "Nothing of ours was checked: no workbook calls a function of Hearthcell, and " + others +
               " came out as Calc has them" + (by_hand > 0 ? "; --inventory says what they compute" : "");
    return "Found: " + counted(summary.tally.ours, "formula", "formulas") + " with functions of Hearthcell in " +
           counted(summary.with_ours, "workbook", "workbooks") + ", " + others +
           (summary.given == 0 ? ""
                               : "; this run put " + std::to_string(summary.tally.given) + " into " +
                                     counted(summary.given, "workbook", "workbooks"));
}

void say_joined(Summary const& summary, std::vector<std::string>& lines) {
    if (summary.in_several_runs > 0)
        lines.push_back(counted(summary.in_several_runs, "workbook is", "workbooks are") +
                        " in more than one of the joined runs and counted once");
}

void say_carried(ExampleCounts const& example, std::vector<std::string>& lines) {
    lines.push_back("Carried: " + counted(example.formulas, "formula", "formulas") + " into " +
                    counted(example.sheets, "sheet", "sheets") + " of " +
                    counted(example.workbooks, "workbook", "workbooks") +
                    "; what was not is among the problems, what was read in read.csv");
    std::istringstream confirmed(example.confirmed);
    for (std::string line; std::getline(confirmed, line);)
        lines.push_back("Taken for granted: " + line.substr(std::min(line.find_first_not_of(' '), line.size())));
    lines.insert(lines.end(), example.odd.begin(), example.odd.end());
}

std::vector<std::string> opening_lines(Summary const& summary, InventoryCounts const& found) {
    std::uint64_t recognised = 0;
    for (auto const& [function, cells] : found.recognised)
        recognised += cells;
    std::vector<std::string> lines{
        summary.edition + ": " + counted(summary.workbooks, "workbook", "workbooks") + ", " +
            counted(found.sheets, "sheet", "sheets") + " of " + counted(found.layouts, "layout", "layouts"),
        counted(found.formulas, "formula", "formulas") + ": " + std::to_string(found.ours) +
            " with functions of ours in " + counted(found.with_ours, "workbook", "workbooks") + ", " +
            std::to_string(found.formulas - found.ours) + " written by hand, of which " + std::to_string(recognised) +
            " were recognised; nothing was recalculated"};
    say_joined(summary, lines);
    return lines;
}

} // namespace

std::string words_of(CheckCounts const& counts) {
    std::string const runs = counted(counts.runs, "run", "runs") + " checked";
    return counts.remarks == 0 ? runs + ": nothing stands out"
                               : runs + ": nothing stands out in " + std::to_string(counts.clean) + "; " +
                                     counted(counts.remarks, "remark", "remarks") + " in " +
                                     counted(counts.workbooks, "workbook", "workbooks");
}

std::vector<std::string> opening_lines(Summary const& summary) {
    if (summary.inventory)
        return opening_lines(summary, *summary.inventory);
    Tally const& tally = summary.tally;
    std::string first = summary.edition + ": " + counted(summary.workbooks, "workbook", "workbooks") + ", " +
                        std::to_string(summary.recalculated) + " recalculated, " +
                        counted(summary.changed, "with a changed result", "with changed results") + ", " +
                        counted(summary.copies, "copy", "copies") + " written";
    std::string second = counted(tally.formulas, "formula", "formulas") + ": " + std::to_string(tally.changed()) +
                         " changed, " + std::to_string(tally.unchanged) + " the same";
    if (tally.volatile_cells > 0)
        second += ", " + std::to_string(tally.volatile_cells) + " that change by themselves and are not counted";
    if (tally.last_digits > 0)
        second += ", " + std::to_string(tally.last_digits) + " in the last digits only and not counted";
    if (tally.links_not_followed > 0)
        second += ", " + std::to_string(tally.links_not_followed) + " need links that were not followed";
    if (tally.without_result > 0)
        second += "; " + std::to_string(tally.without_result) + " were saved without a result";
    if (tally.stored_errors > 0)
        second += "; " + std::to_string(tally.stored_errors) + " were saved with an error";
    std::vector<std::string> lines{what_was_found(summary), first, second};
    if (summary.example.asked)
        say_carried(summary.example, lines);
    if (summary.remarks.asked)
        lines.push_back(words_of(summary.remarks));
    say_joined(summary, lines);
    return lines;
}

} // namespace hearthcell::archive
