#include "extension/menu/plan.hpp"

#include <algorithm>

namespace hearthcell::menu {
namespace {

std::string filled(std::string_view text, std::string_view value) {
    std::string words(text);
    if (std::size_t const place = words.find("%1"); place != std::string::npos)
        words.replace(place, 2, value);
    return words;
}

/// "Runs.C11".
std::string place_of(CsvRow const& row) {
    return std::string(in_column(row, "sheet")).append(".").append(in_column(row, "cell"));
}

bool is_left_out(CsvRow const& cell) {
    return !in_column(cell, "note").empty();
}

} // namespace

bool Plan::carries_anything() const {
    return !std::all_of(cells.begin(), cells.end(), is_left_out);
}

Plan read_plan(std::string const& folder) {
    return {csv_rows_of(folder + "/carried.csv"), csv_rows_of(folder + "/constants.csv"),
            csv_rows_of(folder + "/pairs.csv")};
}

std::string lines_of_cells(Plan const& plan, std::string_view instead_of, std::string_view not_carried) {
    std::string lines;
    for (CsvRow const& cell : plan.cells) {
        lines += place_of(cell) + ": ";
        if (is_left_out(cell)) {
            lines += filled(not_carried, in_column(cell, "note")) + "\n";
            continue;
        }
        lines += in_column(cell, "after");
        if (std::string_view const before = in_column(cell, "before"); !before.empty())
            lines += "  (" + filled(instead_of, before) + ")";
        lines += "\n";
    }
    return lines;
}

std::string lines_of_constants(Plan const& plan) {
    std::string lines;
    for (CsvRow const& constant : plan.constants) {
        lines += place_of(constant) + ": ";
        lines.append(in_column(constant, "function")).append(", ").append(in_column(constant, "argument"));
        lines.append(" = ").append(in_column(constant, "value"));
        lines.append("  (").append(in_column(constant, "sheets")).append(")\n");
    }
    return lines;
}

std::string argument_of_pair(CsvRow const& pair) {
    return std::string(in_column(pair, "new")).append("=").append(in_column(pair, "old"));
}

std::string lines_of_readings(std::string const& folder) {
    std::string lines;
    for (CsvRow const& row : csv_rows_of(folder + "/read.csv")) {
        lines.append(in_column(row, "function")).append(", ").append(in_column(row, "argument")).append(": ");
        lines.append(in_column(row, "lowest")).append(" … ").append(in_column(row, "median")).append(" … ");
        lines += in_column(row, "highest");
        if (std::string_view const odd = in_column(row, "odd"); !odd.empty())
            lines.append("  (").append(odd).append(")");
        lines += "\n";
    }
    return lines;
}

} // namespace hearthcell::menu
