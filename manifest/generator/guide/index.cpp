#include "manifest/generator/guide/index.hpp"

#include "functions/edition.hpp"
#include "manifest/generator/guide/description.hpp"
#include "manifest/generator/guide/words.hpp"

namespace hearthcell::generator::guide {
namespace {

// Title, verdict, status, introduction, edition and heading stand above.
constexpr int rows_above_list = 6;

std::string cell(char column, int row) {
    return std::string("[.") + column + std::to_string(row) + "]";
}

std::string cells(char column, int first, int last) {
    return std::string("[.") + column + std::to_string(first) + ":." + column + std::to_string(last) + "]";
}

std::string if_installed(std::string const& then, std::string const& otherwise) {
    return "IF(ISTEXT(" + std::string(installed_edition) + ");" + then + ";" + otherwise + ")";
}

std::string counts_formula(std::string const& agreeing, std::string const& all, Language language) {
    auto const say = [language](Word which) { return word(which, language); };
    return if_installed("IF(" + agreeing + "=" + all + ";" + sentence_formula(say(Word::all_agree), {all}) + ";" +
                            sentence_formula(say(Word::some_differ), {all + "-" + agreeing, all}) + ")",
                        text_in_formula(say(Word::nothing_checked)));
}

std::string status_formula(Language language) {
    std::string const installed(installed_edition), ours = text_in_formula(edition);
    auto const say = [language](Word which) { return word(which, language); };
    return if_installed("IF(EXACT(" + installed + ";" + ours + ");" + text_in_formula(say(Word::is_installed)) + ";" +
                            sentence_formula(say(Word::is_another_edition), {ours, installed}) + ")",
                        text_in_formula(say(Word::is_missing)));
}

/// A reference to the verdicts of a block on its sheet.
std::string verdicts_of(std::string_view sheet, BlockRows const& block) {
    return "[$" + quoted_name(sheet) + ".$" + check_column + "$" + std::to_string(block.first_check) + ":.$" +
           check_column + "$" + std::to_string(block.last_check) + "]";
}

std::size_t checks_of(Function const& function) {
    std::size_t count = 0;
    for (Example const& example : function.examples)
        count += example.expected.kind == ExpectedKind::block ? example.expected.rows * example.expected.columns : 1;
    return count;
}

Entry verdict_entry(std::string_view look, int row, Language language) {
    return formula(look, verdict_of_counts(cell(agreeing_column, row), cell(checks_column, row), language),
                   std::string(word(Word::unchecked, language)));
}

void add_function(Sheet& sheet, Function const& function, std::string_view subject, BlockRows const& block,
                  Language language) {
    int const row = sheet.rows() + 1;
    sheet.add(
        {link("entry", "STOVE." + std::string(function.name),
              quoted_name(subject) + ".A" + std::to_string(block.title)),
         text("entry", function.summary.in(language)), text("entry", name_of_result(function, language)),
         formula("count",
                 "COUNTIF(" + verdicts_of(subject, block) + ";" + text_in_formula(word(Word::agrees, language)) + ")",
                 ""),
         number("count", double(checks_of(function))), verdict_entry("verdict", row, language)});
}

} // namespace

int IndexRows::total() const {
    auto const groups = catalogue();
    return of_function(groups.size() - 1, groups.back().functions.size());
}

int IndexRows::of_subject(std::size_t group) const {
    auto const groups = catalogue();
    int row = rows_above_list + 1;
    for (std::size_t before = 0; before < group; ++before)
        row += 1 + int(groups[before].functions.size());
    return row;
}

int IndexRows::of_function(std::size_t group, std::size_t place) const {
    return of_subject(group) + 1 + int(place);
}

std::string index_cell(char column, int row, Language language) {
    return "[$" + quoted_name(word(Word::index_sheet, language)) + ".$" + column + "$" + std::to_string(row) + "]";
}

std::string verdict_of_counts(std::string const& agreeing, std::string const& all, Language language) {
    auto const say = [language](Word which) { return text_in_formula(word(which, language)); };
    return if_installed("IF(" + agreeing + "=" + all + ";" + say(Word::agrees) + ";" + say(Word::differs) + ")",
                        say(Word::unchecked));
}

Sheet index_sheet(std::vector<std::string> const& subjects, std::vector<std::vector<BlockRows>> const& blocks,
                  Language language) {
    auto const say = [language](Word which) { return word(which, language); };
    IndexRows const rows;
    Sheet sheet(std::string(say(Word::index_sheet)), {4.5, 10.4, 7.0, 2.4, 2.3, 3.6});
    int const all = 6;
    std::string const agreeing = cell(agreeing_column, rows.total()), checks = cell(checks_column, rows.total());
    sheet.add({text("title", say(Word::title), all)});
    sheet.add(
        {formula("overall", counts_formula(agreeing, checks, language), std::string(say(Word::some_differ)), all)});
    sheet.judge('A', sheet.rows(), sheet.rows(), "formula-is(" + agreeing + "=" + checks + ")",
                "formula-is(" + agreeing + "<>" + checks + ")");
    sheet.add({formula("prose", status_formula(language), std::string(say(Word::is_missing)), all)});
    sheet.add({text("prose", say(Word::intro), all)});
    sheet.add({text("quiet", with_value(Word::made_for, edition, language), all - 2),
               link("link", say(Word::worked_examples), quoted_name(say(Word::uses_sheet)) + ".A1", 2)});
    sheet.add({text("heading", say(Word::function)), text("heading", say(Word::what_it_does)),
               text("heading", say(Word::gives)), text("heading-right", say(Word::agreeing)),
               text("heading-right", say(Word::checks)), text("heading", say(Word::verdict))});
    sheet.freeze();
    std::string all_agreeing, all_checks;
    for (std::size_t group = 0; group < subjects.size(); ++group) {
        std::span<Function const> const functions = catalogue()[group].functions;
        int const row = rows.of_subject(group), first = row + 1, last = row + int(functions.size());
        sheet.add({link("group", subjects[group], quoted_name(subjects[group]) + ".A1", 3),
                   formula("group-count", "SUM(" + cells(agreeing_column, first, last) + ")", ""),
                   formula("group-count", "SUM(" + cells(checks_column, first, last) + ")", ""),
                   verdict_entry("group-verdict", row, language)});
        for (std::size_t place = 0; place < functions.size(); ++place)
            add_function(sheet, functions[place], subjects[group], blocks[group][place], language);
        all_agreeing += (group == 0 ? "" : "+") + cell(agreeing_column, row);
        all_checks += (group == 0 ? "" : "+") + cell(checks_column, row);
    }
    sheet.add({text("group", say(Word::all_subjects), 3), formula("group-count", all_agreeing, ""),
               formula("group-count", all_checks, ""), verdict_entry("group-verdict", rows.total(), language)});
    judge_verdicts(sheet, verdict_column, rows.of_subject(0), rows.total(), language);
    return sheet;
}

} // namespace hearthcell::generator::guide
