// The acceptance workbook: every example of the catalogue as a live formula beside the value that it must give.

#include "manifest/generator/output.hpp"

#include <cmath>
#include <iomanip>
#include <sstream>
#include <vector>

namespace hearthcell::generator {
namespace {

std::string precise(double number) {
    std::ostringstream text;
    text << std::setprecision(17) << number;
    return text.str();
}

std::string doubled_quotes(std::string_view text) {
    std::string result;
    for (char const c : text)
        result += c == '"' ? "\"\"" : std::string(1, c);
    return result;
}

/// A column's letters: A, B, … Z, AA, …
std::string column_name(std::size_t place) {
    std::string name(1, char('A' + place % 26));
    for (place /= 26; place > 0; place = (place - 1) / 26)
        name.insert(name.begin(), char('A' + (place - 1) % 26));
    return name;
}

/// Readings of the examples' columns: each stands in a column of its own on the second sheet.
class Readings {
public:
    /// The reference to a column; the same readings stand there once.
    std::string reference(std::span<double const> column) {
        std::size_t place = 0;
        while (place < columns.size() && columns[place].data() != column.data())
            ++place;
        if (place == columns.size())
            columns.push_back(column);
        std::string const name = column_name(place);
        return "[$Readings." + name + "1:." + name + std::to_string(column.size()) + "]";
    }

    void write(std::ostream& out) const {
        std::size_t rows = 0;
        for (auto const& column : columns)
            rows = std::max(rows, column.size());
        for (std::size_t row = 0; row < rows; ++row) {
            out << "    <table:table-row>";
            for (auto const& column : columns) {
                if (row < column.size() && !std::isnan(column[row]))
                    out << "<table:table-cell office:value-type=\"float\" office:value=\"" << precise(column[row])
                        << "\"/>";
                else
                    out << "<table:table-cell/>";
            }
            out << "</table:table-row>\n";
        }
    }

private:
    std::vector<std::span<double const>> columns;
};

std::string argument_of(Cell const& cell, Readings& readings) {
    switch (cell.kind) {
    case Cell::Kind::omitted:
        return "";
    case Cell::Kind::number:
        return precise(cell.number);
    case Cell::Kind::text:
        return "\"" + doubled_quotes(cell.text) + "\"";
    case Cell::Kind::column:
        return readings.reference(cell.column);
    }
    return "";
}

/// The call after the function's name, as files hold it.
std::string call_of(Example const& example, Readings& readings) {
    std::string text = "(";
    for (std::size_t i = 0; i < example.arguments.size(); ++i)
        text += (i == 0 ? "" : ";") + argument_of(example.arguments[i], readings);
    return text + ")";
}

std::string text_cell(std::string_view text) {
    return "<table:table-cell office:value-type=\"string\"><text:p>" + escaped(text) + "</text:p></table:table-cell>";
}

std::string number_cell(double number) {
    return "<table:table-cell office:value-type=\"float\" office:value=\"" + precise(number) + "\"/>";
}

std::string formula_cell(std::string const& formula) {
    return "<table:table-cell table:formula=\"" + escaped("of:=" + formula) + "\"/>";
}

/// How a cell shows an error, and what ERROR.TYPE calls it.
struct ShownError {
    std::string_view text;
    int type;
};

ShownError shown(Error error) {
    switch (error) {
    case Error::value:
        return {"#VALUE!", 3};
    case Error::number:
        return {"#NUM!", 6};
    case Error::not_available:
        return {"#N/A", 7};
    case Error::parameters:
        return {"Err:504", 504}; // no example shows it: it would not survive being typed
    }
    return {};
}

/// Columns D (result), E (expected), F (tolerance), H (verdict).
std::string expected_cells(Expected const& expected) {
    if (expected.kind == Expected::Kind::number)
        return number_cell(expected.number) + number_cell(expected.tolerance);
    std::string_view const text = expected.kind == Expected::Kind::text ? expected.text : shown(expected.error).text;
    return text_cell(text) + "<table:table-cell/>";
}

std::string verdict_formula(Expected const& expected, std::string const& row) {
    std::string const result = "[.D" + row + "]", value = "[.E" + row + "]";
    std::string agrees;
    switch (expected.kind) {
    case Expected::Kind::number:
        agrees = "IF(ISNUMBER(" + result + ");ABS(" + result + "-" + value + ")<=[.F" + row + "];FALSE())";
        break;
    case Expected::Kind::text:
        // A text out of a block equals no other text in Calc until it has gone through an operator.
        agrees = "IF(ISTEXT(" + result + ");EXACT(" + result + "&\"\";" + value + ");FALSE())";
        break;
    case Expected::Kind::error:
        agrees = "IF(ISERROR(" + result + ");ERROR.TYPE(" + result + ")=" + std::to_string(shown(expected.error).type) +
                 ";FALSE())";
        break;
    case Expected::Kind::block: // its elements have a row each
        break;
    }
    return "IF(" + agrees + ";\"agrees\";\"differs\")";
}

std::string upper(std::string_view text) {
    std::string result(text);
    for (char& c : result)
        c = c >= 'a' && c <= 'z' ? char(c - 'a' + 'A') : c;
    return result;
}

/// One check: a formula, what is shown of it, what it must give and where that comes from.
struct Check {
    std::string formula, shown;
    Expected const& expected;
    std::string from;
};

std::string row_of(Function const& function, Check const& check, int row) {
    return "    <table:table-row>" + text_cell(std::string("STOVE.") + std::string(function.name)) +
           text_cell(function.summary) + text_cell(check.shown) + formula_cell(check.formula) +
           expected_cells(check.expected) + text_cell(check.from) +
           formula_cell(verdict_formula(check.expected, std::to_string(row))) + "</table:table-row>\n";
}

/// The checks of an example: one, or one for every element of a block.
std::vector<Check> checks_of(Function const& function, Example const& example, Readings& readings) {
    std::string const call = call_of(example, readings);
    std::string const formula = upper(service) + "." + upper(function.stored) + call;
    std::string const shown = "STOVE." + std::string(function.name) + call;
    Expected const& expected = example.expected;
    if (expected.kind != Expected::Kind::block)
        return {{formula, shown, expected, std::string(example.from)}};
    std::vector<Check> checks;
    for (std::size_t i = 0; i < expected.rows * expected.columns; ++i) {
        std::string place = ";" + std::to_string(i / expected.columns + 1);
        place.append(";").append(std::to_string(i % expected.columns + 1)).append(")");
        std::string from(function.result.parts[i % expected.columns].name);
        from.append(": ").append(example.from);
        auto const element = [&place](std::string const& block) {
            return std::string("INDEX(").append(block).append(place);
        };
        checks.push_back({element(formula), element(shown), expected.elements[i], from});
    }
    return checks;
}

} // namespace

void write_acceptance_sheet(std::ostream& out) {
    constexpr int first_row = 4;
    int row = first_row;
    Readings readings;
    std::string rows;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (Example const& example : function.examples)
                for (Check const& check : checks_of(function, example, readings)) {
                    rows += row_of(function, check, row);
                    ++row;
                }
    std::string const last = std::to_string(row - 1);
    std::string const verdicts = "[.H" + std::to_string(first_row) + ":.H" + last + "]";

    out << R"(<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3"
 office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
 <office:body>
  <office:spreadsheet>
   <table:table table:name="Checks">
)";
    out << "    <table:table-row>" << text_cell("Examples that agree")
        << formula_cell("COUNTIF(" + verdicts + ";\"agrees\")") << "</table:table-row>\n    <table:table-row>"
        << text_cell("Examples in all") << number_cell(row - first_row) << "</table:table-row>\n    <table:table-row>";
    for (std::string_view heading :
         {"function", "summary", "call", "result", "must be", "tolerance", "from", "verdict"})
        out << text_cell(heading);
    out << "</table:table-row>\n" << rows << "   </table:table>\n   <table:table table:name=\"Readings\">\n";
    readings.write(out);
    out << R"(   </table:table>
   <table:named-expressions>
    <table:named-range table:name="examples_that_agree" table:cell-range-address="$Checks.$B$1"/>
    <table:named-range table:name="examples_in_all" table:cell-range-address="$Checks.$B$2"/>
   </table:named-expressions>
  </office:spreadsheet>
 </office:body>
</office:document>
)";
}

} // namespace hearthcell::generator
