#include "manifest/workbook/thumbnail.hpp"

#include "extension/archive/files/zip.hpp"
#include "manifest/workbook/picture.hpp"

#include <cstdint>
#include <filesystem>
#include <gtest/gtest.h>
#include <map>
#include <zlib.h>

namespace hearthcell::workbook {
namespace {

struct Seen {
    std::size_t width = 0, height = 0;
    std::string bytes; // three a dot

    [[nodiscard]] unsigned at(std::size_t x, std::size_t y) const { // 0xRRGGBB
        auto const byte = [&](std::size_t part) { return std::uint8_t(bytes.at((y * width + x) * 3 + part)); };
        return (unsigned(byte(0)) << 16U) | (unsigned(byte(1)) << 8U) | byte(2);
    }
};

std::size_t big_endian(std::string_view bytes) {
    std::size_t number = 0;
    for (char const byte : bytes.substr(0, 4))
        number = (number << 8U) | std::uint8_t(byte);
    return number;
}

/// Reads a PNG as ISO/IEC 15948 has it, of the one kind that is asked for: 8 bits a colour, no transparency, no
/// interlace, and, what is ours, rows that are no differences.
Seen seen(std::string_view png) {
    Seen picture;
    EXPECT_EQ(png.substr(0, 8), "\x89PNG\r\n\x1a\n");
    std::string packed;
    std::vector<std::string_view> types;
    for (png.remove_prefix(std::min<std::size_t>(8, png.size())); png.size() >= 12;) {
        std::size_t const size = big_endian(png);
        std::string_view const checked = png.substr(4, 4 + size), content = checked.substr(4);
        EXPECT_EQ(big_endian(png.substr(8 + size)),
                  crc32(0, reinterpret_cast<Bytef const*>(checked.data()), uInt(checked.size())));
        types.push_back(checked.substr(0, 4));
        if (types.back() == "IHDR") {
            picture.width = big_endian(content);
            picture.height = big_endian(content.substr(4));
            EXPECT_EQ(content.substr(8), std::string_view("\x08\x02\x00\x00\x00", 5));
        } else if (types.back() == "IDAT")
            packed += content;
        png.remove_prefix(12 + size);
    }
    EXPECT_TRUE(png.empty());
    EXPECT_EQ(types, (std::vector<std::string_view>{"IHDR", "IDAT", "IEND"}));
    std::string rows((picture.width * 3 + 1) * picture.height, '\0');
    uLongf size = rows.size();
    EXPECT_EQ(uncompress(reinterpret_cast<Bytef*>(rows.data()), &size, reinterpret_cast<Bytef const*>(packed.data()),
                         packed.size()),
              Z_OK);
    EXPECT_EQ(size, rows.size());
    for (std::size_t row = 0; row < picture.height; ++row) {
        EXPECT_EQ(rows[row * (picture.width * 3 + 1)], 0);
        picture.bytes += rows.substr(row * (picture.width * 3 + 1) + 1, picture.width * 3);
    }
    return picture;
}

TEST(APicture, ShowsThinThingsAsShades) {
    Picture picture(3, 2);
    picture.fill(1, 0, 2, 1, {0x10, 0x20, 0x30});
    picture.fill(2, 0, 2.25, 2, {0, 0, 0});          // a quarter of two dots
    picture.fill(-5, 1, 0.5, 9, {0x11, 0x11, 0x11}); // reaches beyond it
    Seen const all = seen(picture.png());
    ASSERT_EQ(all.bytes.size(), 18U);
    EXPECT_EQ(all.at(0, 0), 0xffffffU);
    EXPECT_EQ(all.at(1, 0), 0x102030U);
    EXPECT_EQ(all.at(2, 0), 0xbfbfbfU);
    EXPECT_EQ(all.at(0, 1), 0x888888U);
    EXPECT_EQ(all.at(1, 1), 0xffffffU);
    EXPECT_EQ(all.at(2, 1), 0xbfbfbfU);
}

/// A sheet of 9.2 cm, which with its margins is 10 cm: 25.6 dots a cm.
Seen of_sheet(std::string const& rows) {
    pugi::xml_document document;
    document.load_string(
        ("<office:document><office:styles>"
         "<style:style style:name='C'><style:table-column-properties style:column-width='46mm'/>"
         "</style:style>"
         "<style:style style:name='R'><style:table-row-properties style:row-height='1cm'/></style:style>"
         "<style:style style:name='Ground'><style:table-cell-properties "
         "fo:background-color='#336699'/><style:text-properties fo:font-size='20pt' fo:color='#ff0000'/>"
         "</style:style>"
         "<style:style style:name='Heir' style:parent-style-name='Ground'>"
         "<style:table-cell-properties fo:border-bottom='4pt solid #00ff00'/>"
         "<style:paragraph-properties fo:text-align='end'/></style:style>"
         "</office:styles><office:body><office:spreadsheet><table:table>"
         "<table:table-column table:style-name='C' table:number-columns-repeated='2'/>" +
         rows + "</table:table><table:table/></office:spreadsheet></office:body></office:document>")
            .c_str());
    return seen(thumbnail(document.document_element()));
}

std::string row(std::string const& cells) {
    return "<table:table-row table:style-name='R'>" + cells + "</table:table-row>";
}

bool is_any(Seen const& picture, unsigned colour, std::size_t left, std::size_t top, std::size_t right,
            std::size_t bottom) {
    for (std::size_t y = top; y < bottom; ++y)
        for (std::size_t x = left; x < right; ++x)
            if (picture.at(x, y) == colour)
                return true;
    return false;
}

TEST(AThumbnail, HasTheGroundsRulesAndWordsOfTheFirstSheet) {
    Seen const picture =
        of_sheet(row("<table:table-cell/><table:table-cell table:style-name='Ground'/>") + "<table:table-header-rows>" +
                 row("<table:table-cell table:style-name='Heir' table:number-columns-spanned='2'>"
                     "<text:p><text:a>M</text:a></text:p></table:table-cell>") +
                 "</table:table-header-rows>");
    ASSERT_EQ(picture.width, 256U);
    ASSERT_EQ(picture.height, 147U);
    EXPECT_EQ(picture.at(70, 23), 0xffffffU);                 // in A1, which has no style
    EXPECT_EQ(picture.at(180, 23), 0x336699U);                // in B1
    EXPECT_EQ(picture.at(70, 45), 0x336699U);                 // in A2, as its style's parent has it
    EXPECT_EQ(picture.at(180, 45), 0x336699U);                // in B2, which A2 takes in
    EXPECT_EQ(picture.at(70, 61), 0x00ff00U);                 // the rule below
    EXPECT_EQ(picture.at(70, 90), 0xffffffU);                 // below the sheet
    EXPECT_TRUE(is_any(picture, 0xff0000, 232, 36, 246, 61)); // the letter, at the end
    EXPECT_FALSE(is_any(picture, 0xff0000, 0, 0, 230, 147));  // and nowhere else
}

TEST(AThumbnail, ShowsValuesToo) {
    auto const with = [](char const* value) {
        return of_sheet(row("<table:table-cell table:style-name='Heir' office:value='" + std::string(value) + "'/>"));
    };
    EXPECT_TRUE(is_any(with("5"), 0xff0000, 0, 0, 256, 147));
    EXPECT_FALSE(is_any(with(""), 0xff0000, 0, 0, 256, 147));
}

TEST(AThumbnail, IsWhiteWhereThereIsNoSheet) {
    pugi::xml_document document;
    document.load_string("<office:document/>");
    EXPECT_EQ(seen(thumbnail(document.document_element())).bytes, std::string(256UL * 147 * 3, '\xff'));
}

/// The share of dots that are not the same.
double difference(Seen const& one, Seen const& other) {
    int count = 0;
    for (std::size_t y = 0; y < one.height; ++y)
        for (std::size_t x = 0; x < one.width; ++x)
            count += one.at(x, y) != other.at(x, y) ? 1 : 0;
    return count / double(one.width * one.height);
}

TEST(Templates, AreToldApartByTheirThumbnails) {
    int folders = 0;
    for (auto const& folder : std::filesystem::directory_iterator(PACKAGED_TEMPLATES)) {
        if (!folder.is_directory())
            continue;
        ++folders;
        std::map<std::string, Seen> pictures;
        for (auto const& file : std::filesystem::directory_iterator(folder)) {
            archive::Zip const zip(file.path());
            EXPECT_NE(zip.text("META-INF/manifest.xml", 100'000)
                          .find(R"(manifest:full-path="Thumbnails/thumbnail.png" manifest:media-type="image/png")"),
                      std::string::npos)
                << file;
            Seen const picture = seen(zip.text("Thumbnails/thumbnail.png", 100'000));
            EXPECT_EQ(picture.width, 256U) << file; // OpenDocument 1.3, part 2, asks for no size
            EXPECT_EQ(picture.height, 147U) << file;
            for (auto const& [name, other] : pictures)
                EXPECT_GT(difference(picture, other), 0.3) << file << " and " << name;
            pictures[file.path().filename().string()] = picture;
        }
        EXPECT_EQ(pictures.size(), 6U) << folder;
    }
    EXPECT_EQ(folders, 4);
}

} // namespace
} // namespace hearthcell::workbook
