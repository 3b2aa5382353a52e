#include "extension/archive/inventory/look.hpp"

#include "extension/archive/inventory/words.hpp"
#include "extension/formulas/calls.hpp"
#include "extension/formulas/moved.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/plain.hpp"
#include "extension/formulas/recognition/recognised.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <unordered_map>

namespace hearthcell::archive {
namespace {

constexpr std::size_t longest_label = 120;
constexpr std::size_t most_texts = 4000, most_texts_of_all = 20'000; // of a sheet, of its workbook: more are no labels

bool is_number(ContentCell const* cell) {
    return cell != nullptr && std::holds_alternative<double>(cell->value);
}

std::string const* label_in(ContentCell const* cell) {
    auto const* const text = cell == nullptr || cell->is_result ? nullptr : std::get_if<std::string>(&cell->value);
    bool const may_be = text != nullptr && text->size() <= longest_label && !reads_as_entry(*text);
    return may_be && !word_key(*text).empty() ? text : nullptr;
}

class Looking {
public:
    explicit Looking(Contents& contents)
        : contents_(contents), names_(contents.take_names()),
          reads_(contents.sheets(), names_, no_tables_), surroundings_{
                                                             reads_, [&](Place const& place) { return typed(place); },
                                                             [&](Place const& place) { return formula(place); }},
          sheets_(contents.sheets().size()), known_(sheets_.size()) {
        for (std::size_t at = 0; at < sheets_.size(); ++at)
            sheets_[at].name = contents.sheets()[at];
    }

    std::vector<SheetFacts> sheets() {
        for (ContentCell const& cell : contents_.cells()) {
            if (cell.place.sheet < 0 || std::size_t(cell.place.sheet) >= sheets_.size())
                continue;
            SheetFacts& sheet = sheets_[std::size_t(cell.place.sheet)];
            if (cell.is_result)
                look_at_formula(cell, sheet);
            else if (auto const* const text = label_in(&cell);
                     text != nullptr && sheet.texts.size() < most_texts && texts_++ < most_texts_of_all)
                sheet.texts.push_back({cell.place.row, cell.place.column, *text, stands_like_value(cell.place)});
        }
        for (SheetFacts& sheet : sheets_)
            for (SheetText& text : sheet.texts)
                text.in_run = rows_of_runs_.contains({int(&sheet - sheets_.data()), text.row});
        for (auto const& [first, last] : contents_.merged())
            if (first.sheet >= 0 && std::size_t(first.sheet) < sheets_.size() &&
                sheets_[std::size_t(first.sheet)].merged.size() < most_texts)
                sheets_[std::size_t(first.sheet)].merged.push_back({first.row, first.column, last.row, last.column});
        return std::move(sheets_);
    }

private:
    [[nodiscard]] std::optional<double> typed(Place const& place) const {
        ContentCell const* const cell = contents_.find(place);
        return is_number(cell) && !cell->is_result ? std::optional(std::get<double>(cell->value)) : std::nullopt;
    }
    [[nodiscard]] std::string_view formula(Place const& place) const {
        ContentCell const* const cell = contents_.find(place);
        return cell == nullptr ? std::string_view() : std::string_view(cell->formula);
    }

    void look_at_formula(ContentCell const& cell, SheetFacts& sheet) {
        ++sheet.formulas;
        std::vector<formulas::Token> const tokens = formulas::tokens_of(cell.formula);
        if (std::ranges::any_of(tokens, formulas::is_ours)) {
            ++sheet.ours;
            return;
        }
        if (tokens.empty())
            return;
        // What is the same relative to its cell is the same form all down a column.
        std::size_t const form = std::hash<std::string>{}(formulas::relative_to(cell.place, cell.formula));
        note_run(cell.place, form);
        auto const [known, is_new] = known_[std::size_t(cell.place.sheet)].try_emplace(form, none);
        if (is_new)
            known->second = recognise(cell, sheet);
        if (known->second != none)
            ++sheet.recognised[known->second].cells;
    }

    void note_run(Place const& place, std::size_t form) {
        constexpr int longest_gap = 5; // of rows without a result, or with one that was typed over
        auto& [row, last_form] = last_in_column_[{place.sheet, place.column}];
        if (last_form == form && place.row - row <= longest_gap)
            for (int at = row; at <= place.row; ++at)
                rows_of_runs_.insert({place.sheet, at});
        row = place.row;
        last_form = form;
    }

    std::size_t recognise(ContentCell const& cell, SheetFacts& sheet) {
        auto const form = formulas::recognised(cell.formula, cell.place, surroundings_);
        if (!form)
            return none;
        sheet.recognised.push_back({form->function,
                                    form->form,
                                    formulas::as_shown(formulas::plain(cell.formula)),
                                    cell_name(cell.place),
                                    {form->methods.begin(), form->methods.end()},
                                    form->is_part});
        return sheet.recognised.size() - 1;
    }

    /// Behind a label of its row, with no number behind it and none below that it would name.
    [[nodiscard]] bool stands_like_value(Place const& place) const {
        if (place.column == 0 || label_in(contents_.find({place.sheet, place.row, place.column - 1})) == nullptr)
            return false;
        if (is_number(contents_.find({place.sheet, place.row, place.column + 1})))
            return false;
        if (!is_number(contents_.find({place.sheet, place.row + 1, place.column})))
            return true;
        // A number below with a text before it: the next pair of a form; but below several headings an entry of a
        // table.
        bool const is_among_headings =
            place.column > 1 && label_in(contents_.find({place.sheet, place.row, place.column - 2})) != nullptr;
        return !is_among_headings &&
               label_in(contents_.find({place.sheet, place.row + 1, place.column - 1})) != nullptr;
    }

    static constexpr std::size_t none = ~std::size_t{0};

    Contents& contents_;
    formulas::Names names_;
    std::vector<formulas::Table> no_tables_;
    formulas::Reads reads_;
    formulas::Surroundings surroundings_;
    std::vector<SheetFacts> sheets_;
    std::vector<std::unordered_map<std::size_t, std::size_t>> known_; // of each sheet: hashes of its formulas as seen
                                                                      // from their cells, and places in `recognised`
    std::map<std::pair<int, int>, std::pair<int, std::size_t>> last_in_column_; // formula: its row and form
    std::set<std::pair<int, int>> rows_of_runs_;                                // by sheet
    std::size_t texts_ = 0;
};

} // namespace

Looked look_at(Contents& contents) {
    return {Looking(contents).sheets(), oddities_in(contents)};
}

Looked look_at(std::filesystem::path const& file, Format format, std::uint64_t largest) {
    Room room(Room::for_workbooks_up_to(largest));
    Contents contents(room);
    read_contents(file, format, largest, room, contents);
    return look_at(contents);
}

} // namespace hearthcell::archive
