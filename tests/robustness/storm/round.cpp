#include "round.hpp"

#include "document_edits.hpp"
#include "random_calls.hpp"

#include <algorithm>

namespace hearthcell::storm {

Round::Round(office::Office& office, Chance& chance, int calls, Tally& tally)
    : office_(office), chance_(chance), tally_(tally), ground_(chance), operands_(chance, ground_),
      document_(new_document(office, operands_.names())) {
    RandomCalls random(chance, operands_);
    for (int row = 0; row < calls; ++row)
        calls_.push_back(random.next(row));
}

std::vector<std::string> Round::run() {
    write();
    check("as written");
    document_->recalculate();
    check("recalculated");
    for (int i = 0; i < 4; ++i) {
        happen(chance_.below(5));
        check(happened_);
    }
    if (!before_.empty())
        undo_last();
    check(happened_);
    return std::move(faults_);
}

void Round::write() {
    ground_.write(*document_);
    office::TextRows formulas;
    for (Call const& call : calls_)
        formulas.push_back({"=" + call.text()});
    document_->sheet(calls_sheet).formulas(address(0, call_column), formulas);
}

void Round::check(std::string const& when) {
    auto const last =
        std::max_element(calls_.begin(), calls_.end(), [](Call const& a, Call const& b) { return a.row < b.row; });
    office::Sheet const sheet = document_->sheet(calls_sheet);
    auto const values = sheet.values(address({calls_sheet, 0, call_column, last->row, call_column}));
    for (Call const& call : calls_) {
        if (call.gone)
            continue;
        CellValue const& value = values[std::size_t(call.row)][0];
        if (when == "as written")
            tally_.count(call, value);
        ++tally_.compared;
        std::string const problem = fault(call, ground_, value);
        if (!problem.empty())
            faults_.push_back(when + ": " + sheet.formula(address(call.row, call_column)) + " " + problem);
    }
}

/// Calc does not compute a formula anew only because it or its range has moved, even where the two cross elsewhere now.
void Round::moved(std::string const& how) {
    document_->recalculate();
    happened_ = how;
}

void Round::happen(int what) {
    // Rows that move once more make Calc revive references to deleted rows, and point them elsewhere.
    bool const moves_rows = what == 1 || what == 2;
    switch (moves_rows && rows_are_gone_ ? 0 : what) {
    case 0:
        return edit_cell();
    case 1:
        return insert();
    case 2:
        return remove();
    case 3:
        return before_.empty() ? edit_cell() : undo_last();
    default:
        return save_and_reload();
    }
}

void Round::remember() {
    before_.push_back({ground_, calls_, rows_are_gone_, undo_steps(*document_)});
}

void Round::edit_cell() {
    remember();
    int const sheet = chance_.happens(0.5) ? data_sheet : other_sheet;
    int const row = chance_.below(data_rows), column = chance_.below(ground_.columns());
    std::string const typed = anything_typed(chance_);
    ground_.edit(*document_, sheet, row, column, typed);
    happened_ = std::string(sheet_names[sheet]) + "." + address(row, column) + " edited to " + typed;
}

void Round::insert() {
    remember();
    int const sheet = chance_.below(sheets), row = chance_.below(moving_rows), count = 1 + chance_.below(3);
    insert_rows(*document_, sheet, row, count);
    ground_.insert_rows(sheet, row, count);
    for (Call& call : calls_)
        storm::insert_rows(call, sheet, row, count);
    moved(std::to_string(count) + " rows inserted above " + sheet_names[sheet] + "." + std::to_string(row + 1));
}

void Round::remove() {
    remember();
    rows_are_gone_ = true;
    int const sheet = chance_.below(sheets), row = chance_.below(moving_rows), count = 1 + chance_.below(3);
    delete_rows(*document_, sheet, row, count);
    ground_.delete_rows(sheet, row, count);
    for (Call& call : calls_)
        storm::delete_rows(call, sheet, row, count);
    moved(std::to_string(count) + " rows deleted from " + sheet_names[sheet] + "." + std::to_string(row + 1));
}

void Round::undo_last() {
    State& state = before_.back();
    undo(*document_, undo_steps(*document_) - state.undo_steps);
    ground_ = state.ground;
    calls_ = state.calls;
    rows_are_gone_ = state.rows_are_gone;
    before_.pop_back();
    moved(happened_ + ", undone");
}

void Round::save_and_reload() {
    std::filesystem::path const file = office_.folder() / "storm.ods";
    document_->save(file);
    document_->close();
    before_.clear();
    rows_are_gone_ = false;
    document_.emplace(office::Document::open(office_, file, office::Access::read_write));
    double const change = ground_.learn(*document_);
    happened_ = "saved and reloaded";
    if (change > 1e-14)
        faults_.push_back("a number in a cell changed by a share of " + in_words(Content(change)) + " when saved");
}

} // namespace hearthcell::storm
