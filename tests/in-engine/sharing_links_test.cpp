// Copies for sharing of documents with links to what lies outside of them: nothing is fetched for the copy.

#include "copy_for_sharing.hpp"
#include "picture_server.hpp"

#include <sys/stat.h>

#include <cstdlib>
#include <fstream>

namespace hearthcell::tests {

namespace {

/// What stands in a sheet's file beside a formula of ours: in a frame, below the sheets, in the description.
struct Pieces {
    std::string in_frame = {}, below = {}, description = {};
};

void write_sheet(std::filesystem::path const& file, Pieces const& pieces) {
    std::ofstream(file) << R"xml(<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" office:version="1.3"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"
 xmlns:draw="urn:oasis:names:tc:opendocument:xmlns:drawing:1.0" xmlns:xlink="http://www.w3.org/1999/xlink"
 xmlns:svg="urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:meta="urn:oasis:names:tc:opendocument:xmlns:meta:1.0"
 office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:meta>)xml"
                        << pieces.description << R"xml(</office:meta>
<office:body><office:spreadsheet><table:table table:name="Data">
<table:shapes><draw:frame svg:width="2cm" svg:height="2cm" svg:x="4cm" svg:y="1cm">)xml"
                        << pieces.in_frame << R"xml(</draw:frame></table:shapes>
<table:table-row><table:table-cell table:formula="of:=HEARTHCELL.STOVE.BOILINGPOINT(0)"/></table:table-row>
<table:table-row><table:table-cell office:value-type="string"><text:p><text:a
 xlink:href="http://127.0.0.1:9/clicked" xlink:type="simple">a place to click</text:a></text:p></table:table-cell>
</table:table-row></table:table>
)xml" << pieces.below << R"xml(
</office:spreadsheet></office:body></office:document>)xml";
}

Pieces picture_at(std::string const& address) {
    return {.in_frame = "<draw:image xlink:type=\"simple\" xlink:href=\"" + address + "\"/>"};
}

/// What LibreOffice would look for at the address as it opens such a file.
std::vector<Pieces> others_at(std::string const& address) {
    std::string const link = "xlink:type=\"simple\" xlink:href=\"" + address;
    return {
        {.below = "<table:database-ranges><table:database-range table:name=\"asked\" table:refresh-delay=\"PT1S\" "
                  "table:target-range-address=\"Data.K1:Data.L3\"><table:database-source-sql table:database-name=\"" +
                  address +
                  "data.odb\" table:sql-statement=\"SELECT 1\"/></table:database-range>"
                  "</table:database-ranges>"},
        {.description = "<meta:template " + link + "pattern.ots\" meta:date=\"2024-01-01T00:00:00\"/>"},
    };
}

class CopyWithLinks : public CopyForSharing {
protected:
    std::filesystem::path const original = scratch_folder() / "with links.fods";

    /// What an .ods holds of its sheets.
    [[nodiscard]] static std::string sheets_of(std::filesystem::path const& file) {
        return entry_of(file, "content.xml");
    }
};

} // namespace

TEST_F(CopyWithLinks, FetchesNothingAndKeepsTheLink) {
    PictureServer const server;
    std::string const address = server.address() + "stove.png?a=1&amp;b=2";
    write_sheet(original, picture_at(address));
    {
        Document const open = Document::open(office_with_package(), original, office::Access::read_write);
        int const of_the_document_itself = server.connections();
        share(open);
        EXPECT_EQ(server.connections(), of_the_document_itself);
    }
    EXPECT_NE(sheets_of(copy).find("xlink:href=\"" + address + "\""), std::string::npos) << sheets_of(copy);
    EXPECT_NE(sheets_of(copy).find("127.0.0.1:9/clicked"), std::string::npos);
    EXPECT_EQ(sheets_of(copy).find("STOVE.BOILINGPOINT(0)\""), std::string::npos);

    if (std::getenv("HEARTHCELL_OFFICE_ROOT") != nullptr)
        return;                              // LibreOffice 25.2 fetches such a picture only when it is to be seen
    int const before = server.connections(); // the server would notice: the same file, opened as it is, asks it
    Document const as_it_is = Document::open(office_with_package(), copy);
    EXPECT_GT(server.connections(), before);
}

TEST_F(CopyWithLinks, HasNoLinkedPictureAsXlsxAndSaysSo) {
    PictureServer const server;
    write_sheet(original, picture_at(server.address() + "stove.png"));
    Document const open = Document::open(office_with_package(), original, office::Access::read_write);
    int const of_the_document_itself = server.connections();
    std::filesystem::path const target = scratch_folder() / "with links.xlsx";
    Said const said = command(office_with_package(), open, "copy-for-sharing", target);
    EXPECT_EQ(server.connections(), of_the_document_itself);
    EXPECT_NE(said.words.find("because nothing is fetched for it: 1."), std::string::npos) << said.words;
    Document const shared = Document::open(office_without_package(), target);
    EXPECT_NEAR(number(shared.sheet(0).value("A1")), 99.97, 0.01);
}

TEST_F(CopyWithLinks, AsksForNoDatabaseAndNoTemplate) {
    PictureServer const server;
    for (Pieces const& pieces : others_at(server.address())) {
        write_sheet(original, pieces);
        Document const open = Document::open(office_with_package(), original, office::Access::read_write);
        int const of_the_document_itself = server.connections();
        share(open);
        EXPECT_EQ(server.connections(), of_the_document_itself) << pieces.below << pieces.description;
    }
}

TEST_F(CopyWithLinks, CalculatesAgainWhenSomebodyOpensIt) {
    write_sheet(original, {});
    Document const open = Document::open(office_with_package(), original, office::Access::read_write);
    share(open);
    std::string const settings = entry_of(copy, "settings.xml");
    EXPECT_NE(settings.find("\"AutoCalculate\" config:type=\"boolean\">true<"), std::string::npos) << settings;
}

TEST_F(CopyWithLinks, OpensNoLinkedFile) {
    std::filesystem::path const folder = scratch_folder() / "pictures & more", file = folder / "stove.png";
    std::filesystem::create_directories(folder);
    std::ofstream(file) << "no picture";
    write_sheet(original, picture_at("pictures%20&amp;%20more/stove.png"));
    Document const open = Document::open(office_with_package(), original, office::Access::read_write);
    std::filesystem::remove(file);
    ASSERT_EQ(mkfifo(file.c_str(), 0600), 0); // who opens it waits for ever
    share(open);
    std::filesystem::remove(file);
    // Relative to the copy, which stands beside that folder.
    EXPECT_NE(sheets_of(copy).find("xlink:href=\"../pictures%20&amp;%20more/stove.png\""), std::string::npos)
        << sheets_of(copy);
}

} // namespace hearthcell::tests
