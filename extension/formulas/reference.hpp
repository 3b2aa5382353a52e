#pragma once
// References to cells as they are written in formulas, and as people write them on a command line.

#include "extension/formulas/token.hpp"

#include <optional>
#include <string>

namespace hearthcell::formulas {

inline constexpr int last_row = (1 << 20) - 1, last_column = (1 << 14) - 1; // the largest that Calc knows

/// One end of a reference. Its texts are parts of the formula, so that they can be written over in their place.
struct Corner {
    std::string_view sheet = {};              // with its quotes and without its $; empty: none is named
    std::string_view cell = {};               // $B$7, B or 7
    std::optional<int> column = {}, row = {}; // from 0; in A:C there is no row, in 1:5 no column
    bool sheet_fixed = false, column_fixed = false, row_fixed = false; // by a $
};

struct Reference {
    std::string_view file = {};   // with its quotes; empty: this workbook
    Corner first = {}, last = {}; // the same where it is one cell
};

/// The reference that begins at a place in a formula.
struct FoundReference {
    Reference reference;
    std::size_t end;
};
std::optional<FoundReference> reference_at(std::string_view formula, std::size_t at);

/// Of a token that is one.
Reference reference_of(Token const& token);

/// The other file that a reference or name belongs to, with its quotes; empty where it is of this workbook.
std::string_view file_named_by(Token const& token);

/// A name as it is written with the sheet that it belongs to: 'My sheet'.local. Nothing where there is no such sheet.
struct LocalName {
    std::string_view sheet, name; // the sheet with its quotes, where it has any
};
std::optional<LocalName> local_name_in(std::string_view text);

/// Cells of some sheet, from a corner to the opposite one; all count from 0.
struct Block {
    int top, left, bottom, right;
};
Block block_of(Reference const& reference);

/// Where cells stand: "Runs.B4", "'My sheet'.$A$1:$C$20". Without a formula around it the sheet's name needs no quotes,
/// whatever is in it.
struct Address {
    std::string sheet;
    Block block;
};
std::optional<Address> address_in(std::string_view text);

/// "AB12"; both count from 0.
std::string cell_name(int column, int row);

} // namespace hearthcell::formulas
