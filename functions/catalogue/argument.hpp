#pragma once
// What a function takes: one argument, the table of names that may stand for a number, and where typical values come
// from.

#include "functions/catalogue/language.hpp"
#include "functions/catalogue/list.hpp"
#include "functions/catalogue/measure.hpp"
#include "functions/number/reason.hpp"

#include <span>

namespace hearthcell {

/// A published document, or the plain statement that there is none.
struct Source {
    std::string_view title;
    bool from_memory = false; ///< not opened by us: clause and figures still have to be checked against the document
};

/// A row of a table of typical values.
struct Named {
    std::string_view name;
    double value;
    Source source;
};
struct NameTable {
    std::string_view what; ///< "fuel", "pot material"
    std::span<Named const> rows;
};

enum class ArgumentKind {
    number,
    number_or_name, ///< a number, or a name that stands in a table
    name,           ///< only a name that stands in a table
    choice,         ///< one of a few fixed texts
    column,         ///< a row or column of readings, or one reading
    mixed,          ///< a row or column in which texts and blanks stand for themselves
    matrix,         ///< a block of numbers
    anything,       ///< a text, a number, or a row or column of both
    text,
    rest, ///< any further arguments
};

struct Argument {
    std::string_view name{}; ///< in words, as in a heading; the IDL name is made from it
    Measure measure = Measure::ratio;
    double low = 0, high = 0; ///< both allowed
    Wording help{};
    ArgumentKind kind = ArgumentKind::number;
    NameTable const* table = nullptr;    ///< for names
    List<std::string_view, 5> choices{}; ///< for a choice; the first is the default
    bool optional = false;
    double fallback = absent;      ///< of an optional number
    Wording absent_means{};        ///< what leaving it out means, where there is no constant default
    bool zero_is_doubtful = false; ///< 0 is allowed, but an empty cell gives the same
    bool headed = false;           ///< of a column: texts above its first number are its heading
};

} // namespace hearthcell
