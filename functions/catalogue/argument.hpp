#pragma once
// What a function takes: one argument, the table of names that may stand for a number, and where typical values come
// from.

#include "functions/catalogue/glossary.hpp"
#include "functions/catalogue/list.hpp"
#include "functions/catalogue/measure.hpp"
#include "functions/number/reason.hpp"

#include <cstdint>
#include <span>

namespace hearthcell {

/// A published document, or the plain statement that there is none.
struct Source {
    Label title;
    bool from_memory = false; ///< not opened by us: clause and figures still have to be checked against the document
};

/// A row of a table of typical values.
struct Named {
    Wording name; ///< any of the four may be typed, in whatever language the office speaks
    double value;
    Source source;
    Wording what{};                     ///< of which state of the thing that value is: net, dry
    List<std::string_view, 12> also{};  ///< other names that it answers to
    bool as_fired = false;              ///< the value holds for the mass as it is burned, not for that of dry fuel
    double low = absent, high = absent; ///< the interval that the source gives; absent where none is known
};
struct NameTable {
    struct Fingerprint {
        std::uint32_t of_name = 0;
        std::size_t row = 0;
    };
    std::string_view listed_by; ///< the function whose guide shows the table
    Measure measure;            ///< of the values
    std::span<Named const> rows;
    std::span<Fingerprint const> fingerprints; ///< of every name of every row, in the order of the rows
};

enum class ArgumentKind {
    number,
    number_or_name, ///< a number, or a name that stands in a table
    name,           ///< only a name that stands in a table
    choice,         ///< one of a few fixed texts
    column,         ///< a row or column of readings, or one reading; or of names too, where there is a table
    mixed,          ///< a row or column in which texts and blanks stand for themselves
    matrix,         ///< a block of numbers
    anything,       ///< a text, a number, or a row or column of both
    text,
    part, ///< a word for the part of the result that is wanted; the last argument of a function with parts
    rest, ///< any further arguments
};

/// Whether an equation is given its place in a list: one of a few texts, or of the parts of the result.
constexpr bool is_chosen(ArgumentKind kind) {
    return kind == ArgumentKind::choice || kind == ArgumentKind::part;
}

/// Whether a block of cells is what it wants, and stays one even of one cell.
constexpr bool takes_a_block(ArgumentKind kind) {
    return kind == ArgumentKind::column || kind == ArgumentKind::mixed || kind == ArgumentKind::matrix;
}

struct Argument {
    Term name{}; ///< in words, as in a heading; the IDL name is made from the English one
    Measure measure = Measure::ratio;
    double low = 0, high = 0; ///< both allowed
    Wording help{};
    ArgumentKind kind = ArgumentKind::number;
    NameTable const* table = nullptr;    ///< for names
    bool lists_names = false;            ///< its texts show the whole table; others refer to the function that does
    List<std::string_view, 5> choices{}; ///< for a choice; the first is the default
    bool optional = false;
    double fallback = absent;      ///< of an optional number
    Wording absent_means{};        ///< what leaving it out means, where there is no constant default
    bool zero_is_doubtful = false; ///< 0 is allowed, but an empty cell gives the same
    bool clock = false;            ///< of a number of minutes: a text as 9:17 is a time of day
    bool headed = false;           ///< of a column: texts above its first number are its heading
};

} // namespace hearthcell
