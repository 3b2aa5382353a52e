#pragma once
// The cells that the calls point at, as Calc holds them: kept in step with everything the storm does to the document.

#include "chance.hpp"
#include "contents.hpp"

#include "extension/office/document.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <map>

namespace hearthcell::storm {

constexpr int calls_sheet = 0, data_sheet = 1, other_sheet = 2, sheets = 3;
constexpr char const* sheet_names[sheets] = {"Calls", "Data", "Other"};
constexpr int data_rows = 60;        // of the sheets Data and Other
constexpr int moving_rows = 40;      // rows are inserted and deleted above this one
constexpr int call_column = 0;       // of the sheet Calls: the formulas
constexpr int first_own_column = 2;  // right of each formula, cells of its own
constexpr int own_columns = 24;      // of a formula in Calls
constexpr int own_columns_there = 6; // of a formula in Other, right of the data

class Ground {
public:
    /// Fills the sheets Data and Other at random: a column for every column of the catalogue's examples, and odd ones.
    explicit Ground(Chance& chance);

    [[nodiscard]] Content const& at(int sheet, int row, int column) const;
    [[nodiscard]] int rows(int sheet) const { return int(sheets_[std::size_t(sheet)].size()); }

    /// Where readings like those of an example's column stand, on Data and Other alike.
    [[nodiscard]] int column_like(double const* example) const;
    [[nodiscard]] int columns() const { return columns_; } // of Data and Other

    /// Puts what is typed into a cell before the document is written.
    void type(int sheet, int row, int column, std::string const& text);

    /// Writes everything that was typed, and learns what Calc made of it.
    void write(office::Document const& document);
    /// Writes one cell of Data or Other, and learns.
    void edit(office::Document const& document, int sheet, int row, int column, std::string const& text);
    /// Learns again what numbers the cells hold: a file may round them. Gives the largest relative change.
    double learn(office::Document const& document);

    void insert_rows(int sheet, int row, int count);
    void delete_rows(int sheet, int row, int count);

private:
    struct Cell {
        std::string typed;
        Content content;
        double learn(office::CellValue const& value);
    };
    using Row = std::vector<Cell>;

    Cell& cell(int sheet, int row, int column);
    void fill(Chance& chance, std::span<double const> example);
    void write(office::Document const& document, int sheet, int left, int columns);

    std::array<std::vector<Row>, sheets> sheets_;
    std::map<double const*, int> column_of_;
    int columns_ = 0;
};

/// Something a person could type: a number, a text, an error, nothing.
std::string anything_typed(Chance& chance);

} // namespace hearthcell::storm
