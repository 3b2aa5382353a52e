#include "extension/archive/recalculation/formula.hpp"

#include "extension/archive/recalculation/references.hpp"

#include <algorithm>
#include <array>
#include <cctype>

namespace hearthcell::archive {
namespace {

constexpr std::string_view stored_prefix = "HEARTHCELL.STOVE.", shown_prefix = "STOVE.";
constexpr std::array<std::string_view, 9> volatile_functions{
    "NOW", "TODAY", "RAND", "RANDBETWEEN", "RAND.NV", "RANDBETWEEN.NV", "RANDARRAY", "INFO", "CELL"};

/// A call in a formula: where its name and its bracket stand.
struct Call {
    std::size_t start, end, bracket;
};

bool begins_name(char letter) {
    return std::isalpha(static_cast<unsigned char>(letter)) != 0 || letter == '_' || letter < 0;
}

bool in_name(char letter) {
    return begins_name(letter) || std::isdigit(static_cast<unsigned char>(letter)) != 0 || letter == '.';
}

/// Past a text in quotes that starts here; a doubled quote is part of the text.
std::size_t past_quotes(std::string_view formula, std::size_t at) {
    char const quote = formula[at];
    for (++at; at < formula.size(); ++at) {
        if (formula[at] != quote)
            continue;
        if (at + 1 == formula.size() || formula[at + 1] != quote)
            return at + 1;
        ++at;
    }
    return at;
}

std::vector<Call> calls(std::string_view formula) {
    std::vector<Call> found;
    for (std::size_t at = 0; at < formula.size();) {
        if (formula[at] == '"' || formula[at] == '\'') {
            at = past_quotes(formula, at);
        } else if (begins_name(formula[at])) {
            std::size_t const start = at;
            while (at < formula.size() && in_name(formula[at]))
                ++at;
            std::size_t const bracket = formula.find_first_not_of(' ', at);
            if (bracket != std::string_view::npos && formula[bracket] == '(')
                found.push_back({start, at, bracket});
        } else {
            ++at;
        }
    }
    return found;
}

/// By the name in files, "HEARTHCELL.STOVE.BOILINGPOINT", or by the one that is shown.
Function const* ours(std::string_view name) {
    std::string const letters = upper(std::string(name));
    if (letters.starts_with(shown_prefix))
        return find_function(letters);
    if (!letters.starts_with(stored_prefix))
        return nullptr;
    std::string const stored = letters.substr(stored_prefix.size());
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            if (upper(std::string(function.stored)) == stored)
                return &function;
    return nullptr;
}

std::size_t closing_bracket(std::string_view formula, std::size_t at) {
    int open = 0;
    while (at < formula.size()) {
        char const letter = formula[at];
        if (letter == '"' || letter == '\'') {
            at = past_quotes(formula, at);
            continue;
        }
        open += letter == '(' ? 1 : letter == ')' ? -1 : 0;
        if (open == 0)
            return at;
        ++at;
    }
    return at;
}

} // namespace

std::string as_shown(std::string_view formula) {
    std::string text;
    std::size_t copied = 0;
    for (Call const& call : calls(formula)) {
        Function const* const function = ours(formula.substr(call.start, call.end - call.start));
        if (function == nullptr)
            continue;
        text += formula.substr(copied, call.start - copied);
        text += shown_prefix;
        text += function->name;
        copied = call.end;
    }
    return text += formula.substr(copied);
}

std::vector<Function const*> functions_in(std::string_view formula) {
    std::vector<Function const*> found;
    for (Call const& call : calls(formula))
        if (Function const* const function = ours(formula.substr(call.start, call.end - call.start)))
            found.push_back(function);
    std::sort(found.begin(), found.end(), [](Function const* a, Function const* b) { return a->name < b->name; });
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

bool is_volatile(std::string_view formula) {
    std::vector<Call> const all = calls(formula);
    return std::any_of(all.begin(), all.end(), [&](Call const& call) {
        std::string const name = upper(std::string(formula.substr(call.start, call.end - call.start)));
        return std::find(volatile_functions.begin(), volatile_functions.end(), name) != volatile_functions.end();
    });
}

Function const* only_call(std::string_view formula) {
    if (formula.starts_with('{') && formula.ends_with('}'))
        formula = formula.substr(1, formula.size() - 2);
    std::vector<Call> const all = calls(formula);
    if (all.empty() || all.front().start != 1)
        return nullptr;
    std::size_t const end = closing_bracket(formula, all.front().bracket);
    bool const whole = formula.find_first_not_of(' ', end + 1) == std::string_view::npos;
    return whole ? ours(formula.substr(all.front().start, all.front().end - all.front().start)) : nullptr;
}

} // namespace hearthcell::archive
