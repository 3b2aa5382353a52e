#pragma once
// The cells that an OpenDocument spreadsheet holds, out of its XML.

#include "extension/archive/files/cells.hpp"
#include "extension/archive/files/xml.hpp"

#include <optional>
#include <vector>

namespace hearthcell::archive {

/// Picks the cells out of the XML of a spreadsheet in OpenDocument format (content.xml, or a flat file).
class OdfCells : public Xml {
public:
    OdfCells(Room& room, CellSink& sink) : Xml(room), room_(room), sink_(sink), all_(sink.wants_all()) {}

    /// Of a flat file: what its first element says that it is, "application/vnd.oasis.opendocument.spreadsheet".
    [[nodiscard]] std::string const& media_type() const { return media_type_; }

private:
    void opened(std::string_view name, Attributes const& attributes) override;
    void closed(std::string_view name) override;
    void text(std::string_view letters) override;

    void open_sheet(Attributes const& attributes);
    void open_name(std::string_view name, Attributes const& attributes);
    void open_cell(Attributes const& attributes, bool covered);
    void open_in_cell(std::string_view name, Attributes const& attributes);
    void close_cell();
    void close_row();
    void hold(std::uint64_t bytes); // until the row is read
    [[nodiscard]] bool in_array(int column) const;

    struct Cell { // of the row being read
        int column, repeated;
        Value value;
        bool is_result, clock, is_array;
        std::string formula;
    };
    struct Area { // of an array formula, of which the file holds the formula in the first cell only
        int row, column, rows, columns;
    };
    struct Open { // the cell being read
        bool wanted = false, is_result = false, is_array = false;
        int repeated = 1;
        std::string formula;
        std::string type, raw; // office:value-type and the attribute that goes with it
        std::optional<std::string> string_value;
        bool fault = false;
        std::string shown; // its paragraphs
        int paragraphs = 0;
    };

    Room& room_;
    CellSink& sink_;
    bool const all_; // is wanted, not only results
    std::uint64_t held_ = 0;
    std::string media_type_;
    double null_date_ = 0; // as days since 1970
    bool null_date_known_ = false;

    // Depths at which elements are open; 0 when they are not. A flat file holds whole documents inside drawings, whose
    // tables are none of ours.
    int depth_ = 0, ignored_ = 0, table_ = 0, row_ = 0, cell_ = 0, paragraph_ = 0;
    std::vector<std::string> sheet_names_; // where all is wanted
    int sheet_ = -1, next_row_ = 0, next_column_ = 0, row_repeated_ = 1;
    std::vector<Cell> cells_;
    std::vector<Area> areas_;
    Open open_;
};

} // namespace hearthcell::archive
