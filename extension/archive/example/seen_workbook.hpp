#pragma once
// A workbook as an example or its target is seen: what it holds, read without an office, and the labels of its sheets.

#include "extension/archive/example/labelled_sheet.hpp"
#include "extension/archive/files/contents.hpp"
#include "extension/formulas/reads.hpp"

namespace hearthcell::archive {

class SeenWorkbook {
public:
    using Where = LabelledSheet::Where;

    /// labels: of each sheet, what of its texts names cells. same: words that mean the same.
    SeenWorkbook(Contents& contents, std::vector<std::vector<Label>> const& labels, SameWords const& same);
    SeenWorkbook(SeenWorkbook const&) = delete; // its parts refer to each other
    SeenWorkbook& operator=(SeenWorkbook const&) = delete;

    [[nodiscard]] std::size_t size() const { return sheets_.size(); }
    [[nodiscard]] std::string const& name(int sheet) const { return contents_.sheets()[std::size_t(sheet)]; }
    [[nodiscard]] int number_of(std::string_view sheet) const; // -1: it has none of that name
    [[nodiscard]] LabelledSheet const& sheet(int number) const { return sheets_[std::size_t(number)]; }
    [[nodiscard]] Contents const& contents() const { return contents_; }
    [[nodiscard]] formulas::Names const& names() const { return names_; }
    [[nodiscard]] formulas::Reads const& reads() const { return reads_; }

    [[nodiscard]] ContentCell const* cell(Place const& place) const; // null: nothing stands there
    /// The cells of a column, or of a row, from the top or left.
    [[nodiscard]] std::vector<ContentCell const*> const& column(int sheet, int column) const;
    [[nodiscard]] std::vector<ContentCell const*> const& row(int sheet, int row) const;

    /// Whether a cell holds nothing: no content, or a formula that reads only such cells.
    [[nodiscard]] bool is_empty(Place const& place) const;

private:
    [[nodiscard]] bool is_empty(Place const& place, int steps, int& cells) const;

    Contents& contents_;
    formulas::Names names_;
    std::vector<formulas::Table> no_tables_;
    formulas::Reads reads_;
    std::vector<LabelledSheet> sheets_;
    std::map<std::pair<int, int>, std::vector<ContentCell const*>> columns_, rows_;
};

/// A text as labels are compared.
Label label_of(int row, int column, std::string const& text, SameWords const& same);

/// Whether a block has a cell of its sheet.
bool has_cell(formulas::Range const& block, LabelledSheet::Where const& cell);

/// "B7"
std::string name_of(LabelledSheet::Where const& cell);

} // namespace hearthcell::archive
