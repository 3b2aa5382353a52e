#include "manifest/generator/guide/description.hpp"

#include "manifest/generator/output.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace hearthcell::generator::guide {
namespace {

constexpr double no_limit = 1e9;

std::string range(double low, double high, Measure measure, Language language) {
    if (high >= no_limit)
        return std::string(word(Word::any_number, language));
    // A hyphen would part from its number at the end of a line.
    std::string const minus = low < 0 ? "−" : "";
    return filled(with_value(Word::from_to, minus + amount(std::abs(low), Measure::words, language), language), "%2",
                  amount(high, measure, language));
}

std::string name_of_table(Argument const& argument, Language language) {
    if (argument.lists_names)
        return std::string(word(Word::a_name_below, language));
    return with_value(Word::a_name_as_in, "STOVE." + std::string(argument.table->listed_by), language);
}

std::string choices(Argument const& argument) {
    std::string list;
    for (std::string_view const choice : argument.choices) {
        list += list.empty() ? "\"" : ", \"";
        list.append(choice).append("\"");
    }
    return list;
}

} // namespace

std::string with_value(Word which, std::string_view value, Language language) {
    return filled(word(which, language), "%1", value);
}

std::string name_of_result(Function const& function, Language language) {
    Result const& result = function.result;
    if (!result.parts.empty())
        return with_value(result.list ? Word::a_list_of : Word::one_part_of, parts(function, language), language);
    std::string_view const unit = unit_of(result.measure);
    return std::string(result.name.in(language)) + (unit.empty() ? "" : " (" + std::string(unit) + ")");
}

std::string what_it_gives(Function const& function, Language language) {
    Result const& result = function.result;
    if (!result.parts.empty() || result.high <= result.low || result.high >= no_limit)
        return name_of_result(function, language);
    return filled(with_value(Word::with_range, result.name.in(language), language), "%2",
                  range(result.low, result.high, result.measure, language));
}

std::string what_is_allowed(Function const& function, Argument const& argument, Language language) {
    std::string const limits = range(argument.low, argument.high, argument.measure, language);
    switch (argument.kind) {
    case ArgumentKind::number:
        return limits;
    case ArgumentKind::number_or_name:
        return filled(with_value(Word::or_instead, name_of_table(argument, language), language), "%2", limits);
    case ArgumentKind::name:
        return std::string(word(Word::a_name_below, language));
    case ArgumentKind::choice:
        return with_value(Word::one_of, choices(argument), language);
    case ArgumentKind::part:
        return with_value(Word::one_of, options(function, argument, language), language);
    case ArgumentKind::column:
        return with_value(Word::a_column,
                          argument.table == nullptr ? limits
                                                    : filled(with_value(Word::or_instead, limits, language), "%2",
                                                             name_of_table(argument, language)),
                          language);
    case ArgumentKind::mixed:
        return std::string(word(Word::a_column_of_anything, language));
    case ArgumentKind::matrix:
        return with_value(Word::a_block, limits, language);
    case ArgumentKind::anything:
        return std::string(word(Word::anything, language));
    case ArgumentKind::text:
        return std::string(word(Word::a_text, language));
    case ArgumentKind::rest:
        return std::string(word(Word::further_arguments, language));
    }
    return "";
}

std::string what_leaving_out_means(Function const& function, Argument const& argument, Language language) {
    if (!argument.optional)
        return argument.kind == ArgumentKind::rest ? "–" : std::string(word(Word::required, language));
    if (argument.kind == ArgumentKind::part)
        return std::string(part_unless_named(function, language));
    if (argument.kind == ArgumentKind::choice)
        return "\"" + std::string(argument.choices[0]) + "\"";
    if (!argument.absent_means.empty())
        return std::string(argument.absent_means.in(language));
    return amount(argument.fallback, argument.measure, language);
}

Argument const& choice_of_equation(Function const& function) {
    auto const choice = std::ranges::find_if(function.arguments, [&](Argument const& argument) {
        return argument.choices.size() == function.equations.size();
    });
    if (choice == function.arguments.end())
        throw std::logic_error(std::string(function.name) + " has equations for choices that it does not offer");
    return *choice;
}

} // namespace hearthcell::generator::guide
