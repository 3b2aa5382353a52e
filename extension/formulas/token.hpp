#pragma once
// The words of a formula of Calc: what everybody means here who takes a formula apart.
//
// Read are formulas as the office's programming interface gives them (=SUM(A1:B2;'My sheet'.C3)), as ODF files hold
// them (of:=SUM([.A1:.B2];['My sheet'.C3])), and what ODF files hold beside them: conditions, and addresses without a
// formula around them (Runs.A1:.C20). Not read as such are references in the way of other programs (Sheet1!A1, R1C1).

#include <cstddef>
#include <string_view>

namespace hearthcell::formulas {

enum class TokenKind {
    start,       // =  of:=  of:  and {= of an array formula
    end,         // } of an array formula
    blank,       // any number of spaces
    number,      // 4.186  .5  1E-3
    text,        // "a ""word"""
    reference,   // A1  $B$2:C7  A:C  1:5  'My sheet'.A1  'file:///site.ods'#$Sheet1.A1  [.A1:.B2]
    name,        // calorific_value  site.boil  'My sheet'.local  'file:///site.ods'#altitude
    table,       // Runs[[#This Row];[Mass]]
    function,    // SUM: a name before a bracket
    error,       // #REF!  Sheet1.$#REF!  Err:504
    operation,   // + - * / ^ & % = <> < <= > >=, and : ~ ! between references
    open,        // (
    close,       // )
    separator,   // ; or ,
    array_open,  // {
    array_close, // }
    array_row,   // |
    unknown      // anything else; also a quotation mark or bracket that nothing closes, with all that follows it
};

struct Token {
    TokenKind kind;
    std::size_t start;     // where it stands in the formula
    std::string_view text; // a part of the formula, which must live as long

    [[nodiscard]] std::size_t end() const { return start + text.size(); }
};

} // namespace hearthcell::formulas
