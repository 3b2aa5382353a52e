#include "extension/archive/report/agreement.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/archive/recalculation/when.hpp"
#include "extension/formulas/number.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_groups = 10'000;
constexpr double most_of_them = 0.8; // of the results, that a method has to come near to
constexpr double surely = 1e-3;      // the methods themselves are often less than 1 % apart

std::string bound_in_words(double bound) {
    return formulas::number_text(100 * bound, 3) + " %";
}

} // namespace

void Spread::add(OldAndNewRow const& row) {
    auto const relative = formulas::number_in(row.relative_difference);
    auto const old_result = formulas::number_in(row.old_result);
    if (!relative || !old_result) {
        ++alone;
        return;
    }
    lowest = results == 0 ? *relative : std::min(lowest, *relative);
    highest = results == 0 ? *relative : std::max(highest, *relative);
    ++results;
    per_cent += row.factor.empty() ? 0 : 1;
    add_to_methods(row, *old_result / formulas::number_in(row.factor).value_or(1));
    sample_.add(*relative);
}

void Spread::add_to_methods(OldAndNewRow const& row, double old_result) {
    std::set<std::string> different;
    for (std::size_t method = 0; method < methods.size(); ++method) {
        auto const number = formulas::number_in(row.by_methods.at(method));
        if (!number)
            continue;
        different.insert(row.by_methods.at(method));
        for (std::size_t bound = 0; bound < bounds.size(); ++bound)
            within_.at(method).at(bound) +=
                std::abs(*number - old_result) <= bounds.at(bound) * std::abs(old_result) ? 1 : 0;
    }
    by_methods_ += different.size() > 1 ? 1 : 0;
}

std::optional<double> Spread::median() const {
    if (sample_.kept().empty())
        return std::nullopt;
    std::vector<double> sorted = sample_.kept();
    std::sort(sorted.begin(), sorted.end());
    std::size_t const middle = sorted.size() / 2;
    return sorted.size() % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

/// The methods that come near to most of the old numbers, by the narrowest bound by which any does.
std::string Spread::follows() const {
    if (by_methods_ == 0)
        return {};
    double const enough = most_of_them * static_cast<double>(results);
    for (std::size_t bound = 0; bound < bounds.size(); ++bound) {
        std::string names;
        std::uint64_t fewest = results, near = 0;
        for (std::size_t method = 0; method < methods.size(); ++method)
            if (std::uint64_t const within = within_.at(method).at(bound); static_cast<double>(within) >= enough) {
                names.append(names.empty() ? "" : " or ").append(methods.at(method));
                fewest = std::min(fewest, within);
                ++near;
            }
        if (near == 0)
            continue;
        std::string text = names + ", within " + bound_in_words(bounds.at(bound));
        if (fewest < results)
            text += " in " + std::to_string(fewest) + " of " + std::to_string(results);
        if (near == methods.size())
            text = "each of the four" + text.substr(names.size());
        return bounds.at(bound) <= surely ? text : "none; nearest: " + text;
    }
    return "none within " + bound_in_words(bounds.back());
}

Agreement::Agreement(std::vector<std::string> const& names) {
    for (std::string const& name : names)
        pairs_.push_back({.name = name});
}

void Agreement::add(std::string const& file, OldAndNewRow const& row) {
    auto const pair =
        std::find_if(pairs_.begin(), pairs_.end(), [&](Pair const& one) { return one.name == row.compared; });
    if (pair == pairs_.end())
        return;
    std::string const name = shown(folder_or_year(file)); // it goes to a terminal, too
    bool const room = pair->groups.size() < most_groups || pair->groups.contains(name);
    pair->groups[room ? name : "(further folders)"].add(row);
    pair->all.add(row);
    auto const old_result = formulas::number_in(row.old_result), new_result = formulas::number_in(row.new_result);
    if (old_result && new_result)
        pair->points.add({*old_result / formulas::number_in(row.factor).value_or(1), *new_result});
}

namespace {

ComparedLine line_of_spread(std::string const& pair, std::string const& group, Spread const& spread) {
    ComparedLine line{pair, group,           spread.results, spread.per_cent, spread.alone, {}, spread.median(),
                      {},   spread.follows()};
    line.every = spread.every();
    if (spread.results > 0) {
        line.lowest = spread.lowest;
        line.highest = spread.highest;
    }
    return line;
}

} // namespace

std::vector<ComparedLine> lines_of(Agreement const& agreement) {
    std::vector<ComparedLine> lines;
    for (Agreement::Pair const& pair : agreement.pairs()) {
        lines.push_back(line_of_spread(pair.name, {}, pair.all));
        if (pair.groups.size() > 1)
            for (auto const& [group, spread] : pair.groups)
                lines.push_back(line_of_spread(pair.name, group, spread));
    }
    return lines;
}

std::vector<std::string> notes_on(std::vector<ComparedLine> const& lines) {
    std::vector<std::string> notes;
    for (ComparedLine const& line : lines) {
        if (!line.group.empty())
            continue;
        if (line.per_cent > 0)
            notes.push_back(line.pair + ": " + std::to_string(line.per_cent) + " of " + std::to_string(line.results) +
                            " old results are in per cent beside fractions; a hundredth of each was compared.");
        if (line.every > 1)
            notes.push_back(line.pair + ": medians are those of one in " + std::to_string(line.every) + " results.");
        if (line.alone > 0)
            notes.push_back(line.pair + ": " + std::to_string(line.alone) +
                            (line.alone == 1 ? " row has" : " rows have") +
                            " a number on one side only; old-and-new.csv says why.");
    }
    return notes;
}

} // namespace hearthcell::archive
