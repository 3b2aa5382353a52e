#pragma once
// What files hold, cell by cell, whatever their format; read without an office.

#include "extension/archive/files/room.hpp"
#include "extension/archive/files/value.hpp"
#include "extension/formulas/names.hpp"

#include <filesystem>
#include <string>
#include <string_view>

namespace hearthcell::archive {

struct FoundCell {
    Place place;
    Value value;                   // of a formula: the result that is stored
    bool is_result = false;        // a formula stands there, if only as a cell of an array formula
    std::string_view formula = {}; // where all is wanted, in the way of Calc; may be missing where it cannot be read
    bool clock = false;            // a date or time: written in seconds, not in digits of the number
    bool perhaps_text = false;     // the number is 0, and may stand for a text that the file does not hold
    bool is_array = false;         // where all is wanted: the formula is one of an array, if only of one cell
};

/// Takes what a reader finds. Whoever keeps any of it takes it from a room.
class CellSink {
public:
    CellSink() = default;
    CellSink(CellSink const&) = delete;
    CellSink& operator=(CellSink const&) = delete;
    virtual ~CellSink() = default;

    /// Else only results of formulas are wanted.
    [[nodiscard]] virtual bool wants_all() const { return false; }

    virtual void cell(FoundCell&& found) = 0;
    virtual void sheet(std::string_view /*name*/) {} // the next one
    virtual void merged(formulas::Range const&) {}
    virtual void named(formulas::Definition&&) {}
};

void read_ods(std::filesystem::path const& file, Room& room, CellSink& sink);
void read_fods(std::filesystem::path const& file, Room& room, CellSink& sink);
void read_xlsx(std::filesystem::path const& file, Room& room, CellSink& sink);
bool read_xls(std::filesystem::path const& file, Room& room, CellSink& sink); // false: it is encrypted

} // namespace hearthcell::archive
