#pragma once
// One sheet of an open spreadsheet, and what its cells hold.

#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/table/CellRangeAddress.hpp>

#include <string>
#include <variant>
#include <vector>

namespace hearthcell::office {

/// A Calc error: 502 argument, 503 #NUM!, 504 parameter list, 519 #VALUE!, 525 #NAME?, 532 #DIV/0!, 32767 #N/A …
struct CellError {
    int code;
    bool operator==(CellError const&) const = default;
};

/// What a cell holds: an empty cell is an empty text.
using CellValue = std::variant<double, std::string, CellError>;

using TextRows = std::vector<std::vector<std::string>>;
using ValueRows = std::vector<std::vector<CellValue>>;

/// One sheet of a document. Addresses are written as in Calc: "B3", "A1:C20". Formulas are English, with `;`.
class Sheet {
public:
    explicit Sheet(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet);

    void number(std::string const& address, double value);
    void text(std::string const& address, std::string const& value);
    void formula(std::string const& address, std::string const& text); // as if typed: also numbers and texts
    void array_formula(std::string const& range, std::string const& text);
    /// Numbers and texts, where a person may type them: throws at a cell that is locked. Leaves empty texts out.
    void type(std::string const& range, ValueRows const& rows);
    void formulas(std::string const& top_left, TextRows const& rows); // one call for the whole block
    void fill_down(std::string const& range);                         // from its first row

    [[nodiscard]] CellValue value(std::string const& address) const;
    [[nodiscard]] ValueRows values(std::string const& range) const;
    [[nodiscard]] std::string formula(std::string const& address) const; // an array formula in braces
    [[nodiscard]] std::string shown(std::string const& address) const;   // as displayed, with its number format
    [[nodiscard]] TextRows shown_rows(std::string const& range) const;
    [[nodiscard]] int error(std::string const& address) const; // 0: none
    /// The words that a cell lets one choose from, in their order.
    [[nodiscard]] std::vector<std::string> choices(std::string const& address) const;

    [[nodiscard]] std::string name() const;

private:
    [[nodiscard]] com::sun::star::uno::Reference<com::sun::star::table::XCellRange>
    range(std::string const& address) const;
    [[nodiscard]] com::sun::star::uno::Reference<com::sun::star::table::XCell> cell(std::string const& address) const;

    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> sheet_;
};

} // namespace hearthcell::office
