#include "extension/archive/example/read_values.hpp"

#include "extension/formulas/calls.hpp"
#include "extension/formulas/number.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/tokens.hpp"

#include <algorithm>
#include <cmath>
#include <span>

namespace hearthcell::archive {
namespace {

using formulas::Token;
using formulas::TokenKind;
using Tokens = std::span<Token const>;

constexpr std::size_t most_cells = 10'000; // of a range

struct NoValue {};

/// A sum, product, power of numbers and single cells; all else has no value here.
class Evaluation {
public:
    Evaluation(Tokens tokens, std::function<double(Token const&)> const& cell) : rest_(tokens), cell_(cell) {}

    double all() {
        double const value = sum();
        if (!rest_.empty())
            throw NoValue();
        return value;
    }

private:
    bool take(std::string_view operation) {
        bool const is_there = !rest_.empty() && rest_[0].text == operation;
        rest_ = rest_.subspan(is_there ? 1 : 0);
        return is_there;
    }
    double sum() {
        double value = product();
        for (;;)
            if (take("+"))
                value += product();
            else if (take("-"))
                value -= product();
            else
                return value;
    }
    double product() {
        double value = power();
        for (;;)
            if (take("*"))
                value *= power();
            else if (take("/"))
                value /= power();
            else
                return value;
    }
    double power() {
        double value = factor();
        while (take("^"))
            value = std::pow(value, factor());
        return value;
    }
    double factor() {
        if (rest_.empty() || ++depth_ > most_depth)
            throw NoValue();
        Token const token = rest_[0];
        rest_ = rest_.subspan(1);
        double value = 0;
        if (token.text == "-" || token.text == "+")
            value = token.text == "-" ? -factor() : factor();
        else if (token.kind == TokenKind::open) {
            value = sum();
            if (rest_.empty() || rest_[0].kind != TokenKind::close)
                throw NoValue();
            rest_ = rest_.subspan(1);
        } else if (token.kind == TokenKind::number)
            value = formulas::number_in(token.text).value_or(std::nan(""));
        else if (token.kind == TokenKind::reference || token.kind == TokenKind::name)
            value = cell_(token);
        else
            throw NoValue();
        while (take("%"))
            value /= 100;
        --depth_;
        return value;
    }

    static constexpr int most_depth = 50;
    Tokens rest_;
    std::function<double(Token const&)> const& cell_;
    int depth_ = 0;
};

class Reading {
public:
    Reading(Place const& cell, formulas::Reads const& reads,
            std::function<std::optional<double>(Place const&)> const& value, std::vector<ReadArgument>& all)
        : place_(cell), reads_(reads), value_(value), all_(all) {}

    void look(Tokens tokens) {
        for (std::size_t at = 0; at < tokens.size(); ++at)
            if (Function const* const function = formulas::function_called(tokens[at])) {
                std::size_t const end = formulas::end_of_call(tokens, at);
                if (at + 2 <= end && end < tokens.size())
                    look_at_call(*function, tokens.subspan(at + 2, end - at - 2));
            }
    }

private:
    void look_at_call(Function const& function, Tokens brackets) {
        auto const arguments = formulas::arguments_in(brackets);
        for (std::size_t at = 0; at < std::min(arguments.size(), function.arguments.size()); ++at) {
            std::vector<double> const values = values_of(arguments[at]);
            if (values.empty())
                continue;
            std::string const name(function.arguments[at].name.english);
            auto known = std::ranges::find_if(
                all_, [&](ReadArgument const& one) { return one.function == function.name && one.argument == name; });
            if (known == all_.end())
                known = all_.insert(known, {std::string(function.name), name, {}});
            known->values.insert(known->values.end(), values.begin(), values.end());
        }
    }

    /// Only of what reads a cell: constants are shown elsewhere.
    std::vector<double> values_of(Tokens argument) {
        bool const reads = std::ranges::any_of(argument, [](Token const& token) {
            return token.kind == TokenKind::reference || token.kind == TokenKind::name;
        });
        if (!reads)
            return {};
        if (argument.size() == 1) {
            std::vector<double> values = values_in(argument[0]);
            std::erase_if(values, [](double value) { return std::isnan(value); });
            return values;
        }
        bool is_anything_read = false, is_any_empty = false;
        try {
            std::function<double(Token const&)> const cell = [&](Token const& token) {
                auto const values = values_in(token);
                if (values.size() != 1)
                    throw NoValue();
                (std::isnan(values[0]) ? is_any_empty : is_anything_read) = true;
                return std::isnan(values[0]) ? 0 : values[0]; // as Calc counts an empty cell
            };
            double const value = Evaluation(argument, cell).all();
            bool const is_of_nothing = !is_anything_read || (is_any_empty && value == 0); // nothing times a factor
            return !is_of_nothing && std::isfinite(value) ? std::vector{value} : std::vector<double>();
        } catch (NoValue const&) {
            return {};
        }
    }

    std::vector<double> values_in(Token const& token) {
        std::vector<double> values;
        std::size_t left = most_cells;
        for (auto const& [first, last] : reads_.of(token.text, place_))
            for (int row = first.row; row <= last.row; ++row)
                for (int column = first.column; column <= last.column && left-- > 0; ++column)
                    if (auto const number = value_({first.sheet, row, column}))
                        values.push_back(*number);
        return values;
    }

    Place place_;
    formulas::Reads const& reads_;
    std::function<std::optional<double>(Place const&)> const& value_;
    std::vector<ReadArgument>& all_;
};

} // namespace

void add_read(std::string_view formula, Place const& cell, formulas::Reads const& reads,
              std::function<std::optional<double>(Place const&)> const& value, std::vector<ReadArgument>& all) {
    std::vector<Token> const tokens = formulas::tokens_without_blanks(formula);
    Reading(cell, reads, value, all).look(tokens);
}

} // namespace hearthcell::archive
