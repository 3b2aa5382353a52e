#include "flat_odf.hpp"

#include "zip_writer.hpp"

#include <charconv>
#include <fstream>
#include <stdexcept>

namespace hearthcell::tests::archive {
namespace {

constexpr auto namespaces = R"( office:version="1.3"
  xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
  xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0"
  xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
  xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
  xmlns:draw="urn:oasis:names:tc:opendocument:xmlns:drawing:1.0"
  xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"
  xmlns:svg="urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0"
  xmlns:chart="urn:oasis:names:tc:opendocument:xmlns:chart:1.0"
  xmlns:script="urn:oasis:names:tc:opendocument:xmlns:script:1.0"
  xmlns:dom="http://www.w3.org/2001/xml-events"
  xmlns:xlink="http://www.w3.org/1999/xlink"
  xmlns:ooo="http://openoffice.org/2004/office"
  xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"
  xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0")";

constexpr auto declaration = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
constexpr auto media_type = "application/vnd.oasis.opendocument.spreadsheet";
constexpr auto chart_media_type = "application/vnd.oasis.opendocument.chart";

constexpr auto styles = R"(<office:styles>
<style:style style:name="Result" style:display-name="result of a run" style:family="table-cell">
<style:table-cell-properties fo:background-color="#fdf6e3"/><style:text-properties fo:font-weight="bold"/></style:style>
</office:styles>
)";

std::string chart_body(std::string const& sheet) {
    std::string const values = escaped("'" + sheet + "'.B1:'" + sheet + "'.B4");
    return "<office:body><office:chart><chart:chart chart:class=\"chart:bar\" svg:width=\"8cm\" svg:height=\"5cm\">"
           "<chart:title><text:p>Invented runs</text:p></chart:title>"
           "<chart:plot-area table:cell-range-address=\"" +
           values +
           "\"><chart:axis chart:dimension=\"x\" chart:name=\"primary-x\"/>"
           "<chart:axis chart:dimension=\"y\" chart:name=\"primary-y\"/>"
           "<chart:series chart:values-cell-range-address=\"" +
           values +
           "\" chart:class=\"chart:bar\"><chart:data-point chart:repeated=\"4\"/></chart:series>"
           "</chart:plot-area></chart:chart></office:chart></office:body>";
}

std::string chart_frame(std::string const& inside) {
    return "<table:shapes><draw:frame draw:name=\"runs\" svg:x=\"8cm\" svg:y=\"1cm\" svg:width=\"8cm\" "
           "svg:height=\"5cm\"><draw:object " +
           inside + "</draw:frame></table:shapes>";
}

std::string flat_chart(std::string const& sheet) {
    return chart_frame(std::string("><office:document") + namespaces + " office:mimetype=\"" + chart_media_type +
                       "\">" + chart_body(sheet) + "</office:document></draw:object>");
}

std::string packed_chart(std::string const& object) {
    return chart_frame("xlink:href=\"./" + object +
                       "\" xlink:type=\"simple\" xlink:show=\"embed\" xlink:actuate=\"onLoad\"/>");
}

std::string value_attributes(Held const& held) {
    if (double const* const number = std::get_if<double>(&held))
        return " office:value-type=\"float\" office:value=\"" + digits(*number) + "\"";
    if (std::string const* const text = std::get_if<std::string>(&held))
        return " office:value-type=\"string\" office:string-value=\"" + escaped(*text) + "\"";
    if (std::holds_alternative<CellError>(held))
        return " office:value-type=\"string\" office:string-value=\"\" calcext:value-type=\"error\"";
    return {};
}

std::string paragraph(Held const& held) {
    if (std::string const* const text = std::get_if<std::string>(&held))
        return "<text:p>" + escaped(*text) + "</text:p>";
    if (CellError const* const error = std::get_if<CellError>(&held))
        return "<text:p>" + escaped(error_text(*error)) + "</text:p>";
    return {};
}

std::string table_cell(Cell const& cell) {
    std::string xml = "<table:table-cell";
    if (cell.result)
        xml += " table:style-name=\"Result\"";
    if (!cell.formula.empty())
        xml += " table:formula=\"of:" + escaped(cell.formula) + "\"";
    return xml + value_attributes(cell.stored) + ">" + paragraph(cell.stored) + "</table:table-cell>";
}

template <class Chart> std::string spreadsheet(Workbook const& workbook, Chart chart) {
    std::string xml = "<office:body><office:spreadsheet>\n";
    for (Sheet const& sheet : workbook.sheets) {
        xml += "<table:table table:name=\"" + escaped(sheet.name) + "\">";
        xml += sheet.source;
        if (sheet.chart)
            xml += chart(sheet.name);
        xml += "<table:table-column table:number-columns-repeated=\"2\"/>\n";
        for (auto const& row : sheet.rows) {
            xml += "<table:table-row>";
            for (Cell const& cell : row)
                xml += table_cell(cell);
            xml += "</table:table-row>\n";
        }
        xml += sheet.more_rows + "</table:table>\n";
    }
    if (!workbook.names.empty())
        xml += "<table:named-expressions>";
    for (auto const& [name, address] : workbook.names)
        xml += "<table:named-range table:name=\"" + name + "\" table:base-cell-address=\"" + escaped(address) +
               "\" table:cell-range-address=\"" + escaped(address) + "\"/>";
    if (!workbook.names.empty())
        xml += "</table:named-expressions>\n";
    return xml + "</office:spreadsheet></office:body>\n";
}

std::string root(std::string const& element, std::string const& more, std::string const& inside) {
    return declaration + ("<" + element) + namespaces + more + ">\n" + inside + "</" + element + ">\n";
}

std::string manifest_entry(std::string const& path, std::string const& type) {
    return "<manifest:file-entry manifest:full-path=\"" + path + "\" manifest:media-type=\"" + type + "\"/>\n";
}

void write_ods(Workbook const& workbook, std::filesystem::path const& file) {
    std::map<std::string, std::string> charts;
    std::string const body = spreadsheet(workbook, [&](std::string const& sheet) {
        std::string const object = "Object " + std::to_string(charts.size() + 1);
        charts[object] = root("office:document-content", "", chart_body(sheet));
        return packed_chart(object);
    });
    std::string manifest = declaration + std::string("<manifest:manifest manifest:version=\"1.3\" "
                                                     "xmlns:manifest=\"urn:oasis:names:tc:opendocument:xmlns:"
                                                     "manifest:1.0\">\n");
    manifest += manifest_entry("/", media_type) + manifest_entry("content.xml", "text/xml") +
                manifest_entry("styles.xml", "text/xml");
    ZipWriter zip(file);
    zip.add("mimetype", media_type, Packing::stored);
    zip.add("content.xml", root("office:document-content", "", workbook.scripts + body));
    zip.add("styles.xml", root("office:document-styles", "", styles));
    for (auto const& [object, content] : charts) {
        zip.add(object + "/content.xml", content);
        manifest +=
            manifest_entry(object + "/", chart_media_type) + manifest_entry(object + "/content.xml", "text/xml");
    }
    zip.add("META-INF/manifest.xml", manifest + "</manifest:manifest>\n");
    zip.close();
}

} // namespace

std::string escaped(std::string const& text) {
    std::string safe;
    for (char const letter : text)
        switch (letter) {
        case '&':
            safe += "&amp;";
            break;
        case '<':
            safe += "&lt;";
            break;
        case '>':
            safe += "&gt;";
            break;
        case '"':
            safe += "&quot;";
            break;
        case '\n':
            safe += "&#10;";
            break;
        default:
            safe += letter;
        }
    return safe;
}

std::string digits(double value) {
    char text[32];
    auto const end = std::to_chars(text, text + sizeof text, value);
    return {text, end.ptr};
}

std::string error_text(CellError error) {
    switch (error.code) {
    case 503:
        return "#NUM!";
    case 519:
        return "#VALUE!";
    case 532:
        return "#DIV/0!";
    case 32767:
        return "#N/A";
    default:
        throw std::invalid_argument("no text for error " + std::to_string(error.code));
    }
}

std::string flat_odf(Workbook const& workbook) {
    return root("office:document", std::string(" office:mimetype=\"") + media_type + "\"",
                workbook.scripts + styles + spreadsheet(workbook, flat_chart));
}

void write_odf(Workbook const& workbook, std::filesystem::path const& file) {
    std::string const ending = file.extension().string();
    if (ending == ".ods" || ending == ".ODS") {
        write_ods(workbook, file);
    } else {
        std::ofstream out(file, std::ios::binary);
        out << flat_odf(workbook);
        if (!out.flush())
            throw std::runtime_error("could not write " + file.string());
    }
}

} // namespace hearthcell::tests::archive
