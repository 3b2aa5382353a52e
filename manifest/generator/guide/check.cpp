#include "manifest/generator/guide/check.hpp"

#include "manifest/generator/guide/words.hpp"
#include "manifest/generator/output.hpp"

namespace hearthcell::generator::guide {
namespace {

std::string stored_argument(Cell const& cell, Readings::Cells const& cells, std::string_view sheet) {
    switch (cell.kind) {
    case CellKind::omitted:
        break;
    case CellKind::number:
        return exact(cell.number);
    case CellKind::text:
        return text_in_formula(cell.text);
    case CellKind::column:
        return "[$" + quoted_name(sheet) + "." + cells.first + ":." + cells.last + "]";
    }
    return "";
}

std::string shown_argument(Cell const& cell, Readings::Cells const& cells, Language language) {
    switch (cell.kind) {
    case CellKind::omitted:
        break;
    case CellKind::number:
        return with_decimal_sign(exact(cell.number), language);
    case CellKind::text:
        return text_in_formula(cell.text);
    case CellKind::column:
        return std::string(word(Word::readings_sheet, language)) + "." + cells.first + ":" + cells.last;
    }
    return "";
}

/// What Calc's ERROR.TYPE calls an error.
int type_of(Error error) {
    switch (error) {
    case Error::value:
        return 3;
    case Error::number:
        return 6;
    case Error::not_available:
        return 7;
    case Error::parameters:
        break; // no example shows it: it would not survive being typed
    }
    return 0;
}

} // namespace

Call call_of(Function const& function, Example const& example, Readings& readings, Language language) {
    Call call{stored_name(function) + "(", "STOVE." + std::string(function.name) + "("};
    bool first = true;
    for (Cell const& cell : example.arguments) {
        Readings::Cells cells;
        if (cell.kind == CellKind::column)
            cells = readings.cells(cell.column, function);
        call.stored += (first ? "" : ";") + stored_argument(cell, cells, word(Word::readings_sheet, language));
        call.shown += (first ? "" : "; ") + shown_argument(cell, cells, language);
        first = false;
    }
    call.stored += ")";
    call.shown += ")";
    return call;
}

std::vector<Check> checks_of(Function const& function, Example const& example, Call const& call, Language language) {
    Expected const& expected = example.expected;
    if (expected.kind != ExpectedKind::block)
        return {{call.stored, "", &expected}};
    std::vector<Check> checks;
    for (std::size_t i = 0; i < expected.rows * expected.columns; ++i) {
        std::string const row = std::to_string(i / expected.columns + 1),
                          column = std::to_string(i % expected.columns + 1);
        std::string part(function.result.parts[i % expected.columns].name.in(language));
        if (expected.rows > 1)
            part = filled(filled(word(Word::row_of_list, language), "%1", part), "%2", row);
        checks.push_back({"INDEX(" + call.stored + ";" + row + ";" + column + ")", part, &expected.elements[i]});
    }
    return checks;
}

std::string verdict_formula(Expected const& expected, int row, Columns columns, Language language) {
    auto const at = [row](char column) { return std::string("[.") + column + std::to_string(row) + "]"; };
    std::string const result = at(columns.result);
    std::string const must =
        expected.kind == ExpectedKind::text && expected.text.empty() ? "\"\"" : at(columns.expected);
    std::string agrees;
    switch (expected.kind) {
    case ExpectedKind::number:
        agrees = "IF(ISNUMBER(" + result + ");ABS(" + result + "-" + must + ")<=" + at(columns.margin) + ";FALSE())";
        break;
    case ExpectedKind::text:
        // A text out of a block equals no other text in Calc until it has gone through an operator.
        agrees = "IF(ISTEXT(" + result + ");EXACT(" + result + "&\"\";" + must + ");FALSE())";
        break;
    case ExpectedKind::error:
        agrees = "IF(ISERROR(" + result + ");ERROR.TYPE(" + result + ")=" + std::to_string(type_of(expected.error)) +
                 ";FALSE())";
        break;
    case ExpectedKind::block: // its elements have a row each
        break;
    }
    auto const say = [language](Word which) { return text_in_formula(word(which, language)); };
    return "IF(ISTEXT(" + std::string(installed_edition) + ");IF(" + agrees + ";" + say(Word::agrees) + ";" +
           say(Word::differs) + ");" + say(Word::unchecked) + ")";
}

void judge_verdicts(Sheet& sheet, char column, int first_row, int last_row, Language language) {
    auto const says = [language](Word which) { return "=" + text_in_formula(word(which, language)); };
    sheet.judge(column, first_row, last_row, says(Word::agrees), says(Word::differs));
}

std::string text_in_formula(std::string_view text) {
    std::string result = "\"";
    for (char const c : text)
        result.append(c == '"' ? 2 : 1, c);
    return result + "\"";
}

std::string sentence_formula(std::string_view sentence, std::vector<std::string> const& parts) {
    std::string text = text_in_formula(sentence);
    for (std::size_t i = 0; i < parts.size(); ++i)
        text = filled(text, "%" + std::to_string(i + 1), "\"&" + parts[i] + "&\"");
    return text;
}

} // namespace hearthcell::generator::guide
