#include "special_workbooks.hpp"

#include "flat_odf.hpp"
#include "good_workbooks.hpp"

namespace hearthcell::tests::archive {
namespace {

/// A result under an older rule, to see that the workbook was recalculated all the same.
Cell older_boiling_point() {
    return {.stored = 95.0,
            .formula = "=HEARTHCELL.STOVE.BOILINGPOINT(1500)",
            .now = today("BOILINGPOINT", {1500.0}),
            .shown = "=STOVE.BOILINGPOINT("};
}

Workbook single(std::filesystem::path const& path, std::vector<std::vector<Cell>> const& rows) {
    return {.path = path, .sheets = {{.name = "Data", .rows = rows}}, .names = {}};
}

std::string url_of(std::filesystem::path const& file) {
    return "file://" + file.string();
}

std::string table_source(std::string const& url, std::string const& mode) {
    return "<table:table-source xlink:type=\"simple\" xlink:href=\"" + escaped(url) + "\" table:table-name=\"Data\"" +
           mode + "/>";
}

} // namespace

Workbook with_macro(std::filesystem::path const& path, std::filesystem::path const& marker) {
    // A function in Basic, called by a cell and when the workbook is opened.
    Workbook workbook =
        single(path, {{older_boiling_point()}, {{.stored = 5.0, .formula = "=TWICE(2.5)", .now = CellError{519}}}});
    std::string const basic = "Function Twice(x)\n  Dim number As Integer\n  number = FreeFile\n  Open \"" +
                              marker.string() +
                              "\" For Output As #number\n  Print #number, \"the macro ran\"\n  Close #number\n"
                              "  Twice = 2 * x\nEnd Function\n";
    workbook.scripts = "<office:scripts><office:script script:language=\"ooo:Basic\"><ooo:libraries>"
                       "<ooo:library-embedded ooo:name=\"Standard\"><ooo:module ooo:name=\"Opening\">"
                       "<ooo:source-code>" +
                       escaped(basic) +
                       "</ooo:source-code></ooo:module></ooo:library-embedded></ooo:libraries></office:script>"
                       "<office:event-listeners><script:event-listener script:language=\"ooo:script\" "
                       "script:event-name=\"dom:load\" "
                       "xlink:href=\"vnd.sun.star.script:Standard.Opening.Twice?language=Basic&amp;location=document\" "
                       "xlink:type=\"simple\"/></office:event-listeners></office:scripts>\n";
    return workbook;
}

Workbook link_source(std::filesystem::path const& path, double value) {
    return single(path, {{{.stored = value}}});
}

Workbook with_links(std::filesystem::path const& path, std::filesystem::path const& source, double saved) {
    std::string const url = url_of(source);
    Workbook workbook = single(path, {{older_boiling_point()},
                                      {{.stored = saved, .formula = "=['" + url + "'#$Data.A1]", .now = saved}},
                                      {{.stored = 2 * saved, .formula = "=2*[$Linked.A1]", .now = 2 * saved}}});
    workbook.sheets.push_back({.name = "Linked",
                               .rows = {{{.stored = saved}}},
                               .source = table_source(url, " table:mode=\"copy-results-only\"")});
    // What Calc keeps of the other workbook for a formula that refers to it.
    workbook.sheets.push_back(
        {.name = "'" + url + "'#Data", .rows = {{{.stored = saved}}}, .source = table_source(url, "")});
    return workbook;
}

Workbook with_web_service(std::filesystem::path const& path, std::string const& url) {
    return single(path, {{older_boiling_point()},
                         {{.stored = std::string("as it was"),
                           .formula = "=WEBSERVICE(\"" + url + "\")",
                           .now = std::string("as it was")}}});
}

Workbook with_a_million_cells(std::filesystem::path const& path) {
    std::string rows;
    double sum = 0;
    for (int row = 0; row < 1000; ++row) {
        rows += "<table:table-row>";
        for (int column = 0; column < 1000; ++column) {
            int const value = (row * 31 + column * 7) % 9973;
            sum += value;
            rows += "<table:table-cell office:value-type=\"float\" office:value=\"" + std::to_string(value) + "\"/>";
        }
        rows += "</table:table-row>\n";
    }
    Workbook workbook =
        single(path, {{older_boiling_point(), {.stored = sum, .formula = "=SUM([.A2:.ALL1001])", .now = sum}}});
    workbook.sheets[0].more_rows = rows;
    return workbook;
}

Workbook that_takes_for_ever(std::filesystem::path const& path) {
    Workbook workbook = single(path, {{older_boiling_point()}});
    for (int row = 2; row <= 6000; ++row)
        workbook.sheets[0].more_rows +=
            "<table:table-row><table:table-cell table:formula=\"of:=SUMPRODUCT(SQRT(ROW([.$A$1:.$A$1000000])+" +
            std::to_string(row) +
            "))\" office:value-type=\"float\" office:value=\"666667166.458841\"/></table:table-row>\n";
    return workbook;
}

} // namespace hearthcell::tests::archive
