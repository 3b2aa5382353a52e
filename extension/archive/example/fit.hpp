#pragma once
// One sheet of an example on one other sheet: what goes where, or why nothing does.
//
// For who sets new results against old ones: Fit says where each cell of the example went.

#include "extension/archive/example/reach.hpp"

namespace hearthcell::archive {

/// A content that is to be written into a cell of the workbook.
struct Writing {
    Place place;
    LabelledSheet::Where example; // the cell of the example sheet that it comes from
    bool is_formula = false;
    bool is_over = false; // an old formula
    std::string text;
};

/// Cells that must have the same unit by their number formats: one of OLD, and a block of the workbook.
struct SameFormat {
    Place before;
    formulas::Range now;
};

struct Fit {
    std::size_t example = 0; // its number in the run, from 0
    int old_sheet = 0;       // in OLD
    int sheet = 0;           // in the workbook

    std::vector<Writing> writings; // several of one cell of the example, where it goes down a column or along a row
    std::vector<LeftCell> left;
    std::vector<SameFormat> formats;
    std::vector<Refused> not_carried; // where a part is allowed (--partly)

    /// Where formulas of OLD's sheet stand on this one, those that correspond: of a column or row of them the first.
    std::map<LabelledSheet::Where, LabelledSheet::Where> results;
};

/// Refused with the first difference.
std::variant<Fit, Refused> fit(FitWish const& wish, SeenWorkbook const& target, int sheet);

} // namespace hearthcell::archive
