#pragma once
// What the guide checks: every example of the catalogue, and every element of one that gives a block.

#include "manifest/generator/guide/readings.hpp"

namespace hearthcell::generator::guide {

/// A call as files hold it and as people write it.
struct Call {
    std::string stored, shown;
};
Call call_of(Function const& function, Example const& example, Readings& readings, Language language);

struct Check {
    std::string formula; ///< as files hold it
    std::string part;    ///< which element of a block; empty for a single value
    Expected const* expected = nullptr;
};
/// The checks of an example in the order of their rows.
std::vector<Check> checks_of(Function const& function, Example const& example, Call const& call, Language language);

/// The formula of a check's verdict, where the columns of its row hold the result, the value that it must give and the
/// margin: "agrees", "differs" or that there is no Hearthcell, in the guide's language.
struct Columns {
    char result, expected, margin;
};
std::string verdict_formula(Expected const& expected, int row, Columns columns, Language language);

/// Gives the verdicts of a column of a sheet their colours.
void judge_verdicts(Sheet& sheet, char column, int first_row, int last_row, Language language);

/// A text as a formula holds it, with its quotes.
std::string text_in_formula(std::string_view text);

/// A sentence in which %1 and %2 are cells or other parts of a formula: "Guide of "&[.A1]&"."
std::string sentence_formula(std::string_view sentence, std::vector<std::string> const& parts);

/// The name of the cell that gives the edition of the Hearthcell that is installed; without one it holds no text.
inline constexpr std::string_view installed_edition = "installed_edition";

} // namespace hearthcell::generator::guide
