#pragma once
// Number formats: those of carried cells, and units that formats show.

#include "extension/archive/example/plan.hpp"
#include "extension/office/document.hpp"

#include <map>
#include <string>
#include <tuple>

namespace hearthcell::archive {

/// What a number format says of the unit: "%", "clock", "date", the words in it ("kg"); empty: nothing.
struct FormatUnit {
    std::string unit;
    bool is_mixed = false; // of a block of cells: not all the same
};
class FormatUnits {
public:
    explicit FormatUnits(office::Document const& workbook) : workbook_(workbook) {}
    FormatUnit of(formulas::Range const& cells);

private:
    std::string const& of_key(std::int32_t key);

    office::Document const& workbook_;
    std::map<std::int32_t, std::string> known_;
};

/// A number format as it is put into another workbook.
struct NumberFormat {
    std::string code, language, country;
};

/// What an office says of the examples of a run.
struct ExampleFormats {
    using Cell = std::tuple<std::size_t, int, int, int>; // example, sheet of OLD, row, column
    std::map<Cell, NumberFormat> of_new;                 // cells that are empty in OLD
    std::map<Cell, std::string> unit_of_old;
};

/// Opens NEW and OLD of each example in a folder of their own. Throws std::exception.
ExampleFormats formats_of(office::Office& office, ExampleSet const& set, std::filesystem::path const& folder,
                          std::uint64_t largest);

void put_format(office::Document const& workbook, formulas::Range const& cells, NumberFormat const& format);

} // namespace hearthcell::archive
