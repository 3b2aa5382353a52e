#pragma once
// Small tables of real use: readings as they stand on a bench or in a house, the functions that they go into, and which
// reading goes into which argument. All figures are invented.

#include "functions/words/language.hpp"
#include "manifest/generator/guide/sheet.hpp"

#include <span>

namespace hearthcell::generator::guide {

/// A line of a table. `given` is a number as it is typed ("4%" or "1240"), a text between quotation marks, or, with a
/// sign of equality, a formula whose {1}, {2} are the values of the table's lines and {2:7} several of them.
struct Line {
    Wording what;
    std::string_view given;
    std::string_view unit{};
    Wording note{};
    std::string_view pair{}; ///< a second number beside the first, which {2:7'} means
    int digits = -1;         ///< of a result, behind the decimal sign; as Calc shows it without
};

struct Use {
    Wording title;
    std::span<Line const> lines;
};

std::span<Use const> uses_on_the_bench();
std::span<Use const> uses_of_gases();
std::span<Use const> uses_elsewhere();

/// The sheet of all tables.
Sheet uses_sheet(Language language);

} // namespace hearthcell::generator::guide
