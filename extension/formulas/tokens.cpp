#include "extension/formulas/tokens.hpp"

#include "extension/formulas/letters.hpp"
#include "extension/formulas/quotes.hpp"
#include "extension/formulas/reference.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace hearthcell::formulas {
namespace {

constexpr std::array<std::string_view, 3> namespaces{"of:", "oooc:", "msoxl:"}; // before a formula in an ODF file
constexpr std::array<std::string_view, 3> long_operations{"<>", "<=", ">="};
constexpr std::string_view short_operations = "+-*/^&%=<>:~!";
constexpr std::size_t longest_error = 16; // #BEZUG!: other languages have words of their own

/// The error that begins at a place: #REF! #DIV/0! #NAME? #N/A. Nothing where it is another use of the sign.
std::size_t size_of_error(std::string_view text) {
    if (!text.starts_with('#'))
        return 0;
    std::size_t size = 1;
    while (size < std::min(text.size(), longest_error) && (is_in_word(text[size]) || text[size] == '/') &&
           text[size] != '?' && text[size] != '.')
        ++size;
    if (size > 1 && size < text.size() && (text[size] == '!' || text[size] == '?'))
        return size + 1;
    return is_same_name(text.substr(0, size), "#N/A") ? size : 0;
}

class Scanner {
public:
    explicit Scanner(std::string_view formula) : formula_(formula) {}

    std::vector<Token> all() {
        start();
        while (at_ < formula_.size())
            next();
        if (is_array_formula_ && !tokens_.empty() && tokens_.back().kind == TokenKind::array_close)
            tokens_.back().kind = TokenKind::end;
        return std::move(tokens_);
    }

private:
    [[nodiscard]] std::string_view rest() const { return formula_.substr(at_); }

    void take(TokenKind kind, std::size_t size) {
        tokens_.push_back({kind, at_, formula_.substr(at_, size)});
        at_ += size;
    }
    void take_until(TokenKind kind, std::size_t end) { take(kind, end - at_); }
    void take_rest() { take(TokenKind::unknown, formula_.size() - at_); }

    void start() {
        auto const known = std::find_if(namespaces.begin(), namespaces.end(),
                                        [&](std::string_view before) { return formula_.starts_with(before); });
        std::size_t size = known == namespaces.end() ? 0 : known->size();
        is_array_formula_ = size == 0 && formula_.starts_with("{=");
        size += is_array_formula_ ? 2 : formula_.substr(size).starts_with('=') ? 1 : 0;
        if (size > 0)
            take(TokenKind::start, size);
    }

    void next() {
        char const c = formula_[at_];
        if (c == '"')
            return take_quoted();
        if (c == '[')
            return take_odf_reference();
        if (c == '\'' || (is_in_word(c) && !is_number_with_dot()) || blank_at(rest()) > 0)
            return take_word_or_blank();
        if (is_number_with_dot())
            return take_number();
        if (std::size_t const error = size_of_error(rest()))
            return take_error(at_ + error);
        take_sign(c);
    }

    void take_word_or_blank() {
        if (std::size_t size = blank_at(rest())) {
            while (std::size_t const more = blank_at(rest().substr(size)))
                size += more;
            return take(TokenKind::blank, size);
        }
        take_word();
    }

    /// Of a word, the longest reading that makes sense: a reference, a number, an error, a name.
    void take_word() {
        if (auto const found = reference_at(formula_, at_))
            return take_until(TokenKind::reference, found->end);
        std::size_t const end = end_of_name();
        if (end == std::string_view::npos)
            return take_rest();
        if (size_of_error(formula_.substr(end)) > 0)
            return take_error(end);
        std::string_view const word = formula_.substr(at_, end - at_);
        if (is_same_name(word, "Err") && formula_.substr(end).starts_with(':'))
            if (std::string_view const digits = word_at(formula_, end + 1);
                !digits.empty() && std::all_of(digits.begin(), digits.end(), is_digit))
                return take_until(TokenKind::error, end + 1 + digits.size());
        if (is_digit(word[0]) && end_of_number() >= end)
            return take_number();
        if (formula_.substr(end).starts_with('['))
            return take_table(end);
        take_until(is_before_bracket(formula_, end) ? TokenKind::function : TokenKind::name, end);
    }

    /// Past a name with what may stand before it: 'file:///site.ods'#$'My sheet'.name. npos: a quotation mark is open.
    [[nodiscard]] std::size_t end_of_name() const {
        std::size_t at = at_;
        for (;;) {
            at += formula_.substr(at).starts_with("$'") ? 1 : 0;
            if (!formula_.substr(at).starts_with('\''))
                return at + word_at(formula_, at).size();
            at = past_quotes(formula_, at);
            if (at == std::string_view::npos)
                return at;
            std::string_view const behind = formula_.substr(at);
            if (behind.starts_with('.'))
                return at + word_at(formula_, at).size();
            if (!behind.starts_with('#') || size_of_error(behind) > 0)
                return at; // a name in quotes: the heading of a column that stands for it
            ++at;
        }
    }

    /// With what a lost sheet, column or row leaves of a reference: $Sheet1.$#REF!$4
    void take_error(std::size_t end) {
        while (end < formula_.size()) {
            std::size_t const more = std::max(size_of_error(formula_.substr(end)), word_at(formula_, end).size());
            if (more == 0)
                break;
            end += more;
        }
        take_until(TokenKind::error, end);
    }

    [[nodiscard]] bool is_number_with_dot() const {
        return formula_[at_] == '.' && at_ + 1 < formula_.size() && is_digit(formula_[at_ + 1]);
    }

    [[nodiscard]] std::size_t past_digits(std::size_t at) const {
        while (at < formula_.size() && is_digit(formula_[at]))
            ++at;
        return at;
    }

    [[nodiscard]] std::size_t end_of_number() const {
        std::size_t end = past_digits(at_);
        if (formula_.substr(end).starts_with('.'))
            end = past_digits(end + 1);
        if (end < formula_.size() && (formula_[end] == 'E' || formula_[end] == 'e')) {
            bool const has_sign = end + 1 < formula_.size() && (formula_[end + 1] == '+' || formula_[end + 1] == '-');
            std::size_t const digits = end + (has_sign ? 2 : 1);
            if (std::size_t const exponent = past_digits(digits); exponent > digits)
                end = exponent;
        }
        return end;
    }

    void take_number() { take_until(TokenKind::number, end_of_number()); }

    void take_quoted() {
        std::size_t const end = past_quotes(formula_, at_);
        if (end == std::string_view::npos)
            take_rest();
        else
            take_until(TokenKind::text, end);
    }

    /// [.A1:.B2]
    void take_odf_reference() {
        std::size_t at = at_ + 1;
        while (at < formula_.size() && formula_[at] != ']') {
            at = formula_[at] == '\'' ? past_quotes(formula_, at) : at + 1;
            if (at == std::string_view::npos)
                break;
        }
        if (at >= formula_.size())
            return take_rest();
        auto const found = reference_at(formula_, at_ + 1);
        bool const is_lost = formula_.substr(at_, at - at_).find("#REF!") != std::string_view::npos;
        take_until(found && found->end == at ? TokenKind::reference
                   : is_lost                 ? TokenKind::error
                                             : TokenKind::unknown,
                   at + 1);
    }

    /// Runs[[#This Row];[Mass]]: an apostrophe lets the next letter stand for itself.
    void take_table(std::size_t bracket) {
        int open = 0;
        for (std::size_t at = bracket; at < formula_.size(); ++at) {
            if (formula_[at] == '\'')
                ++at;
            else if (formula_[at] == '[')
                ++open;
            else if (formula_[at] == ']' && --open == 0)
                return take_until(TokenKind::table, at + 1);
        }
        take_rest();
    }

    void take_sign(char c) {
        if (std::any_of(long_operations.begin(), long_operations.end(),
                        [&](std::string_view signs) { return rest().starts_with(signs); }))
            return take(TokenKind::operation, 2);
        if (short_operations.find(c) != std::string_view::npos)
            return take(TokenKind::operation, 1);
        switch (c) {
        case '(':
            return take(TokenKind::open, 1);
        case ')':
            return take(TokenKind::close, 1);
        case ';':
        case ',':
            return take(TokenKind::separator, 1);
        case '{':
            return take(TokenKind::array_open, 1);
        case '}':
            return take(TokenKind::array_close, 1);
        case '|':
            return take(TokenKind::array_row, 1);
        default:
            return take(TokenKind::unknown, 1);
        }
    }

    std::string_view formula_;
    std::size_t at_ = 0;
    bool is_array_formula_ = false;
    std::vector<Token> tokens_;
};

} // namespace

std::vector<Token> tokens_of(std::string_view formula) {
    return Scanner(formula).all();
}

std::vector<Token> tokens_without_blanks(std::string_view formula) {
    std::vector<Token> tokens = tokens_of(formula);
    std::erase_if(tokens, [](Token const& token) { return token.kind == TokenKind::blank; });
    return tokens;
}

} // namespace hearthcell::formulas
