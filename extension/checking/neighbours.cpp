#include "extension/checking/neighbours.hpp"

#include "extension/checking/shown.hpp"
#include "extension/checking/texts.hpp"
#include "extension/formulas/letters.hpp"
#include "extension/formulas/number.hpp"
#include "extension/formulas/quotes.hpp"
#include "extension/formulas/tokens.hpp"
#include "functions/catalogue/names.hpp"

#include <algorithm>
#include <array>
#include <set>

namespace hearthcell::checking {
namespace {

constexpr std::size_t enough_others = 4;
constexpr std::int64_t most_read = 10'000;        // cells of one result
constexpr std::size_t most_looked_at = 5'000'000; // calls in the ranges of all results

/// What is one and the same for all runs of a record, or else noticed.
bool is_of_the_record(Argument const& argument) {
    constexpr std::array<std::string_view, 7> names{
        "pot empty",           "container mass",        "altitude",
        "net calorific value", "gross calorific value", "char calorific value",
        "water mass"};
    return argument.kind == ArgumentKind::choice ||
           std::ranges::any_of(names, [&](std::string_view name) { return argument.name == name; });
}

class Neighbours {
public:
    Neighbours(Contents const& contents, Questions const& questions, Columns const& columns, Language language)
        : contents_(contents), questions_(questions), columns_(columns), language_(language) {}

    std::vector<Remark> find() {
        for (auto const& [where, column] : columns_.all())
            compare(where.first, where.second, column);
        compare_arguments();
        look_for_two_methods();
        return std::move(remarks_);
    }

private:
    void add(Place const& cell, std::string function, std::string sentence) {
        Content const* const content = contents_.at(cell);
        remarks_.push_back({.cell = cell,
                            .last_row = cell.row,
                            .function = std::move(function),
                            .value = content == nullptr ? "" : shown(*content, language_),
                            .sentence = std::move(sentence)});
    }

    /// Each cell that stands between two which were filled down together.
    void compare(int sheet, int column, Columns::Column const& entries) {
        std::map<int, std::size_t> counts;
        for (Columns::Entry const& entry : entries)
            ++counts[entry.form];
        for (std::size_t at = 0; at + 1 < entries.size(); ++at) {
            auto const& [row, form] = entries[at];
            Columns::Entry const &next = entries[at + 1], &after = entries[std::min(at + 2, entries.size() - 1)];
            if (counts[form] < enough_others)
                continue;
            if (next.row == row + 2 && next.form == form)
                look_at_typed({sheet, row + 1, column});
            if (next.row == row + 1 && next.form != form && after.row == row + 2 && after.form == form)
                look_at_other({sheet, row + 1, column}, form);
        }
    }

    void look_at_typed(Place const& cell) {
        Content const* const content = contents_.at(cell);
        if (content != nullptr && !std::holds_alternative<CellError>(content->value))
            add(cell, {}, std::string(text(Text::typed_over, language_)));
    }

    /// Whether it would be as its neighbours, if it stood in another row.
    void look_at_other(Place const& cell, int form) {
        std::string const& formula = contents_.cells.at(cell).formula;
        for (int const by : {-1, 1, -2, 2}) {
            if (columns_.form(formula, cell.column, cell.row + by) != form)
                continue;
            add(cell, {}, say(Text::other_row, language_, {std::to_string(cell.row + by + 1)}));
            return;
        }
    }

    /// What a call is given for an argument, where that is one value that stands in a cell or in the call itself.
    std::optional<std::string> value_of(Question const& question, std::size_t place) const {
        if (place >= question.call.arguments.size() || question.call.arguments[place].empty())
            return std::string();
        std::string const& argument = question.call.arguments[place];
        auto const tokens = formulas::tokens_without_blanks(argument);
        if (tokens.size() != 1)
            return std::nullopt;
        if (tokens[0].kind == formulas::TokenKind::number)
            return std::string(tokens[0].text);
        if (tokens[0].kind == formulas::TokenKind::text)
            return formulas::unquoted(tokens[0].text);
        auto const ranges = questions_.reads().of(argument, question.cell);
        if (ranges.size() != 1 || ranges[0].first != ranges[0].last)
            return std::nullopt;
        Content const* const content = contents_.at(ranges[0].first);
        return content == nullptr ? std::string() : shown(*content, Language::english);
    }

    /// Calls of one function in one column, that many in a cell.
    using Calls = std::vector<Question const*>;
    void compare_arguments() {
        std::map<std::tuple<int, int, std::string, int>, Calls> groups;
        std::map<std::pair<Place, std::string>, int> calls_in_cell;
        for (Question const& question : questions_.all)
            if (question.rule == nullptr && question.call.function != nullptr && question.is_reached()) {
                int const which = calls_in_cell[{question.cell, question.call.name}]++;
                groups[{question.cell.sheet, question.cell.column, question.call.name, which}].push_back(&question);
            }
        for (auto const& [where, calls] : groups)
            if (calls.size() > enough_others)
                for (std::size_t place = 0; place < calls[0]->call.function->arguments.size(); ++place)
                    if (is_of_the_record(calls[0]->call.function->arguments[place]))
                        compare_argument(calls, place);
    }

    void compare_argument(Calls const& calls, std::size_t place) {
        std::map<std::string, Calls> by_value; // folded
        for (Question const* const call : calls) {
            auto const value = value_of(*call, place);
            if (!value)
                return;
            by_value[formulas::folded(*value)].push_back(call);
        }
        if (by_value.size() != 2)
            return;
        auto const& [one, other] =
            std::minmax(*by_value.begin(), *std::next(by_value.begin()),
                        [](auto const& a, auto const& b) { return a.second.size() < b.second.size(); });
        if (one.second.size() != 1 || other.second.size() < enough_others || one.first.empty())
            return;
        Question const& odd = *one.second.front();
        add(odd.cell, function_name(odd),
            say(Text::unlike_the_others, language_,
                {odd.call.function->arguments[place].name.in(language_), in_words(*value_of(odd, place)),
                 in_words(*value_of(*other.second.front(), place)), std::to_string(other.second.size())}));
    }

    /// A value as it is compared, in the way of the language.
    std::string in_words(std::string const& value) const {
        auto const number = formulas::number_in(value);
        return number ? in_language(*number, language_) : value;
    }

    static std::string function_name(Question const& question) { return "STOVE." + question.call.name; }

    /// The methods by which the calls in some cells count, in words.
    std::set<std::string> methods_in(std::vector<Range> const& ranges) {
        std::set<std::string> methods;
        for (Range const& range : ranges)
            for (auto call = calls_.lower_bound(range.first); call != calls_.end() && call->first <= range.last;
                 ++call) {
                if (++looked_at_ > most_looked_at || call->first.column < range.first.column ||
                    call->first.column > range.last.column)
                    continue;
                Question const& question = *call->second;
                for (std::size_t place = 0; place < question.call.function->arguments.size(); ++place)
                    if (question.call.function->arguments[place].name == "method")
                        if (auto const value = value_of(question, place))
                            methods.insert(method_meant(question.call.function->arguments[place], *value));
            }
        return methods;
    }

    static std::string method_meant(Argument const& argument, std::string const& value) {
        for (std::string_view const choice : argument.choices)
            if (same_name(choice, value))
                return std::string(choice);
        return std::string(argument.choices[0]); // left out; a wrong one is told by its own call
    }

    static bool is_of_series(FoundCall const& call) {
        constexpr std::array<std::string_view, 7> names{
            "SERIES", "DIFFERENCE", "SAVING", "PAIREDDIFFERENCE", "BLOCKEDDIFFERENCE", "PAIREDSAVING", "OUTLIER"};
        return std::ranges::any_of(names, [&](std::string_view name) { return name == call.name; });
    }

    void look_for_two_methods() {
        for (Question const& question : questions_.all)
            if (question.rule == nullptr && question.call.function != nullptr && question.is_reached())
                calls_.emplace(question.cell, &question);
        for (Question const& question : questions_.all)
            if (question.rule == nullptr && is_of_series(question.call) && question.is_reached())
                look_for_two_methods(question.cell, question.call.arguments.empty() ? "" : question.call.arguments[0],
                                     function_name(question));
        for (auto const& [cell, content] : contents_.cells)
            if (formulas::folded(content.formula).find("average(") != std::string::npos)
                look_for_two_methods(cell, content.formula, {});
    }

    void look_for_two_methods(Place const& cell, std::string const& formula, std::string const& function) {
        std::vector<Range> ranges = questions_.reads().of(formula, cell);
        std::erase_if(ranges, [](Range const& range) {
            return std::int64_t(range.last.row - range.first.row + 1) * (range.last.column - range.first.column + 1) >
                   most_read;
        });
        std::set<std::string> const methods = methods_in(ranges);
        if (methods.size() < 2)
            return;
        std::string list;
        for (std::string const& method : methods)
            list += (list.empty() ? "" : ", ") + method;
        add(cell, function, say(Text::two_methods, language_, {list}));
    }

    Contents const& contents_;
    Questions const& questions_;
    Columns const& columns_;
    Language const language_;
    std::multimap<Place, Question const*> calls_;
    std::size_t looked_at_ = 0;
    std::vector<Remark> remarks_;
};

} // namespace

bool Columns::add(Place const& cell, std::string const& formula) {
    auto const [form, is_new] = forms_.try_emplace(form_of(formula, cell.column, cell.row), int(forms_.size()));
    columns_[{cell.sheet, cell.column}].push_back({cell.row, form->second});
    return is_new;
}

std::optional<int> Columns::form(std::string const& formula, int column, int row) const {
    auto const found = forms_.find(form_of(formula, column, row));
    return found == forms_.end() ? std::nullopt : std::optional(found->second);
}

std::vector<Remark> remarks_by_neighbours(Contents const& contents, Questions const& questions, Columns const& columns,
                                          Language language) {
    return Neighbours(contents, questions, columns, language).find();
}

} // namespace hearthcell::checking
