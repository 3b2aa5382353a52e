#include "extension/checking/found_calls.hpp"

#include "extension/formulas/calls.hpp"
#include "extension/formulas/letters.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/tokens.hpp"

#include <algorithm>
#include <array>

namespace hearthcell::checking {

using formulas::Token;
using formulas::TokenKind;

namespace {

bool is_about_functions(std::string_view name) {
    constexpr std::array<std::string_view, 3> names{"EXPLAIN", "SOURCE", "VERSION"};
    return std::ranges::any_of(names, [&](std::string_view one) { return formulas::is_same_name(one, name); });
}

bool works_on_blocks(std::string_view name) {
    constexpr std::array<std::string_view, 4> names{"SUMPRODUCT", "MMULT", "FREQUENCY", "LINEST"};
    return std::ranges::any_of(names, [&](std::string_view one) { return formulas::is_same_name(one, name); });
}

/// A call whose end has not been seen yet.
struct Open {
    std::string name; // empty: brackets without a function
    std::vector<std::string> arguments;
    std::size_t start;                    // of the present argument
    std::size_t ours = std::string::npos; // its number among the found ones
};

/// What has to hold for the present argument of a call to be looked at.
void add_conditions(std::vector<Condition>& conditions, Open const& call) {
    std::size_t const place = call.arguments.size();
    auto const is = [&](std::string_view name) { return formulas::is_same_name(call.name, name); };
    if (place == 0)
        return;
    std::string const& first = call.arguments.front();
    if (is("IF")) {
        conditions.push_back({first, place == 1});
    } else if (is("IFERROR")) {
        conditions.push_back({"ISERROR(" + first + ")", true});
    } else if (is("IFNA")) {
        conditions.push_back({"ISNA(" + first + ")", true});
    } else if (is("CHOOSE")) {
        conditions.push_back({"INT(" + first + ")=" + std::to_string(place), true});
    } else if (is("IFS")) {
        for (std::size_t before = 0; before < place; before += 2)
            conditions.push_back({call.arguments[before], before + 1 == place});
    }
}

class Finder {
public:
    explicit Finder(std::string_view text) : formula_(text), tokens_(formulas::tokens_of(text)) {}

    std::vector<FoundCall> find() {
        for (std::size_t at = 0; at < tokens_.size(); ++at)
            take(at);
        std::erase_if(found_, [](FoundCall const& call) { return call.name.empty(); }); // never closed
        return std::move(found_);
    }

private:
    void take(std::size_t at) {
        Token const& token = tokens_[at];
        if (token.kind == TokenKind::array_open || token.kind == TokenKind::array_close)
            in_array_ = token.kind == TokenKind::array_open; // whose separators are others'; nothing nests in it
        else if (token.kind == TokenKind::function)
            function_ = &token;
        else if (token.kind == TokenKind::open)
            open(token);
        else if (token.kind == TokenKind::separator && !open_.empty() && !in_array_)
            next_argument(token);
        else if (token.kind == TokenKind::close && !open_.empty())
            close(token);
    }

    void open(Token const& bracket) {
        Open call{function_ == nullptr ? "" : std::string(function_->text), {}, bracket.end()};
        if (function_ != nullptr && formulas::is_ours(*function_)) {
            std::string const name = call.name.substr(call.name.rfind('.') + 1);
            if (!is_about_functions(name)) {
                call.ours = found_.size();
                found_.push_back({{}, formulas::function_called(*function_), {}, conditions(), in_block()});
            }
        }
        function_ = nullptr;
        open_.push_back(std::move(call));
    }

    void next_argument(Token const& separator) {
        Open& call = open_.back();
        call.arguments.push_back(argument_to(separator));
        call.start = separator.end();
    }

    void close(Token const& bracket) {
        Open call = std::move(open_.back());
        open_.pop_back();
        std::string last = trimmed(formula_.substr(call.start, bracket.start - call.start));
        if (!last.empty() || !call.arguments.empty())
            call.arguments.push_back(std::move(last));
        if (call.ours == std::string::npos)
            return;
        FoundCall& found = found_[call.ours];
        found.name =
            found.function != nullptr ? std::string(found.function->name) : call.name.substr(call.name.rfind('.') + 1);
        found.arguments = std::move(call.arguments);
    }

    std::string argument_to(Token const& token) const {
        return trimmed(formula_.substr(open_.back().start, token.start - open_.back().start));
    }

    static std::string trimmed(std::string_view text) {
        while (!text.empty() && formulas::blank_at(text) > 0)
            text.remove_prefix(formulas::blank_at(text));
        while (!text.empty() && (text.back() == ' ' || text.back() == '\n' || text.back() == '\t'))
            text.remove_suffix(1);
        return std::string(text);
    }

    std::vector<Condition> conditions() const {
        std::vector<Condition> all;
        for (Open const& call : open_)
            add_conditions(all, call);
        return all;
    }

    bool in_block() const {
        return std::ranges::any_of(open_, [](Open const& call) { return works_on_blocks(call.name); });
    }

    std::string_view formula_;
    std::vector<Token> tokens_;
    std::vector<Open> open_;
    std::vector<FoundCall> found_;
    Token const* function_ = nullptr; // just before
    bool in_array_ = false;
};

/// "R[-1]C[2]" or "R7C2"
std::string seen_from(formulas::Corner const& corner, int column, int row) {
    auto const part = [](char letter, std::optional<int> place, bool fixed, int from) {
        if (!place)
            return std::string();
        return letter + (fixed ? std::to_string(*place + 1) : "[" + std::to_string(*place - from) + "]");
    };
    return std::string(corner.sheet) + part('R', corner.row, corner.row_fixed, row) +
           part('C', corner.column, corner.column_fixed, column);
}

} // namespace

std::vector<FoundCall> calls_in(std::string_view formula) {
    return Finder(formula).find();
}

std::string form_of(std::string_view formula, int column, int row) {
    std::string form;
    for (Token const& token : formulas::tokens_without_blanks(formula)) {
        if (token.kind != TokenKind::reference) {
            form += token.kind == TokenKind::text ? std::string(token.text) : formulas::folded(token.text);
            continue;
        }
        formulas::Reference const reference = formulas::reference_of(token);
        form += std::string(reference.file) + seen_from(reference.first, column, row) + ":" +
                seen_from(reference.last, column, row);
    }
    return form;
}

} // namespace hearthcell::checking
