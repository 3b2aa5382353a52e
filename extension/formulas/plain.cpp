#include "extension/formulas/plain.hpp"

#include "extension/formulas/letters.hpp"
#include "extension/formulas/moved.hpp"
#include "extension/formulas/number.hpp"
#include "extension/formulas/quotes.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/rewriting.hpp"
#include "extension/formulas/tokens.hpp"

#include <algorithm>
#include <array>

namespace hearthcell::formulas {
namespace {

constexpr int digits_that_files_hold = 15;

/// What files write before the names of functions that were not in their format at first.
constexpr std::array<std::string_view, 5> additions{"com.microsoft.", "org.libreoffice.", "org.openoffice.", "legacy.",
                                                    "_xlfn."};

std::string_view without_additions(std::string_view function) {
    std::string const name = folded(function);
    for (std::string_view const addition : additions)
        if (name.starts_with(addition))
            return function.substr(addition.size());
    return function;
}

std::string plain_corner(Corner const& corner) {
    std::string const sheet =
        corner.sheet.empty() ? "" : (corner.sheet_fixed ? "$" : "") + std::string(corner.sheet) + ".";
    return sheet + std::string(corner.cell);
}

std::string plain_reference(Token const& token) {
    Reference reference = reference_of(token);
    if (!token.text.starts_with('[') || !reference.file.empty())
        return std::string(token.text);
    std::string const first = plain_corner(reference.first);
    if (reference.last.cell.data() == reference.first.cell.data())
        return first;
    if (reference.last.sheet.data() == reference.first.sheet.data())
        reference.last.sheet = {};
    return first + ":" + plain_corner(reference.last);
}

std::string without_dollars(Token const& token) {
    Reference const reference = reference_of(token);
    auto const corner = [](Corner const& of) {
        std::string cell = folded(of.cell);
        std::erase(cell, '$');
        return (of.sheet.empty() ? "" : quoted(folded(unquoted(of.sheet)), '\'') + ".") + cell;
    };
    std::string const first = std::string(reference.file) + corner(reference.first);
    return reference.last.cell.data() == reference.first.cell.data() ? first : first + ":" + corner(reference.last);
}

/// A token as it is compared; nothing: as it stands.
std::optional<std::string> compared(Token const& token) {
    switch (token.kind) {
    case TokenKind::blank:
    case TokenKind::end:
        return "";
    case TokenKind::start:
        return "=";
    case TokenKind::separator:
        return ";";
    case TokenKind::number:
        if (auto const number = number_in(token.text))
            return number_text(*number, digits_that_files_hold);
        return std::nullopt;
    case TokenKind::name:
        return folded(token.text);
    case TokenKind::function:
        return folded(without_additions(token.text));
    default:
        return std::nullopt;
    }
}

} // namespace

std::string plain(std::string_view formula) {
    return rewritten(formula, [](Token const& token) -> std::optional<std::string> {
        if (token.kind == TokenKind::start)
            return "=";
        if (token.kind == TokenKind::function)
            return std::string(without_additions(token.text));
        if (token.kind == TokenKind::separator)
            return ";";
        return token.kind == TokenKind::reference ? std::optional(plain_reference(token)) : std::nullopt;
    });
}

std::string comparable(std::string_view formula) {
    return rewritten(formula, [](Token const& token) {
        return token.kind == TokenKind::reference ? std::optional(without_dollars(token)) : compared(token);
    });
}

std::string seen_from(Place const& cell, std::string_view formula) {
    return rewritten(relative_to(cell, formula), compared);
}

} // namespace hearthcell::formulas
