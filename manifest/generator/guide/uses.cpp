#include "manifest/generator/guide/uses.hpp"

#include "manifest/generator/guide/words.hpp"
#include "manifest/generator/output.hpp"

#include <stdexcept>

namespace hearthcell::generator::guide {
namespace {

constexpr int columns_of_uses = 5; // what, how it is written, its value, its unit, what goes where
constexpr char value_column = 'C', pair_column = 'D';

/// "{2}" or "{2:7}" or "{2:7'}" without its braces, as people type it or as files hold it.
std::string cells_of(std::string_view lines, int row_above, bool as_stored) {
    bool const pair = lines.ends_with('\'');
    if (pair)
        lines.remove_suffix(1);
    std::size_t const colon = lines.find(':');
    auto const cell = [&](std::string_view line) {
        return (as_stored ? "." : "") + std::string(1, pair ? pair_column : value_column) +
               std::to_string(row_above + std::stoi(std::string(line)));
    };
    std::string cells = cell(lines.substr(0, colon));
    if (colon != std::string_view::npos)
        cells += ":" + cell(lines.substr(colon + 1));
    return as_stored ? "[" + cells + "]" : cells;
}

/// A formula with the cells of a table's lines in it, the first of which follows `row_above`.
std::string with_cells(std::string_view written, int row_above, bool as_stored) {
    std::string formula;
    while (!written.empty()) {
        std::size_t const open = written.find('{'), close = written.find('}');
        formula += written.substr(0, open);
        if (open == std::string_view::npos)
            break;
        formula += cells_of(written.substr(open + 1, close - open - 1), row_above, as_stored);
        written.remove_prefix(close + 1);
    }
    return formula;
}

/// Functions under the names that files keep.
std::string with_stored_names(std::string formula) {
    constexpr std::string_view prefix = "STOVE.";
    for (std::size_t at = formula.find(prefix); at != std::string::npos; at = formula.find(prefix, at)) {
        std::size_t const name = at + prefix.size(), end = formula.find('(', name);
        Function const* const function = find_function(formula.substr(name, end - name));
        if (function == nullptr)
            throw std::logic_error("a table of the guide uses an unknown function: " + formula);
        std::string const stored = stored_name(*function);
        formula.replace(at, end - at, stored);
        at += stored.size();
    }
    return formula;
}

double number_in(std::string_view given) {
    bool const percent = given.ends_with('%');
    return std::stod(std::string(given)) / (percent ? 100 : 1);
}

void add_line(Sheet& sheet, Line const& line, int row_above, Language language) {
    bool const computed = line.given.starts_with('='), words = line.given.starts_with('"');
    bool const percent = line.unit == "%" || line.given.ends_with('%');
    std::string const digits = percent ? "-percent" : line.digits >= 0 ? "-" + std::to_string(line.digits) : "";
    std::vector<Entry> row{text("entry-strong", line.what.in(language))};
    if (computed) {
        std::string const formula_text(line.given.substr(1));
        row.push_back(text("entry-code", "=" + with_cells(formula_text, row_above, false)));
        Entry result = formula("live", with_stored_names(with_cells(formula_text, row_above, true)), "");
        result.style_ends = digits;
        row.push_back(result);
    } else {
        row.push_back(nothing("entry"));
        row.push_back(words ? text("expected-text", line.given.substr(1, line.given.size() - 2))
                            : number("expected", number_in(line.given), digits));
    }
    row.push_back(line.pair.empty() ? text("entry", percent ? "" : line.unit)
                                    : number("expected", number_in(line.pair)));
    row.push_back(text("entry", line.note.in(language)));
    sheet.add(row);
}

void add_use(Sheet& sheet, Use const& use, Language language) {
    int const row_above = sheet.add({text("name", use.title.in(language), columns_of_uses)});
    for (Line const& line : use.lines)
        add_line(sheet, line, row_above, language);
    sheet.space(0.5);
}

} // namespace

Sheet uses_sheet(Language language) {
    auto const say = [language](Word which) { return word(which, language); };
    Sheet sheet(std::string(say(Word::uses_sheet)), {6.6, 11.0, 2.6, 2.0, 9.6});
    sheet.add({text("subject", say(Word::worked_examples), 4),
               link("link", say(Word::to_the_index), quoted_name(say(Word::index_sheet)) + ".A1")});
    sheet.add({text("prose", say(Word::uses_intro), columns_of_uses)});
    sheet.add({text("caution", say(Word::uses_caution), columns_of_uses)});
    sheet.add({text("heading", say(Word::reading_or_result)), text("heading", say(Word::how_to_write_it)),
               text("heading-right", say(Word::value)), text("heading", say(Word::unit)),
               text("heading", say(Word::what_goes_where))});
    sheet.freeze();
    for (std::span<Use const> const uses : {uses_on_the_bench(), uses_of_gases(), uses_elsewhere()})
        for (Use const& use : uses)
            add_use(sheet, use, language);
    return sheet;
}

} // namespace hearthcell::generator::guide
