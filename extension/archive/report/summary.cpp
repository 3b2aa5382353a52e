#include "extension/archive/report/summary.hpp"

#include "extension/terminal/text_table.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cstdio>
#include <set>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_compared = 40; // lines

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
