#include "archive_runs.hpp"

#include "tests/archive/made/good_workbooks.hpp"
#include "tests/archive/made/zip_writer.hpp"

#include <pugixml.hpp>

#include <stdexcept>

namespace hearthcell::tests::archive {
namespace {

/// What is compared of a run.
struct Reports {
    std::vector<Row> changes, collected;
    std::map<std::string, std::set<std::string>> problems;
};

Reports reports_of(std::filesystem::path const& output) {
    Reports reports{read_csv(output / "changes.csv"), read_csv(output / "collected.csv"), problems(output)};
    for (Row& row : reports.changes)
        if (row.at("volatile") != "no")
            row["after"] = row["relative_change"] = "another time";
    return reports;
}

void expect_the_same(Reports const& reports, Reports const& expected) {
    ASSERT_EQ(reports.changes.size(), expected.changes.size());
    for (std::size_t row = 0; row < reports.changes.size(); ++row)
        EXPECT_EQ(reports.changes[row], expected.changes[row]);
    EXPECT_EQ(reports.problems, expected.problems);
    EXPECT_EQ(reports.collected, expected.collected);
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

bool PartOfArchive::holds(std::string const& file) const {
    return file.starts_with("odd/") || files.contains(file);
}

PartOfArchive const& part_of_archive() {
    static PartOfArchive const every_third = [] {
        PartOfArchive part;
        for (int number = 0; number < good_count; number += 3) {
            std::filesystem::path const file = "good" / good_workbook(number).path;
            part.list += (made().folder / file).string() + '\0';
            part.files.insert(file);
        }
        return part;
    }();
    return every_third;
}

void expect_the_same_reports(std::filesystem::path const& output, std::filesystem::path const& as_in) {
    expect_the_same(reports_of(output), reports_of(as_in));
}

void expect_the_same_reports(std::filesystem::path const& output, PartOfArchive const& part) {
    Reports expected = reports_of(whole_run().ended.output);
    auto const is_elsewhere = [&](Row const& row) { return !part.holds(row.at("file")); };
    std::erase_if(expected.changes, is_elsewhere);
    std::erase_if(expected.collected, is_elsewhere);
    std::erase_if(expected.problems, [&](auto const& problem) { return !part.holds(problem.first); });
    expect_the_same(reports_of(output), expected);
}

Held held_in_copy(std::filesystem::path const& file, std::size_t sheet, std::string const& cell) {
    return file.extension() == ".xlsx" ? held_in_xlsx(file, sheet, cell) : held_in_odf(file, sheet, cell);
}

} // namespace hearthcell::tests::archive
