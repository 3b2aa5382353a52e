#include "extension/formulas/moved.hpp"

#include "extension/formulas/rewriting.hpp"

#include <utility>

namespace hearthcell::formulas {
namespace {

/// A reference with other words for its cells; nothing for one: there is no such cell.
template <class Word> std::string with_cells(Token const& token, Word const& word) {
    Reference const reference = reference_of(token);
    std::vector<Replacement> replacements;
    for (Corner const* const corner : {&reference.first, &reference.last}) {
        if (corner == &reference.last && corner->cell.data() == reference.first.cell.data())
            continue; // one cell
        auto other = word(*corner);
        if (!other)
            return "#REF!";
        replacements.push_back({corner->cell, std::move(*other)});
    }
    return with_replacements(token.text, replacements);
}

template <class Word> std::string with_all_cells(std::string_view formula, Word const& word) {
    return rewritten(formula, [&](Token const& token) {
        return token.kind == TokenKind::reference ? std::optional(with_cells(token, word)) : std::nullopt;
    });
}

std::optional<int> moved(std::optional<int> place, int by, int last) {
    int const to = place.value_or(0) + by;
    return to >= 0 && to <= last ? std::optional(to) : std::nullopt;
}

std::string letters_of(int column) {
    std::string name = cell_name(column, 0);
    name.pop_back(); // the row's 1
    return name;
}

std::optional<std::string> moved(Corner const& corner, int rows, int columns) {
    auto const column = moved(corner.column, columns, last_column), row = moved(corner.row, rows, last_row);
    if ((corner.column && !column) || (corner.row && !row))
        return std::nullopt;
    std::string text;
    if (corner.column)
        text += (corner.column_fixed ? "$" : "") + letters_of(*column);
    if (corner.row)
        text += (corner.row_fixed ? "$" : "") + std::to_string(*row + 1);
    return text;
}

std::string relative(std::optional<int> place, bool fixed, int from, char axis) {
    if (!place)
        return {};
    return axis + (fixed ? std::to_string(*place) : '[' + std::to_string(*place - from) + ']');
}

} // namespace

std::string moved(std::string_view formula, int rows, int columns) {
    return with_all_cells(formula, [&](Corner const& corner) {
        return moved(corner, corner.row_fixed ? 0 : rows, corner.column_fixed ? 0 : columns);
    });
}

std::string moved_reference(Token const& reference, int rows, int columns) {
    return with_cells(reference, [&](Corner const& corner) { return moved(corner, rows, columns); });
}

std::string with_block(Token const& reference, Block const& block) {
    bool is_first = true;
    return with_cells(reference, [&](Corner corner) {
        bool const first = std::exchange(is_first, false);
        corner.row = first ? block.top : block.bottom;
        corner.column = first ? block.left : block.right;
        return moved(corner, 0, 0);
    });
}

std::string relative_to(Place const& cell, std::string_view formula) {
    return with_all_cells(formula, [&](Corner const& corner) {
        return std::optional(relative(corner.row, corner.row_fixed, cell.row, 'R') +
                             relative(corner.column, corner.column_fixed, cell.column, 'C'));
    });
}

} // namespace hearthcell::formulas
