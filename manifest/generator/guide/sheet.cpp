#include "manifest/generator/guide/sheet.hpp"

#include "manifest/generator/output.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numeric>

namespace hearthcell::generator::guide {

std::string centimetres(double length) {
    char buffer[32];
    auto const [end, error] = std::to_chars(buffer, buffer + sizeof buffer, length, std::chars_format::fixed, 2);
    return std::string(buffer, end) + "cm";
}

namespace {

std::string content(Entry const& entry) {
    std::string const words = escaped(entry.text);
    switch (entry.kind) {
    case EntryKind::nothing:
        break;
    case EntryKind::text:
        return " office:value-type=\"string\"><text:p>" + words + "</text:p>";
    case EntryKind::number:
        return " office:value-type=\"float\" office:value=\"" + exact(entry.number) + "\">";
    case EntryKind::formula:
        return " table:formula=\"of:=" + words + "\">";
    case EntryKind::link:
        return " office:value-type=\"string\"><text:p><text:a xlink:type=\"simple\" xlink:href=\"#" +
               escaped(entry.target) + "\">" + words + "</text:a></text:p>";
    }
    return ">";
}

std::string cell(Entry const& entry) {
    std::string xml = "<table:table-cell table:style-name=\"" + std::string(entry.look) + entry.style_ends + "\"";
    if (entry.span > 1)
        xml += " table:number-columns-spanned=\"" + std::to_string(entry.span) + "\" table:number-rows-spanned=\"1\"";
    xml += content(entry) + "</table:table-cell>";
    if (entry.span > 1)
        xml += "<table:covered-table-cell table:number-columns-repeated=\"" + std::to_string(entry.span - 1) + "\"/>";
    return xml;
}

} // namespace

Entry nothing(std::string_view look, int span) {
    return {.look = look, .span = span};
}

Entry text(std::string_view look, std::string_view words, int span) {
    return {.kind = EntryKind::text, .look = look, .span = span, .text = std::string(words)};
}

Entry number(std::string_view look, double value, std::string style_ends) {
    return {.kind = EntryKind::number, .look = look, .number = value, .style_ends = std::move(style_ends)};
}

Entry formula(std::string_view look, std::string formula, std::string shows, int span) {
    return {
        .kind = EntryKind::formula, .look = look, .span = span, .text = std::move(formula), .shows = std::move(shows)};
}

Entry link(std::string_view look, std::string_view words, std::string target, int span) {
    return {
        .kind = EntryKind::link, .look = look, .span = span, .text = std::string(words), .target = std::move(target)};
}

Sheet::Sheet(std::string name_of_sheet, std::vector<double> widths_in_cm)
    : sheet_name(std::move(name_of_sheet)), widths(std::move(widths_in_cm)) {}

int Sheet::add(std::vector<Entry> const& row) {
    double height = 0;
    auto column = widths.begin();
    std::string xml;
    for (Entry const& entry : row) {
        double const width = std::accumulate(column, column + entry.span, 0.0);
        Look const& how = look(entry.look);
        std::string const& words = entry.kind == EntryKind::formula ? entry.shows : entry.text;
        height = std::max(height, height_of(lines_of(words, width, how), how));
        xml += cell(entry);
        column += entry.span;
    }
    return add_row(height, xml);
}

void Sheet::space(double height_in_cm) {
    add_row(height_in_cm, "<table:table-cell/>");
}

int Sheet::add_row(double height_in_cm, std::string const& xml) {
    int const height = int(std::ceil(height_in_cm * 20)) * 5; // few heights, and so few styles
    heights.push_back(height);
    cells +=
        "    <table:table-row table:style-name=\"row-" + std::to_string(height) + "\">" + xml + "</table:table-row>\n";
    return rows();
}

void Sheet::judge(char column, int first_row, int last_row, std::string const& good, std::string const& bad) {
    std::string const start = quoted_name(sheet_name) + "." + column + std::to_string(first_row);
    judgements += "     <calcext:conditional-format calcext:target-range-address=\"" + escaped(start) + ":" +
                  escaped(quoted_name(sheet_name)) + "." + column + std::to_string(last_row) + "\">";
    for (auto const& [condition, style] : {std::pair(good, "good"), std::pair(bad, "bad")})
        judgements += "<calcext:condition calcext:apply-style-name=\"" + std::string(style) + "\" calcext:value=\"" +
                      escaped(condition) + "\" calcext:base-cell-address=\"" + escaped(start) + "\"/>";
    judgements += "</calcext:conditional-format>\n";
}

double Sheet::height() const {
    return std::accumulate(heights.begin(), heights.end(), 0) / 100.0;
}

double Sheet::width() const {
    return std::accumulate(widths.begin(), widths.end(), 0.0);
}

void Sheet::write_styles(std::ostream& out, std::size_t place) const {
    std::string const number = std::to_string(place);
    for (std::size_t column = 0; column < widths.size(); ++column)
        out << "  <style:style style:name=\"column-" << number << "-" << column
            << "\" style:family=\"table-column\"><style:table-column-properties style:column-width=\""
            << centimetres(widths[column]) << "\"/></style:style>\n";
    out << "  <style:style style:name=\"sheet-" << number << "\" style:family=\"table\" style:master-page-name=\"page-"
        << number << "\"><style:table-properties table:display=\"true\"/></style:style>\n";
}

void Sheet::write(std::ostream& out, std::size_t place) const {
    std::string const number = std::to_string(place);
    out << "   <table:table table:name=\"" << escaped(sheet_name) << "\" table:style-name=\"sheet-" << number
        << "\">\n";
    for (std::size_t column = 0; column < widths.size(); ++column)
        out << "    <table:table-column table:style-name=\"column-" << number << "-" << column
            << "\" table:default-cell-style-name=\"Default\"/>\n";
    out << cells;
    if (!judgements.empty())
        out << "    <calcext:conditional-formats>\n" << judgements << "    </calcext:conditional-formats>\n";
    out << "   </table:table>\n";
}

std::string quoted_name(std::string_view sheet) {
    std::string name = "'";
    for (char const c : sheet)
        name.append(c == '\'' ? 2 : 1, c);
    return name + "'";
}

std::string column_name(std::size_t place) {
    std::string name(1, char('A' + place % 26));
    for (place /= 26; place > 0; place = (place - 1) / 26)
        name.insert(name.begin(), char('A' + (place - 1) % 26));
    return name;
}

std::string exact(double number) {
    char buffer[32];
    auto const [end, error] = std::to_chars(buffer, buffer + sizeof buffer, number);
    return {buffer, end};
}

} // namespace hearthcell::generator::guide
