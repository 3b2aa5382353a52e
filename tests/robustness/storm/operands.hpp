#pragma once
// Random arguments in every way that a formula can write them.

#include "ground.hpp"
#include "storm_call.hpp"

namespace hearthcell::storm {

/// A cell or a range of Data or Other under a name that the document defines.
struct NamedArea {
    std::string name;
    Area area;
};

class Operands {
public:
    /// Cells that a call needs for itself are typed into the ground.
    Operands(Chance& chance, Ground& ground);

    /// The call in this row of the sheet Calls comes next.
    void start(int row);

    /// The same number, text or readings, written in one way or another.
    Operand number(double number);
    Operand text(std::string const& text);
    Operand readings(std::span<double const> example);
    Operand correlations();

    /// Anything in this way of writing; not a nested call.
    Operand anything(Written how);

    [[nodiscard]] std::vector<NamedArea> const& names() const { return names_; }

private:
    Operand own_cell(std::string const& typed);
    Operand own_cell_there(std::string const& typed);
    Operand row_of_own_cells(std::span<double const> values);
    Operand range(Area const& area, Written how);
    Operand inline_array(std::size_t rows, std::size_t columns, std::vector<Content> cells);
    Operand any_array();
    Operand any_named();
    Operand through_indirect();
    Operand intersection();
    Area any_area(int rows, int columns);

    Chance& chance_;
    Ground& ground_;
    std::vector<NamedArea> names_;
    int row_ = 0;
    int own_ = 0, own_there_ = 0;       // how many of its own cells the call has used
    int sheet_ = data_sheet;            // the log that the columns of one call share
    int first_reading_ = 0, count_ = 0; // likewise
    bool ragged_ = false;               // or do not share
};

} // namespace hearthcell::storm
