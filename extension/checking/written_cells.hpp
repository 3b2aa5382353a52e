#pragma once
// The cells of a document's private copy, written as values: block by block, as fast as the office takes them.

#include "extension/checking/contents.hpp"

#include <com/sun/star/sheet/XSpreadsheet.hpp>

#include <vector>

namespace hearthcell::checking {

class WrittenCells {
public:
    using Sheets = std::vector<com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet>>;

    /// Both stay, and the sheets are those of the contents.
    WrittenCells(Contents const& contents, Sheets const& sheets);

    /// Writes a number of them; false when all are there.
    bool go_on();
    [[nodiscard]] double done() const;

    /// Gives one cell back what it holds in the document.
    void put_back(Place const& place) const;

private:
    using Cell = std::map<Place, Content>::const_iterator;
    using Formulas = std::map<std::pair<int, int>, rtl::OUString>; // by column and row

    void write_rows();
    void write_block(std::vector<Cell> const& cells, int left, int right) const;
    void write_formulas(int sheet, Formulas const& formulas) const;

    Contents const& contents_;
    Sheets const& sheets_;
    Cell next_; // to be written
    std::size_t written_ = 0;
};

} // namespace hearthcell::checking
