#include "extension/formulas/reference.hpp"

#include "extension/formulas/letters.hpp"
#include "extension/formulas/quotes.hpp"

#include <algorithm>

namespace hearthcell::formulas {
namespace {

constexpr int letters_of_alphabet = 26;
constexpr std::size_t most_letters = 3, most_digits = 7;

/// Takes characters from the front of a text.
class Front {
public:
    explicit Front(std::string_view text) : rest_(text) {}

    bool take_sign() {
        bool const is_there = rest_.starts_with('$');
        rest_.remove_prefix(is_there ? 1 : 0);
        return is_there;
    }
    template <class Is> std::string_view take(Is is, std::size_t most) {
        std::size_t size = 0;
        while (size < std::min(most, rest_.size()) && is(rest_[size]))
            ++size;
        std::string_view const taken = rest_.substr(0, size);
        rest_.remove_prefix(size);
        return taken;
    }
    [[nodiscard]] bool is_empty() const { return rest_.empty(); }

private:
    std::string_view rest_;
};

/// From 0; nothing where the letters or digits are none or too many for Calc.
std::optional<int> column_of(std::string_view letters) {
    int number = 0;
    for (char const letter : letters)
        number = number * letters_of_alphabet + (letter & 0x1F); // a and A are 1
    return number > 0 && number - 1 <= last_column ? std::optional(number - 1) : std::nullopt;
}

std::optional<int> row_of(std::string_view digits) {
    int number = 0;
    for (char const digit : digits)
        number = number * 10 + (digit - '0');
    bool const is_row = number > 0 && digits.front() != '0' && number - 1 <= last_row;
    return is_row ? std::optional(number - 1) : std::nullopt;
}

/// Reads "$B$7", "B" or "7" whole.
bool read_cell(std::string_view text, Corner& corner) {
    Front front(text);
    bool sign = front.take_sign();
    if (std::string_view const letters = front.take(is_letter, most_letters); !letters.empty()) {
        corner.column = column_of(letters);
        corner.column_fixed = sign;
        if (!corner.column)
            return false;
        if (front.is_empty()) {
            corner.cell = text;
            return true;
        }
        sign = front.take_sign();
    }
    corner.row = row_of(front.take(is_digit, most_digits));
    corner.row_fixed = sign;
    corner.cell = text;
    return corner.row && front.is_empty();
}

/// A sheet's name that stands without quotes; false where none can be called so.
bool read_plain_sheet(std::string_view name, Corner& corner) {
    corner.sheet_fixed = name.starts_with('$');
    name.remove_prefix(corner.sheet_fixed ? 1 : 0);
    corner.sheet = name;
    bool const is_number = std::all_of(name.begin(), name.end(), is_digit);
    return name.find('$') == std::string_view::npos && (name.empty() ? !corner.sheet_fixed : !is_number);
}

/// One end of a reference; `at` moves behind it.
std::optional<Corner> read_corner(std::string_view formula, std::size_t& at) {
    Corner corner;
    if (formula.substr(at).starts_with("$'")) {
        corner.sheet_fixed = true;
        ++at;
    }
    if (formula.substr(at).starts_with('\'')) {
        std::size_t const end = past_quotes(formula, at);
        if (end == std::string_view::npos || !formula.substr(end).starts_with('.'))
            return std::nullopt;
        corner.sheet = formula.substr(at, end - at);
        at = end + 1;
    }
    std::string_view word = word_at(formula, at);
    at += word.size();
    if (auto const dot = word.rfind('.'); dot != std::string_view::npos) {
        if (!corner.sheet.empty() || !read_plain_sheet(word.substr(0, dot), corner))
            return std::nullopt;
        word.remove_prefix(dot + 1);
    }
    if (!read_cell(word, corner) || (corner.sheet.empty() && is_before_bracket(formula, at)))
        return std::nullopt;
    return corner;
}

/// Whether they can stand on both sides of a colon.
bool is_pair(Corner const& one, Corner const& other) {
    return one.row.has_value() == other.row.has_value() && one.column.has_value() == other.column.has_value();
}

/// A text that is one reference and nothing else.
std::optional<Reference> whole_reference(std::string_view text) {
    auto const found = reference_at(text, 0);
    return found && found->end == text.size() ? std::optional(found->reference) : std::nullopt;
}

} // namespace

std::optional<FoundReference> reference_at(std::string_view formula, std::size_t at) {
    FoundReference found{};
    if (formula.substr(at).starts_with('\''))
        if (auto const end = past_quotes(formula, at);
            end != std::string_view::npos && formula.substr(end).starts_with('#')) {
            found.reference.file = formula.substr(at, end - at);
            at = end + 1;
        }
    auto const first = read_corner(formula, at);
    if (!first)
        return std::nullopt;
    found.reference.first = found.reference.last = *first;
    found.end = at;
    if (formula.substr(at).starts_with(':'))
        if (auto const last = read_corner(formula, ++at); last && is_pair(*first, *last)) {
            found.reference.last = *last;
            found.end = at;
            return found;
        }
    return first->row && first->column ? std::optional(found) : std::nullopt;
}

Reference reference_of(Token const& token) {
    auto const found = reference_at(token.text, token.text.starts_with('[') ? 1 : 0);
    return found ? found->reference : Reference{};
}

std::string_view file_named_by(Token const& token) {
    if (token.kind == TokenKind::reference)
        return reference_of(token).file;
    bool const is_quoted = token.kind == TokenKind::name && token.text.starts_with('\'');
    std::size_t const end = is_quoted ? past_quotes(token.text, 0) : 0;
    return token.text.substr(0, token.text.substr(end).starts_with('#') ? end : 0);
}

std::optional<LocalName> local_name_in(std::string_view text) {
    text.remove_prefix(text.starts_with('$') ? 1 : 0);
    // A sheet's name that has a dot in it stands in quotes.
    std::size_t const dot = text.starts_with('\'') ? past_quotes(text, 0) : text.find('.');
    if (dot == std::string_view::npos || !text.substr(dot).starts_with('.'))
        return std::nullopt;
    return LocalName{text.substr(0, dot), text.substr(dot + 1)};
}

Block block_of(Reference const& reference) {
    Corner const &a = reference.first, &b = reference.last;
    return {std::min(a.row.value_or(0), b.row.value_or(0)), std::min(a.column.value_or(0), b.column.value_or(0)),
            std::max(a.row.value_or(last_row), b.row.value_or(last_row)),
            std::max(a.column.value_or(last_column), b.column.value_or(last_column))};
}

std::optional<Address> address_in(std::string_view text) {
    if (auto const reference = whole_reference(text); reference && !reference->first.sheet.empty()) {
        std::string const sheet = unquoted(reference->first.sheet);
        std::string_view const other = reference->last.sheet;
        if (!reference->file.empty() || (!other.empty() && unquoted(other) != sheet))
            return std::nullopt;
        return Address{sheet, block_of(*reference)};
    }
    auto const dot = text.rfind('.');
    if (dot == std::string_view::npos)
        return std::nullopt;
    std::string_view sheet = text.substr(0, dot);
    sheet.remove_prefix(sheet.starts_with('$') ? 1 : 0);
    auto const cells = whole_reference(text.substr(dot + 1));
    if (!cells || sheet.empty() || !cells->first.sheet.empty())
        return std::nullopt;
    return Address{std::string(sheet), block_of(*cells)};
}

std::string cell_name(int column, int row) {
    std::string letters;
    for (int rest = column + 1; rest > 0; rest = (rest - 1) / letters_of_alphabet)
        letters.insert(letters.begin(), static_cast<char>('A' + (rest - 1) % letters_of_alphabet));
    return letters + std::to_string(row + 1);
}

} // namespace hearthcell::formulas
