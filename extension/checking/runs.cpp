#include "extension/checking/runs.hpp"

#include "extension/checking/shown.hpp"

#include <algorithm>

namespace hearthcell::checking {
namespace {

constexpr std::size_t enough_rows = 3, longest_label = 24;

} // namespace

Runs::Runs(Contents const& contents, Questions const& questions, Columns const& columns) : contents_(contents) {
    std::map<std::tuple<int, int, int>, std::size_t> rows_of_form; // by sheet, column and form
    std::map<Place, int> forms;
    for (auto const& [where, column] : columns.all())
        for (Columns::Entry const& entry : column) {
            ++rows_of_form[{where.first, where.second, entry.form}];
            forms[{where.first, entry.row, where.second}] = entry.form;
        }
    std::set<int> sheets;
    for (Question const& question : questions.all) {
        auto const form = forms.find(question.cell);
        if (question.rule != nullptr || form == forms.end() || (question.answer && !question.is_reached()))
            continue;
        sheets.insert(question.cell.sheet);
        if (rows_of_form[{question.cell.sheet, question.cell.column, form->second}] >= enough_rows)
            runs_.insert({question.cell.sheet, question.cell.row});
    }
    for (int const sheet : sheets)
        if (auto const first = runs_.lower_bound({sheet, -1}); first == runs_.end() || first->sheet != sheet)
            runs_.insert({sheet, -1});
    several_sheets_ = !runs_.empty() && runs_.begin()->sheet != runs_.rbegin()->sheet;
}

std::optional<Run> Runs::of(Place const& cell) const {
    for (Run const& run : {Run{cell.sheet, cell.row}, Run{cell.sheet, -1}})
        if (runs_.count(run) > 0)
            return run;
    return std::nullopt;
}

std::string Runs::label(Run const& run) const {
    std::string const& sheet = contents_.defined.sheets.at(std::size_t(run.sheet));
    if (run.row < 0)
        return sheet;
    auto const first = contents_.cells.lower_bound({run.sheet, run.row, 0});
    std::string const label = is_label(first) ? shown(first->second, Language::english) : std::to_string(run.row + 1);
    return several_sheets_ ? sheet + " " + label : label;
}

/// A short text, or a number that counts on from a neighbour: not a reading.
bool Runs::is_label(std::map<Place, Content>::const_iterator const& cell) const {
    auto const& [place, content] = *cell;
    if (auto const* const text = std::get_if<std::string>(&content.value))
        return !text->empty() && text->size() <= longest_label;
    auto const* const number = std::get_if<double>(&content.value);
    auto const counts_on = [&, at = place](int by) {
        Content const* const other = contents_.at({at.sheet, at.row + by, at.column});
        double const* const beside = other == nullptr ? nullptr : std::get_if<double>(&other->value);
        return number != nullptr && beside != nullptr && *beside == *number + by;
    };
    return counts_on(-1) || counts_on(1);
}

} // namespace hearthcell::checking
