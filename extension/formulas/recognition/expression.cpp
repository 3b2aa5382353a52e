#include "extension/formulas/recognition/expression.hpp"

#include "extension/formulas/calls.hpp"
#include "extension/formulas/letters.hpp"
#include "extension/formulas/number.hpp"
#include "extension/formulas/recognition/tokens_left.hpp"
#include "extension/formulas/reference.hpp"

#include <algorithm>

namespace hearthcell::formulas {
namespace {

constexpr int deepest = 60;             // brackets within brackets
constexpr std::size_t most_read = 2000; // tokens, with those of the cells that are read

bool is_named(Token const& function, std::initializer_list<std::string_view> names) {
    return std::ranges::any_of(names, [&](std::string_view name) { return is_same_name(name, function.text); });
}

class Reader : private TokensLeft {
public:
    Reader(Surroundings const& surroundings, IsConstant const& is_constant, Expression& into)
        : surroundings_(surroundings), is_constant_(is_constant), into_(into) {}

    Polynomial formula(std::string_view text, Place const& cell, int steps) {
        std::vector<Token> tokens = tokens_without_blanks(text);
        std::erase_if(tokens, [](Token const& token) { return token.kind == TokenKind::start; });
        if ((read_ += tokens.size()) > most_read)
            throw NoPolynomial();
        Place const outer_cell = std::exchange(cell_, cell);
        int const outer_steps = std::exchange(steps_, steps);
        Polynomial result = all_of(tokens);
        cell_ = outer_cell;
        steps_ = outer_steps;
        return result;
    }

private:
    /// Of all these tokens, one term after another.
    Polynomial all_of(Tokens tokens) {
        Tokens const outer = std::exchange(rest_, tokens);
        if (++depth_ > deepest)
            throw NoPolynomial();
        Polynomial result = sum();
        if (!rest_.empty())
            throw NoPolynomial();
        --depth_;
        rest_ = outer;
        return result;
    }

    Polynomial sum() {
        Polynomial result = product();
        for (;;) {
            if (take("+"))
                result = result + product();
            else if (take("-"))
                result = result - product();
            else
                return result;
        }
    }

    Polynomial product() {
        Polynomial result = raised();
        for (;;) {
            if (take("*"))
                result = result * raised();
            else if (take("/"))
                result = result * inverse(raised(), into_.quantities);
            else
                return result;
        }
    }

    Polynomial raised() {
        Polynomial result = signed_one();
        while (take("^")) {
            auto const exponent = signed_one().constant();
            if (!exponent)
                throw NoPolynomial();
            result = power(result, *exponent, into_.quantities);
        }
        return result;
    }

    Polynomial signed_one() {
        double sign = 1;
        while (is_next("-") || is_next("+")) { // before ^, as in Calc
            sign = is_next("-") ? -sign : sign;
            rest_ = rest_.subspan(1);
        }
        Polynomial result = operand();
        while (take("%"))
            result = 0.01 * result;
        return sign * result;
    }

    Polynomial operand() {
        if (rest_.empty())
            throw NoPolynomial();
        Token const& token = rest_[0];
        switch (token.kind) {
        case TokenKind::number:
            rest_ = rest_.subspan(1);
            return number(token);
        case TokenKind::open:
            return in_brackets();
        case TokenKind::function:
            return call();
        case TokenKind::reference:
        case TokenKind::name:
        case TokenKind::table:
            rest_ = rest_.subspan(1);
            return cells(token);
        default:
            throw NoPolynomial();
        }
    }

    Polynomial number(Token const& token) {
        auto const value = number_in(token.text);
        if (!value)
            throw NoPolynomial();
        return number(*value);
    }

    Polynomial number(double value) {
        into_.numbers.push_back(value);
        return Polynomial(value);
    }

    Polynomial in_brackets() { return all_of(take_brackets()); }

    Polynomial call() {
        Tokens const whole = rest_;
        Token const& function = rest_[0];
        rest_ = rest_.subspan(1);
        if (rest_.empty() || rest_[0].kind != TokenKind::open)
            throw NoPolynomial();
        std::vector<Tokens> const arguments = arguments_in(take_brackets());
        if (is_named(function, {"ROUND", "IFERROR", "IFNA", "N"}))
            return all_of(arguments[0]);
        if (is_named(function, {"IF"}) && arguments.size() > 1)
            return branch(arguments);
        bool const are_all_single = std::ranges::none_of(arguments, [&](Tokens one) { return is_block(one); });
        if (are_all_single && is_named(function, {"SUM", "PRODUCT"})) {
            bool const is_sum = is_named(function, {"SUM"});
            Polynomial result(is_sum ? 0 : 1);
            for (Tokens const argument : arguments)
                result = is_sum ? result + all_of(argument) : result * all_of(argument);
            return result;
        }
        if (is_named(function, {"POWER"}) && arguments.size() == 2)
            if (auto const exponent = all_of(arguments[1]).constant())
                return power(all_of(arguments[0]), *exponent, into_.quantities);
        return opaque(whole.first(whole.size() - rest_.size()));
    }

    /// The branch that computes, where the other one leaves the cell blank.
    Polynomial branch(std::vector<Tokens> const& arguments) {
        auto const is_blank = [](Tokens one) {
            return one.empty() || (one.size() == 1 && (one[0].text == "\"\"" || one[0].text == "0"));
        };
        bool const first = is_blank(arguments[1]), second = arguments.size() < 3 || is_blank(arguments[2]);
        if (first == second)
            throw NoPolynomial();
        return all_of(arguments[first ? 2 : 1]);
    }

    [[nodiscard]] bool is_block(Tokens argument) const {
        if (argument.size() != 1)
            return std::ranges::any_of(argument, [](Token const& one) { return one.text == ":" || one.text == "~"; });
        auto const ranges = surroundings_.reads.of(argument[0].text, cell_);
        return ranges.size() > 1 || (ranges.size() == 1 && ranges[0].first != ranges[0].last);
    }

    Polynomial quantity(Quantity one) { return Polynomial(1, {{into_.quantities.of(std::move(one)), 1}}); }

    /// What is not taken apart: the same words on the same sheet are the same quantity.
    Polynomial opaque(Tokens tokens) {
        std::string key = std::to_string(cell_.sheet) + ':';
        for (Token const& token : tokens)
            if (is_ours(token) || is_volatile(token))
                throw NoPolynomial();
            else
                std::ranges::copy_if(token.text, std::back_inserter(key), [](char c) { return c != '$'; });
        return quantity({.key = folded(key)});
    }

    Polynomial cells(Token const& token) {
        if (token.kind == TokenKind::name)
            if (auto const value = surroundings_.reads.number_named(token, cell_))
                return number(*value);
        auto const ranges = surroundings_.reads.of(token.text, cell_);
        if (ranges.size() != 1 || ranges[0].first != ranges[0].last)
            throw NoPolynomial();
        Place const place = ranges[0].first;
        std::string_view const behind = surroundings_.formula(place);
        if (!behind.empty() && steps_ > 0)
            return formula(behind, place, steps_ - 1);
        Reference const reference = token.kind == TokenKind::reference ? reference_of(token) : Reference{};
        bool const fixed = token.kind == TokenKind::name || reference.first.row_fixed || place.sheet != cell_.sheet;
        Quantity one{.key = std::to_string(place.sheet) + '.' + cell_name(place.column, place.row),
                     .cell = place,
                     .typed = behind.empty() ? surroundings_.typed(place) : std::nullopt,
                     .fixed = fixed};
        if (!one.typed || !is_constant_(one))
            return quantity(std::move(one));
        into_.has_constants = true;
        return number(*one.typed);
    }

    Surroundings const& surroundings_;
    IsConstant const& is_constant_;
    Expression& into_;
    Place cell_;
    int steps_ = 0, depth_ = 0;
    std::size_t read_ = 0;
};

} // namespace

Expression expression_of(std::string_view formula, Place const& cell, Surroundings const& surroundings, int steps,
                         IsConstant const& is_constant) {
    Expression expression;
    expression.polynomial = Reader(surroundings, is_constant, expression).formula(formula, cell, steps);
    return expression;
}

} // namespace hearthcell::formulas
