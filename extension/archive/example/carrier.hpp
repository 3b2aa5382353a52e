#pragma once
// Formulas of one sheet as they are to stand on another: each cell that they read is replaced by the one that
// corresponds.

#include "extension/archive/example/correspondence.hpp"
#include "extension/archive/example/seen_workbook.hpp"

namespace hearthcell::archive {

/// A block of cells that a formula reads, on the old sheet and on the other one.
struct ReadBlock {
    formulas::Range before, now;
    bool follows_rows = false, follows_columns = false; // has no $ that keeps it where it is
};

struct CarriedFormula {
    std::string text;
    std::vector<ReadBlock> reads;
};

class Carrier {
public:
    using Where = LabelledSheet::Where;

    /// A sheet of a workbook, and the one that it is to be carried to. All must live as long.
    Carrier(SeenWorkbook const& old, int old_sheet, SeenWorkbook const& target, int sheet);

    /// A cell of the old sheet that is empty there, and where a formula for it goes; and the old result beside which it
    /// goes down or along.
    void place(Where const& cell, Where const& there, std::optional<Where> const& beside) {
        placed_[cell] = {there, beside};
    }

    [[nodiscard]] std::variant<Where, Refused> of(Where const& cell) const;

    /// A plain formula of the old sheet. written_in: where its names are defined.
    [[nodiscard]] std::variant<CarriedFormula, Refused> of(std::string_view formula,
                                                           SeenWorkbook const& written_in) const;

private:
    using Found = std::variant<formulas::Range, Refused>;

    [[nodiscard]] std::variant<Where, Refused> of(int old_sheet, int sheet, Where const& cell) const;
    [[nodiscard]] Found of(int old_sheet, int sheet, formulas::Block const& block) const;
    [[nodiscard]] bool has_same_borders(int old_sheet, int sheet, formulas::Block const& block, Where const& by) const;
    [[nodiscard]] Found in_one_piece(int old_sheet, int sheet, formulas::Block const& block) const;
    [[nodiscard]] Found of(formulas::Range const& range) const;
    [[nodiscard]] Found of_name(formulas::Token const& name, SeenWorkbook const& written_in) const;

    SeenWorkbook const& old_;
    SeenWorkbook const& target_;
    int const old_sheet_, sheet_;
    struct Placed {
        Where there;
        std::optional<Where> beside;
    };
    std::map<Where, Placed> placed_;
};

} // namespace hearthcell::archive
