#include "archive_runs.hpp"

#include "tests/archive/made/zip_writer.hpp"

#include <pugixml.hpp>

#include <stdexcept>

namespace hearthcell::tests::archive {
namespace {

std::vector<Row> comparable_changes(std::filesystem::path const& output) {
    std::vector<Row> rows = read_csv(output / "changes.csv");
    std::erase_if(rows, [](Row const& row) { return row.at("file").starts_with("slow/"); });
    for (Row& row : rows)
        if (row.at("volatile") != "no")
            row["after"] = row["relative_change"] = "another time";
    return rows;
}

template <class Rows> void erase_slow(Rows& rows) {
    std::erase_if(rows, [](auto const& row) { return row.first.starts_with("slow/"); });
}

std::string odf_content(std::filesystem::path const& file) {
    return file.extension() == ".ods" ? unzipped(file).at("content.xml") : text_of(file);
}

Held held_in_odf(std::filesystem::path const& file, std::size_t sheet, std::string const& cell) {
    pugi::xml_document xml;
    std::string const content = odf_content(file);
    if (!xml.load_buffer(content.data(), content.size(), pugi::parse_full))
        throw std::runtime_error("no XML in " + file.string());
    pugi::xml_node const table =
        xml.select_node(("(//office:spreadsheet/table:table)[" + std::to_string(sheet + 1) + "]").c_str()).node();
    int rows = std::stoi(cell.substr(1)), columns = cell[0] - 'A' + 1;
    for (pugi::xpath_node const& row :
         table.select_nodes("table:table-row | table:table-header-rows/table:table-row")) {
        rows -= row.node().attribute("table:number-rows-repeated").as_int(1);
        if (rows > 0)
            continue;
        for (pugi::xml_node const& one : row.node().children()) {
            columns -= one.attribute("table:number-columns-repeated").as_int(1);
            if (columns > 0)
                continue;
            if (pugi::xml_attribute const value = one.attribute("office:value"))
                return value.as_double();
            return std::string(one.child("text:p").text().get());
        }
    }
    throw std::runtime_error("no cell " + cell + " in " + file.string());
}

Held held_in_xlsx(std::filesystem::path const& file, std::size_t sheet, std::string const& cell) {
    std::string const content = unzipped(file).at("xl/worksheets/sheet" + std::to_string(sheet + 1) + ".xml");
    pugi::xml_document xml;
    xml.load_buffer(content.data(), content.size(), pugi::parse_full);
    pugi::xml_node const found = xml.select_node(("//c[@r='" + cell + "']").c_str()).node();
    if (found.attribute("t").as_string() == std::string("str"))
        return std::string(found.child("v").text().get());
    return found.child("v").text().as_double();
}

} // namespace

TestArchive const& made() {
    static TestArchive const archive{MADE};
    return archive;
}

WholeRun const& whole_run() {
    static WholeRun const done = [] {
        fresh_folder("whole");
        WholeRun whole;
        whole.before = snapshot(made().folder);
        whole.ended = run("whole", {made().good(), made().odd(), made().slow(), "--output", output_of("whole"),
                                    "--workers", "2", "--time-limit", "20", "--collect", collected});
        whole.after = snapshot(made().folder);
        return whole;
    }();
    return done;
}

void expect_the_same_reports(std::filesystem::path const& output, std::filesystem::path const& as_in) {
    std::vector<Row> const changes = comparable_changes(output), expected = comparable_changes(as_in);
    ASSERT_EQ(changes.size(), expected.size());
    for (std::size_t row = 0; row < changes.size(); ++row)
        EXPECT_EQ(changes[row], expected[row]);
    auto troubles = problems(output), expected_troubles = problems(as_in);
    erase_slow(troubles);
    erase_slow(expected_troubles);
    EXPECT_EQ(troubles, expected_troubles);
    std::vector<Row> rows = read_csv(output / "collected.csv"), expected_rows = read_csv(as_in / "collected.csv");
    for (auto* const one : {&rows, &expected_rows})
        std::erase_if(*one, [](Row const& row) { return row.at("file").starts_with("slow/"); });
    EXPECT_EQ(rows, expected_rows);
}

Held held_in_copy(std::filesystem::path const& file, std::size_t sheet, std::string const& cell) {
    return file.extension() == ".xlsx" ? held_in_xlsx(file, sheet, cell) : held_in_odf(file, sheet, cell);
}

} // namespace hearthcell::tests::archive
