#pragma once
// Examples: what a function is given, and what it must give.

#include "functions/catalogue/list.hpp"
#include "functions/contract/kernel.hpp"
#include "functions/number/meaning.hpp"

#include <array>
#include <limits>

namespace hearthcell {

enum class CellKind { omitted, number, text, column };

/// One argument of an example: nothing, a number, a text, or readings in a column (NaN: an empty cell).
struct Cell {
    CellKind kind = CellKind::omitted;
    double number = 0;
    std::string_view text;
    std::span<double const> column;

    constexpr Cell() = default;
    constexpr Cell(double value) : kind(CellKind::number), number(value) {}
    constexpr Cell(int value)
        : kind(CellKind::number), number(value) {} // a literal 0 would pass for a null pointer, too
    constexpr Cell(char const* value) : kind(CellKind::text), text(value) {}
    template <std::size_t Rows>
    constexpr Cell(std::array<double, Rows> const& values) : kind(CellKind::column), column(values) {}
};
inline constexpr Cell omitted{};
inline constexpr double blank = std::numeric_limits<double>::quiet_NaN();

enum class ExpectedKind { number, text, error, block };

/// What an example must give: a number, a text, an error, or a block of them, row by row.
struct Expected {
    ExpectedKind kind = ExpectedKind::number;
    double number = 0, tolerance = 0;
    std::string_view text;
    Error error = Error::number;
    Expected const* elements = nullptr; ///< of a block
    std::size_t rows = 0, columns = 0;

    constexpr Expected() = default;
    constexpr Expected(double value, double allowed) : number(value), tolerance(allowed) {}
    constexpr Expected(char const* value) : kind(ExpectedKind::text), text(value) {}
    constexpr Expected(Error value) : kind(ExpectedKind::error), error(value) {}
    template <std::size_t Elements>
    constexpr Expected(std::array<Expected, Elements> const& block, std::size_t rows_of_it = 1)
        : kind(ExpectedKind::block), elements(block.data()), rows(rows_of_it), columns(Elements / rows_of_it) {}
};

struct Example {
    List<Cell, most_arguments> arguments{};
    Expected expected;
    std::string_view from; ///< where the value comes from
};

} // namespace hearthcell
