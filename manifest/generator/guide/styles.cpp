#include "manifest/generator/guide/styles.hpp"

#include "manifest/generator/guide/words.hpp"
#include "manifest/generator/output.hpp"

#include <set>

namespace hearthcell::generator::guide {
namespace {

constexpr int most_digits = 8;
constexpr double page_margin = 1.2; // cm
constexpr std::string_view shows_digits[] = {"live", "expected"};

std::string_view country_of(Language language) {
    constexpr std::string_view countries[] = {"US", "FR", "ES", "TZ"};
    return countries[std::size_t(language)];
}

std::string locale(std::string_view prefix, Language language) {
    std::string text(" ");
    text.append(prefix).append(":language=\"").append(tag_of(language).substr(0, 2)).append("\" ");
    text.append(prefix).append(":country=\"").append(country_of(language)).append("\"");
    return text;
}

/// Numbers have the decimal sign of the guide's language, as its formulas have.
void write_number_formats(std::ostream& out, Language language) {
    auto const begin = [&](std::string const& name) {
        out << "  <number:number-style style:name=\"" << name << "\"" << locale("number", language) << ">";
    };
    for (int digits = 0; digits <= most_digits; ++digits) {
        begin("digits-" + std::to_string(digits));
        out << "<number:number number:decimal-places=\"" << digits << "\" number:min-decimal-places=\"" << digits
            << "\" number:min-integer-digits=\"1\"/></number:number-style>\n";
    }
    out << "  <number:percentage-style style:name=\"percent\"" << locale("number", language)
        << "><number:number number:decimal-places=\"1\" number:min-decimal-places=\"1\" "
           "number:min-integer-digits=\"1\"/>"
           "<number:text>%</number:text></number:percentage-style>\n";
    begin("as-it-is");
    out << "<number:number number:min-integer-digits=\"1\"/></number:number-style>\n";
    begin("margin");
    out << "<number:text>± </number:text><number:number number:min-integer-digits=\"1\"/></number:number-style>\n";
    begin("small-margin");
    out << "<number:text>± </number:text><number:scientific-number number:decimal-places=\"0\" "
           "number:min-integer-digits=\"1\" number:min-exponent-digits=\"1\"/></number:number-style>\n";
}

void write_look(std::ostream& out, Look const& look, std::string const& ends, std::string_view digits) {
    std::string const font = look.monospaced ? "code" : "body";
    out << "  <style:style style:name=\"" << look.name << ends
        << "\" style:family=\"table-cell\" style:parent-style-name=\"Default\"";
    if (!digits.empty())
        out << " style:data-style-name=\"" << digits << "\"";
    out << "><style:table-cell-properties fo:wrap-option=\"wrap\" " << look.cell << "/><style:paragraph-properties "
        << look.paragraph << "/><style:text-properties style:font-name=\"" << font << "\" fo:font-size=\""
        << exact(look.points) << "pt\" fo:font-weight=\"" << (look.bold ? "bold" : "normal") << "\" " << look.letters
        << "/></style:style>\n";
}

void write_looks(std::ostream& out) {
    for (Look const& look : looks())
        write_look(out, look, "", look.name == "margin" ? "margin" : "as-it-is");
    for (std::string_view const name : shows_digits) {
        for (int digits = 0; digits <= most_digits; ++digits)
            write_look(out, look(name), "-" + std::to_string(digits), "digits-" + std::to_string(digits));
        write_look(out, look(name), "-percent", "percent");
    }
    write_look(out, look("margin"), "-small", "small-margin");
    // The colours of verdicts leave all else of a cell as it is; the words say the same.
    out << R"(  <style:style style:name="good" style:family="table-cell" style:parent-style-name="Default">
   <style:table-cell-properties fo:background-color="#dff0e3"/><style:text-properties fo:color="#1c5c34"/>
  </style:style>
  <style:style style:name="bad" style:family="table-cell" style:parent-style-name="Default">
   <style:table-cell-properties fo:background-color="#f9dcd7"/><style:text-properties fo:color="#8f1d14"/>
  </style:style>
)";
}

void write_page(std::ostream& out, Sheet const& sheet, std::size_t place) {
    // As large as the sheet, so that it is one page whose letters have their own size.
    double const spare = 0.5;
    out << "  <style:page-layout style:name=\"paper-" << place << "\"><style:page-layout-properties fo:page-width=\""
        << centimetres(sheet.width() + 2 * page_margin + spare) << "\" fo:page-height=\""
        << centimetres(sheet.height() + 2 * page_margin + spare) << "\" style:print-orientation=\""
        << (sheet.width() > sheet.height() ? "landscape" : "portrait") << "\" fo:margin=\"" << centimetres(page_margin)
        << "\" style:scale-to-X=\"1\" style:scale-to-Y=\"1\" style:print=\"objects charts drawings "
           "zero-values\"/><style:header-style/><style:footer-style/></style:page-layout>\n";
}

void setting(std::ostream& out, std::string_view name, std::string_view type, std::string const& value) {
    out << "<config:config-item config:name=\"" << name << "\" config:type=\"" << type << "\">" << value
        << "</config:config-item>";
}

/// No grid, and the first rows stay in sight.
void write_settings(std::ostream& out, std::vector<Sheet> const& sheets) {
    out << " <office:settings><config:config-item-set config:name=\"ooo:view-settings\">"
           "<config:config-item-map-indexed config:name=\"Views\"><config:config-item-map-entry>"
           "<config:config-item-map-named config:name=\"Tables\">\n";
    for (Sheet const& sheet : sheets) {
        std::string const frozen = std::to_string(sheet.frozen_rows());
        out << "  <config:config-item-map-entry config:name=\"" << escaped(sheet.name()) << "\">";
        setting(out, "HorizontalSplitMode", "short", "0");
        setting(out, "VerticalSplitMode", "short", "2");
        setting(out, "HorizontalSplitPosition", "int", "0");
        setting(out, "VerticalSplitPosition", "int", frozen);
        setting(out, "ActiveSplitRange", "short", "2");
        setting(out, "PositionTop", "int", "0");
        setting(out, "PositionBottom", "int", frozen);
        setting(out, "ShowGrid", "boolean", "false");
        out << "</config:config-item-map-entry>\n";
    }
    out << " </config:config-item-map-named>";
    setting(out, "ActiveTable", "string", escaped(sheets.front().name()));
    setting(out, "ShowGrid", "boolean", "false");
    out << "</config:config-item-map-entry></config:config-item-map-indexed></config:config-item-set></"
           "office:settings>\n";
}

} // namespace

void write_styles(std::ostream& out, std::vector<Sheet> const& sheets, Language language) {
    write_settings(out, sheets);
    out << R"( <office:font-face-decls>
  <style:font-face style:name="body" svg:font-family="'DejaVu Sans'" style:font-family-generic="swiss" style:font-pitch="variable"/>
  <style:font-face style:name="code" svg:font-family="'DejaVu Sans Mono'" style:font-family-generic="modern" style:font-pitch="fixed"/>
 </office:font-face-decls>
 <office:styles>
)";
    write_number_formats(out, language);
    out << "  <style:default-style style:family=\"table-cell\"><style:text-properties style:font-name=\"body\" "
           "fo:font-size=\"8.5pt\" fo:color=\"#20292f\""
        << locale("fo", language) << R"(/></style:default-style>
  <style:style style:name="Default" style:family="table-cell">
   <style:table-cell-properties fo:background-color="#ffffff" style:vertical-align="top" fo:padding="0.06cm" fo:padding-left="0.12cm" fo:padding-right="0.12cm"/>
  </style:style>
)";
    write_looks(out);
    out << " </office:styles>\n <office:automatic-styles>\n";
    std::set<int> heights;
    for (std::size_t place = 0; place < sheets.size(); ++place) {
        sheets[place].write_styles(out, place);
        write_page(out, sheets[place], place);
        heights.insert(sheets[place].row_heights().begin(), sheets[place].row_heights().end());
    }
    for (int const height : heights)
        out << "  <style:style style:name=\"row-" << height
            << "\" style:family=\"table-row\"><style:table-row-properties style:row-height=\""
            << centimetres(height / 100.0) << "\" style:use-optimal-row-height=\"false\"/></style:style>\n";
    out << " </office:automatic-styles>\n <office:master-styles>\n";
    for (std::size_t place = 0; place < sheets.size(); ++place)
        out << "  <style:master-page style:name=\"page-" << place << "\" style:display-name=\""
            << escaped(filled(word(Word::page_of, language), "%1", sheets[place].name()))
            << "\" style:page-layout-name=\"paper-" << place
            << "\"><style:header style:display=\"false\"/><style:footer "
               "style:display=\"false\"/></style:master-page>\n";
    out << " </office:master-styles>\n";
}

} // namespace hearthcell::generator::guide
