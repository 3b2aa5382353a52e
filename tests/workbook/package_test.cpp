#include "manifest/workbook/package.hpp"

#include "manifest/workbook/trouble.hpp"
#include "tests/support/content.hpp"

#include <gtest/gtest.h>
#include <unistd.h>

namespace hearthcell::workbook {
namespace {

std::filesystem::path const output =
    std::filesystem::temp_directory_path() / ("hearthcell-package-" + std::to_string(getpid()) + ".ots");

std::string packed(char const* body) {
    pugi::xml_document document;
    document.load_string(body);
    write_package(document, output);
    std::string const bytes = tests::content(output);
    std::filesystem::remove(output);
    return bytes;
}

constexpr char chart[] =
    R"(<office:document office:mimetype="application/vnd.oasis.opendocument.spreadsheet">)"
    R"(<office:body><draw:frame><draw:object>)"
    R"(<office:document office:mimetype="application/vnd.oasis.opendocument.chart">)"
    R"(<office:body/></office:document></draw:object></draw:frame></office:body></office:document>)";

TEST(Package, BeginsWithItsPlainTypeAsOpenDocumentAsks) {
    // OpenDocument 1.3, part 2, 3.3: the first entry, not compressed, so that the type stands at a fixed place.
    EXPECT_EQ(packed(chart).substr(30, 63), "mimetypeapplication/vnd.oasis.opendocument.spreadsheet-template");
}

TEST(Package, TakesChartsIntoFoldersOfTheirOwn) {
    EXPECT_NE(packed(chart).find("Object 1/content.xml"), std::string::npos);
}

TEST(Package, IsTheSameEveryTime) {
    EXPECT_EQ(packed(chart), packed(chart));
}

TEST(Package, RefusesWhatItCannotPack) {
    EXPECT_THROW(packed("<office:document><draw:image><office:binary-data>AA</office:binary-data></draw:image>"
                        "</office:document>"),
                 Trouble);
}

} // namespace
} // namespace hearthcell::workbook
