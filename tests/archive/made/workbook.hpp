#pragma once
// What a workbook of the test archive holds, and what has to become of it. All figures in it are invented.

#include "extension/office/sheet.hpp"

#include <filesystem>
#include <map>
#include <string>
#include <variant>
#include <vector>

namespace hearthcell::tests::archive {

using office::CellError;

/// Nothing, a number, a text or an error.
using Held = std::variant<std::monostate, double, std::string, CellError>;

struct Cell {
    Held stored;              ///< what the file says the cell shows
    std::string formula{};    ///< as .ods files hold it, without "of:"; none for what was typed in
    Held now{};               ///< what a formula gives with today's functions
    std::string shown{};      ///< the formula as the user sees it, where a test looks at it
    bool is_volatile = false; ///< gives something else every time
    bool result = false;      ///< set in bold
};

struct Sheet {
    std::string name;
    std::vector<std::vector<Cell>> rows;
    bool chart = false;      ///< a bar chart of B1:B4
    std::string source{};    ///< where a linked sheet comes from: a table:table-source element, as XML
    std::string more_rows{}; ///< XML, for sheets too large for a Cell each
};

struct Workbook {
    std::filesystem::path path; ///< inside the archive; its ending is the format
    std::vector<Sheet> sheets;
    std::map<std::string, std::string> names; ///< name → "$Readings.$B$1"
    std::string scripts{};                    ///< office:scripts, as XML
};

/// One row that changes.csv has to have.
struct Change {
    std::string file, sheet, cell;
    Held before, after;
    std::string kind;
    std::string formula; ///< empty: not looked at
};

std::string cell_name(std::size_t row, std::size_t column); // both from 0: "B1"

std::vector<Change> expected_changes(Workbook const& workbook);

bool has_new_errors(Workbook const& workbook);

} // namespace hearthcell::tests::archive
