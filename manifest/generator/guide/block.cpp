#include "manifest/generator/guide/block.hpp"

#include "manifest/generator/guide/description.hpp"
#include "manifest/generator/guide/words.hpp"
#include "manifest/generator/output.hpp"

#include <cmath>

namespace hearthcell::generator::guide {
namespace {

constexpr Columns block_columns{.result = result_column, .expected = 'E', .margin = 'F'};
constexpr int most_digits = 8; ///< behind the decimal sign; smaller margins leave the digits to Calc

/// So many digits that the margin shows, as the end of a style's name.
std::string digits_of(double margin) {
    double const digits = margin > 0 ? std::ceil(-std::log10(margin) - 1e-9) : most_digits + 1;
    return digits > most_digits ? "" : "-" + std::to_string(std::max(0, int(digits)));
}

void add_heading(Sheet& sheet, std::vector<std::pair<Word, int>> const& words, Language language) {
    std::vector<Entry> row;
    for (auto const& [which, span] : words) {
        bool const over_numbers = which == Word::result || which == Word::must_give || which == Word::within;
        row.push_back(text(over_numbers ? "heading-right" : "heading", word(which, language), span));
    }
    sheet.add(row);
}

void add_arguments(Sheet& sheet, Function const& function, Language language) {
    if (function.arguments.empty()) {
        sheet.add(
            {text("label", word(Word::argument, language)), text("prose", word(Word::no_arguments, language), 7)});
        return;
    }
    add_heading(sheet,
                {{Word::argument, 1}, {Word::unit, 1}, {Word::allowed, 1}, {Word::left_out, 1}, {Word::what_it_is, 4}},
                language);
    for (Argument const& argument : function.arguments) {
        std::string_view const unit = unit_of(argument.measure);
        sheet.add({text("entry-strong", argument.name.in(language)), text("entry", unit.empty() ? "–" : unit),
                   text("entry", what_is_allowed(function, argument, language)),
                   text("entry", what_leaving_out_means(function, argument, language)),
                   text("entry", argument.help.in(language), 4)});
    }
}

void add_equations(Sheet& sheet, Function const& function, Language language) {
    if (function.equations.size() == 1) {
        sheet.add(
            {text("label", word(Word::equation, language)), text("prose", function.equations[0].in(language), 7)});
        return;
    }
    Argument const& choice = choice_of_equation(function);
    sheet.add({text("label", with_value(Word::by_method, choice.name.in(language), language), 3), nothing("prose", 5)});
    for (std::size_t i = 0; i < function.equations.size(); ++i)
        sheet.add({text("entry-strong", choice.choices[i]), text("entry", function.equations[i].in(language), 7)});
}

void add_sources(Sheet& sheet, Function const& function, Language language) {
    bool from_memory = false;
    std::string titles;
    for (Source const& source : function.sources) {
        titles += (titles.empty() ? "" : "; ") + marked(source, language);
        from_memory = from_memory || source.from_memory;
    }
    sheet.add({text("label", word(Word::source, language)), text("prose", titles, 7)});
    if (from_memory)
        sheet.add({nothing("label"), text("quiet", word(Word::from_memory, language), 7)});
}

/// The names that an argument may be, with what they stand for.
void add_names(Sheet& sheet, Argument const& argument, Language language) {
    add_heading(sheet, {{Word::name, 2}, {Word::typical_value, 1}, {Word::also_typed_as, 2}, {Word::source, 3}},
                language);
    for (Named const& row : argument.table->rows)
        sheet.add({text("entry-strong", row.name.in(language), 2),
                   text("entry", amount(row.value, argument.measure, language)),
                   text("entry", other_names(row, language), 2),
                   text("entry", std::string(row.what.in(language)) + "; " + marked(row.source, language), 3)});
}

void add_check(Sheet& sheet, Check const& check, Entry const& what, std::string_view from, Language language) {
    Expected const& expected = *check.expected;
    std::vector<Entry> row{what};
    Entry const verdict = formula("verdict", verdict_formula(expected, sheet.rows() + 1, block_columns, language),
                                  std::string(word(Word::unchecked, language)));
    if (expected.kind == ExpectedKind::number) {
        std::string const digits = digits_of(expected.tolerance);
        Entry result = formula("live", check.formula, "");
        result.style_ends = digits;
        row.insert(row.end(), {result, number("expected", expected.number, digits),
                               number("margin", expected.tolerance,
                                      expected.tolerance > 0 && expected.tolerance < 1e-5 ? "-small" : "")});
    } else {
        bool const is_error = expected.kind == ExpectedKind::error;
        std::string const words = is_error ? with_value(Word::an_error, sign_of(expected.error), language)
                                  : expected.text.empty() ? std::string(word(Word::an_empty_text, language))
                                                          : std::string(expected.text);
        row.insert(row.end(), {formula(is_error ? "live" : "live-text", check.formula, words),
                               text(is_error ? "expected" : "expected-text", words), nothing("margin")});
    }
    row.insert(row.end(), {text("entry", from), verdict});
    sheet.add(row);
}

void add_example(Sheet& sheet, Function const& function, Example const& example, Readings& readings,
                 Language language) {
    Call const call = call_of(function, example, readings, language);
    std::vector<Check> const checks = checks_of(function, example, call, language);
    if (checks.front().part.empty()) {
        add_check(sheet, checks.front(), text("entry-code", call.shown, 3), example.from, language);
        return;
    }
    sheet.add({text("entry-code", call.shown, 3), nothing("entry", 3), text("entry", example.from), nothing("entry")});
    for (Check const& check : checks)
        add_check(sheet, check, text("entry-part", check.part, 3), "", language);
}

} // namespace

std::vector<double> block_widths() {
    return {4.2, 1.6, 4.8, 4.0, 4.0, 2.1, 5.8, 3.6};
}

BlockRows add_block(Sheet& sheet, Function const& function, std::string const& verdict, Readings& readings,
                    Language language) {
    BlockRows rows;
    rows.title = sheet.add({text("name", "STOVE." + std::string(function.name), 3),
                            text("summary", function.summary.in(language), 4),
                            formula("judgement", verdict, std::string(word(Word::unchecked, language)))});
    auto const add_line = [&](Word label, std::string const& words, std::string_view look_of_words) {
        sheet.add({text("label", word(label, language)), text(look_of_words, words, 7)});
    };
    add_line(Word::how_to_write_it, signature(function, language), "code");
    add_line(Word::gives, what_it_gives(function, language), "prose");
    if (!function.caution.empty())
        sheet.add(
            {text("caution-label", word(Word::caution, language)), text("caution", function.caution.in(language), 7)});
    add_arguments(sheet, function, language);
    for (Argument const& argument : function.arguments)
        if (argument.lists_names)
            add_names(sheet, argument, language);
    add_equations(sheet, function, language);
    add_sources(sheet, function, language);
    add_heading(sheet,
                {{Word::example, 3},
                 {Word::result, 1},
                 {Word::must_give, 1},
                 {Word::within, 1},
                 {Word::where_from, 1},
                 {Word::verdict, 1}},
                language);
    rows.first_check = sheet.rows() + 1;
    for (Example const& example : function.examples)
        add_example(sheet, function, example, readings, language);
    rows.last_check = sheet.rows();
    sheet.space(0.6);
    return rows;
}

} // namespace hearthcell::generator::guide
