#include "storm_call.hpp"

#include "ground.hpp"

namespace hearthcell::storm {

std::string_view name_of(Written written) {
    static constexpr std::string_view names[] = {"omitted argument",
                                                 "number",
                                                 "text",
                                                 "expression",
                                                 "logical value",
                                                 "own cell",
                                                 "cell of another sheet",
                                                 "INDIRECT",
                                                 "named range",
                                                 "intersection",
                                                 "range",
                                                 "range of one cell",
                                                 "block",
                                                 "whole column",
                                                 "whole row",
                                                 "row of own cells",
                                                 "inline array",
                                                 "nested call",
                                                 "several ranges",
                                                 "broken reference",
                                                 "unknown sheet",
                                                 "unknown name",
                                                 "itself"};
    static_assert(std::size(names) == std::size_t(Written::count));
    return names[std::size_t(written)];
}

std::string Call::text() const {
    std::string result = "STOVE." + std::string(function->name) + "(";
    for (std::size_t i = 0; i < operands.size(); ++i)
        result += (i == 0 ? "" : ";") + operands[i].text;
    return result + ")";
}

namespace {

template <class Move> void move_operands(Call& call, int sheet, Move const& move) {
    for (Operand& operand : call.operands) {
        if (auto const* nested = std::get_if<std::shared_ptr<Call>>(&operand.meaning)) {
            auto moved = std::make_shared<Call>(**nested); // the old one belongs to what an undo brings back
            move_operands(*moved, sheet, move);
            operand.meaning = std::move(moved);
        }
        Area* const area = std::get_if<Area>(&operand.meaning);
        if (area != nullptr && area->sheet == sheet && !operand.stays && !area->whole_columns() && !move(*area))
            operand.meaning = some_error; // what Calc finds where there is no cell any more is its own affair
    }
}

void move_formula(Call& call, int row) {
    call.row = row;
    for (Operand& operand : call.operands)
        if (auto const* nested = std::get_if<std::shared_ptr<Call>>(&operand.meaning))
            (*nested)->row = row;
}

} // namespace

void insert_rows(Call& call, int sheet, int row, int count) {
    move_operands(call, sheet, [&](Area& area) {
        area.top += area.top >= row ? count : 0;
        area.bottom += area.bottom >= row ? count : 0;
        return true;
    });
    if (sheet == calls_sheet && call.row >= row)
        move_formula(call, call.row + count);
}

void delete_rows(Call& call, int sheet, int row, int count) {
    int const end = row + count;
    move_operands(call, sheet, [&](Area& area) {
        if (area.top >= row && area.bottom < end)
            return false;
        area.top = area.top >= end ? area.top - count : std::min(area.top, row);
        area.bottom = area.bottom >= end ? area.bottom - count : std::min(area.bottom, row - 1);
        return true;
    });
    if (sheet != calls_sheet || call.row < row)
        return;
    call.gone = call.row < end;
    move_formula(call, call.row - count);
}

} // namespace hearthcell::storm
