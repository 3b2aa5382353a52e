#include "extension/archive/report/summary.hpp"

#include "extension/terminal/text_table.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cstdio>
#include <set>
#include <sstream>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_compared = 40; // lines

std::string counted(std::size_t number, char const* one, char const* many) {
    return std::to_string(number) + " " + (number == 1 ? one : many);
}

std::vector<std::string> function_row(std::string const& name, Tally::Group const& group) {
    return {name.empty() ? "other formulas" : name,
            std::to_string(group.cells),
            std::to_string(group.own),
            percent(group.low),
            percent(group.high),
            basis(name)};
}

std::string functions_table(Tally const& tally) {
    TextTable table{{{"changed", "cells", "by itself", "lowest", "highest", "computed now by"}},
                    1,
                    {false, true, true, true, true, false}};
    for (auto const& [name, group] : tally.functions)
        if (!name.empty())
            table.rows.push_back(function_row(name, group));
    if (auto const others = tally.functions.find(""); others != tally.functions.end())
        table.rows.push_back(function_row({}, others->second));
    return draw(table) + "  By itself: the cell reads no changed cell, so that its own computation changed.\n\n";
}

std::string sizes_table(Tally const& tally) {
    TextTable table{{{"changed numbers", "cells"}}, 1, {false, true}};
    for (std::size_t size = 0; size < tally.sizes.size(); ++size)
        if (tally.sizes.at(size) > 0)
            table.rows.push_back({std::string(size_words.at(size)), std::to_string(tally.sizes.at(size))});
    return table.rows.size() > 1 ? draw(table) + "\n" : std::string();
}

template <class Counts>
std::string counts_table(std::string const& heading, std::string const& unit, Counts const& counts) {
    TextTable table{{{heading, unit}}, 1, {false, true}};
    for (auto const& [word, number] : counts)
        table.rows.push_back({word, std::to_string(number)});
    return draw(table) + "\n";
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

std::string compared_table(std::vector<ComparedLine> const& lines) {
    TextTable table{{{"new=old", "folder or year", "results", "lowest", "median", "highest", "the old numbers follow"}},
                    1,
                    {false, false, true, true, true, true, false}};
    for (ComparedLine const& line : lines)
        if (table.rows.size() <= most_compared)
            table.rows.push_back({line.group.empty() ? line.pair : "", line.group, std::to_string(line.results),
                                  percent(line.lowest), percent(line.median), percent(line.highest), line.follows});
    std::string text = draw(table);
    if (lines.size() > most_compared)
        text += "  … and " + std::to_string(lines.size() - most_compared) + " more folders or years\n";
    for (std::string const& note : notes_on(lines))
        text += "  " + note + "\n";
    return text + "\n";
}

} // namespace

std::string percent(std::optional<double> const& part) {
    if (!part)
        return {};
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%+.3g %%", 100 * *part);
    return text.data();
}

std::string basis(std::string const& name) {
    Function const* const function = name.empty() ? nullptr : find_function(name);
    if (function == nullptr)
        return {};
    return function->sources.empty() ? std::string() : std::string(function->sources[0].title);
}

void Summary::add(Finished const& finished) {
    // A workbook with one of these was not opened or not recalculated; the others only have something to be said.
    static std::set<Reason> const hindered{Reason::password, Reason::corrupt, Reason::unsupported, Reason::too_large};
    bool const whole = std::none_of(finished.problems.begin(), finished.problems.end(),
                                    [](Problem const& problem) { return hindered.contains(problem.reason); });
    recalculated += whole ? 1 : 0;
    changed += finished.tally.changed() > 0 ? 1 : 0;
    with_ours += finished.tally.ours > 0 ? 1 : 0;
    given += finished.tally.given > 0 ? 1 : 0;
    copies += finished.copy_size ? 1 : 0;
    tally.add(finished.tally);
    example.formulas += finished.carried.formulas;
    example.sheets += finished.carried.sheets;
    example.workbooks += finished.carried.sheets > 0 ? 1 : 0;
    remarks.runs += finished.check.runs;
    remarks.clean += finished.check.clean;
    remarks.remarks += finished.check.all;
    remarks.workbooks += finished.check.all > 0 ? 1 : 0;
    for (std::size_t half = 0; half < compared_in.size() && half < finished.compared.size(); ++half)
        compared_in[half] += finished.compared[half] ? 1 : 0;
    if (!finished.collected.empty())
        for (std::size_t column = 0; column < collected_columns.size(); ++column)
            if (column == 0 || collected_columns[column].name != collected_columns[column - 1].name)
                collected[collected_columns[column].name].second += finished.collected[0].at(column).found ? 1 : 0;
}

std::vector<std::string> names_nowhere(Summary const& summary) {
    std::vector<std::string> names;
    for (auto const& [name, workbooks] : summary.collected)
        if (workbooks == 0 && summary.recalculated > 0)
            names.push_back(name);
    for (std::size_t half = 0; half < summary.compared_in.size(); ++half)
        if (summary.compared_in[half] == 0 && summary.recalculated > 0) {
            ComparedPair const pair = read_pair(summary.compare[half / 2]);
            names.push_back(half % 2 == 0 ? pair.now : pair.old);
        }
    return names;
}

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
    std::vector<std::string> lines{what_was_found(summary), first, second};
    if (summary.example.asked)
        say_carried(summary.example, lines);
    if (summary.remarks.asked)
        lines.push_back(words_of(summary.remarks));
    say_joined(summary, lines);
    return lines;
}

std::string text_of(Summary const& summary) {
    Tally const& tally = summary.tally;
    std::string text;
    for (std::string const& line : opening_lines(summary))
        text += line + "\n";
    text += "\n";
    if (tally.changed() > 0)
        text += functions_table(tally) + counts_table("kind of change", "cells", tally.kinds) + sizes_table(tally);
    if (!summary.compared.empty())
        text += compared_table(summary.compared);
    if (summary.inventory && !summary.inventory->recognised.empty())
        text += counts_table("recognised", "cells", summary.inventory->recognised);
    if (!summary.collected.empty())
        text += counts_table("collected", "workbooks", summary.collected);
    if (!summary.problems.empty())
        text += counts_table("problems", "cases", summary.problems);
    for (std::string const& name : names_nowhere(summary))
        text += "No workbook has " + name + ": is that what it is called?\n";
    text.erase(text.find_last_not_of('\n') + 1);
    return text + "\n";
}

nlohmann::json json_of(Summary const& summary) {
    nlohmann::json json{
        {"edition", summary.edition},      {"workbooks", summary.workbooks}, {"recalculated", summary.recalculated},
        {"with_changes", summary.changed}, {"with_ours", summary.with_ours}, {"given", summary.given},
        {"copies", summary.copies},        {"results", summary.tally},       {"problems", summary.problems}};
    if (summary.in_several_runs > 0)
        json["in_several_runs"] = summary.in_several_runs;
    if (summary.remarks.asked)
        json["check"] = {{"runs", summary.remarks.runs},
                         {"clean", summary.remarks.clean},
                         {"remarks", summary.remarks.remarks},
                         {"workbooks", summary.remarks.workbooks}};
    if (summary.example.asked)
        json["example"] = {{"formulas", summary.example.formulas},
                           {"sheets", summary.example.sheets},
                           {"workbooks", summary.example.workbooks},
                           {"confirmed", summary.example.confirmed},
                           {"odd", summary.example.odd}};
    if (summary.inventory)
        json["inventory"] = {{"sheets", summary.inventory->sheets},
                             {"layouts", summary.inventory->layouts},
                             {"formulas", summary.inventory->formulas},
                             {"ours", summary.inventory->ours},
                             {"recognised", summary.inventory->recognised}};
    for (ComparedLine const& line : summary.compared)
        json["compared"].push_back({{"pair", line.pair},
                                    {"group", line.group},
                                    {"results", line.results},
                                    {"in_per_cent", line.per_cent},
                                    {"on_one_side", line.alone},
                                    {"lowest", line.lowest.value_or(0)},
                                    {"median", line.median.value_or(0)},
                                    {"highest", line.highest.value_or(0)},
                                    {"follows", line.follows}});
    json["collected"] = nlohmann::json::object();
    for (auto const& [name, workbooks] : summary.collected)
        json["collected"][name] = workbooks;
    return json;
}

} // namespace hearthcell::archive
