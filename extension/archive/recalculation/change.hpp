#pragma once
// One result that is another one now.

#include "extension/archive/files/stored.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <optional>
#include <set>
#include <string>

namespace hearthcell::archive {

/// In what way a result is another one now.
/// Last digits: not worth a look, and not counted. Sums are added up in another order, clock times cancel.
enum class ChangeKind { number, last_digits, text, new_error, error_gone, other_error };
std::string_view words(ChangeKind kind);

/// Why a change is not counted: a function that changes by itself, or a cell that such a cell feeds.
enum class Volatility { none, itself, follows };
std::string_view words(Volatility volatility);

struct Change {
    Place place;
    std::string sheet;
    std::string formula; // as the user sees it
    Value before;
    Value after;
    std::optional<double> relative; // of the number before
    ChangeKind kind = ChangeKind::number;
    Volatility volatility = Volatility::none;
    std::set<Function const*> functions; // of ours, that the formula calls, be it through names
    bool own = false;                    // reads no cell that has changed: it is computed in another way now
};

/// Calc's error where a formula would have to ask another file or the net, and must not.
inline constexpr int link_not_followed = 540;

/// Nothing when both are the same. A file holds 15 digits of a number, so that one unit of the fifteenth is no change;
/// nor is it when the file names an error more coarsely than Calc does.
std::optional<ChangeKind> kind_of_change(Stored const& before, Value const& after);

/// To six digits, as changes.csv has it.
std::optional<double> relative_change(Value const& before, Value const& after);
std::string written_relative(double relative);

} // namespace hearthcell::archive
