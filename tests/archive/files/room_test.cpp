// A small file can stand for more than there is memory for: the readers stop at their room, whatever the format.

#include "extension/archive/files/format.hpp"
#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/whole_file.hpp"
#include "tests/archive/made/zip_writer.hpp"

#include <gtest/gtest.h>
#include <sys/resource.h>

#include <cstdlib>
#include <fstream>
#include <iostream>
#include <new>

namespace hearthcell::tests::archive {
namespace {

using namespace hearthcell::archive;
using Path = std::filesystem::path;

constexpr std::uint64_t size_limit = std::uint64_t{64} << 20;

std::string const flat_head =
    R"(<?xml version="1.0"?><office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0")"
    R"( xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0")"
    R"( xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0")"
    R"( office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>)"
    R"(<table:table table:name="Data">)";
std::string const flat_tail = "</table:table></office:spreadsheet></office:body></office:document>";
std::string const cell_start = R"(<table:table-cell table:formula="of:=1" office:value-type="string")";

std::string times(std::size_t count, std::string const& text) {
    std::string all;
    all.reserve(count * text.size());
    for (std::size_t one = 0; one < count; ++one)
        all += text;
    return all;
}

Path fresh(std::string const& name) {
    Path const folder = Path(READERS) / name;
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    return folder / name;
}

Path written(std::string const& name, std::string const& content) {
    Path const file = fresh(name);
    std::ofstream(file, std::ios::binary) << content;
    return file;
}

Path ods(std::string const& name, std::string const& content) {
    Path const file = fresh(name);
    ZipWriter zip(file);
    zip.add("mimetype", "application/vnd.oasis.opendocument.spreadsheet", Packing::stored);
    zip.add("content.xml", content);
    zip.close();
    return file;
}

Path xlsx(std::string const& name, std::string const& sheet) {
    std::string const relations =
        R"(<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">)";
    std::string const kind = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";
    Path const file = fresh(name);
    ZipWriter zip(file);
    zip.add("_rels/.rels", relations + "<Relationship Id=\"a\" Type=\"" + kind +
                               "officeDocument\" Target=\"b.xml\"/></Relationships>");
    zip.add("b.xml", R"(<workbook xmlns:r=")" + kind.substr(0, kind.size() - 1) +
                         R"("><sheets><sheet name="Data" r:id="c"/></sheets></workbook>)");
    zip.add("_rels/b.xml.rels",
            relations + "<Relationship Id=\"c\" Type=\"" + kind + "worksheet\" Target=\"d.xml\"/></Relationships>");
    zip.add("d.xml", "<worksheet><sheetData>" + sheet + "</sheetData></worksheet>");
    zip.close();
    return file;
}

constexpr bool sanitized =
#if defined(__SANITIZE_ADDRESS__)
    true;
#elif defined(__has_feature)
#if __has_feature(address_sanitizer)
    true;
#else
    false;
#endif
#else
    false;
#endif

/// From now on this process can have only so much more than it has.
void allow_more(rlim_t bytes) {
    if (sanitized) // it reserves terabytes for itself
        return;
    rlim_t pages = 0;
    std::ifstream("/proc/self/statm") >> pages;
    rlimit const limit{pages * 4096 + bytes, pages * 4096 + bytes};
    ::setrlimit(RLIMIT_AS, &limit);
}

/// "too large", and that before there is no memory left.
void expect_too_large(Path const& file) {
    EXPECT_EXIT(
        {
            allow_more(Room::for_workbooks_up_to(size_limit) + (std::uint64_t{32} << 20));
            try {
                inspect(file, format_of(file).value(), size_limit);
                std::cerr << "it was read";
            } catch (Trouble const& trouble) {
                std::cerr << words(trouble.reason) << ": " << trouble.what();
            } catch (std::bad_alloc const&) {
                std::cerr << "no memory left";
            }
            std::exit(0);
        },
        testing::ExitedWithCode(0), "^too large: ");
}

} // namespace

TEST(TheRoom, BoundsATextThatIsRepeatedOverARow) {
    std::string const cell = R"( table:number-columns-repeated="16000"><text:p>)" + std::string(5 << 20, 'x') +
                             "</text:p></table:table-cell>";
    std::string const sheet = flat_head + "<table:table-row>" + cell_start + cell + "</table:table-row>" + flat_tail;
    expect_too_large(ods("repeated text.ods", sheet));
    expect_too_large(written("repeated text.fods", sheet));
}

TEST(TheRoom, BoundsANumberThatIsRepeatedOverASheet) {
    std::string const row = R"(<table:table-row table:number-rows-repeated="1000000"><table:table-cell)"
                            R"( table:formula="of:=1" office:value-type="float" office:value="1")"
                            R"( table:number-columns-repeated="16000"/></table:table-row>)";
    expect_too_large(written("repeated number.fods", flat_head + row + flat_tail));
}

TEST(TheRoom, BoundsBlanksThatAreOnlyCounted) {
    std::string const blanks = times(60'000, R"(<text:s text:c="16384"/>)");
    expect_too_large(ods("blanks.ods", flat_head + "<table:table-row>" + cell_start + "><text:p>" + blanks +
                                           "</text:p></table:table-cell></table:table-row>" + flat_tail));
}

TEST(TheRoom, BoundsElementsThatAreNeverClosedAndNamesThatAreAllDifferent) {
    expect_too_large(ods("deep.ods", times(2'000'000, "<a>")));
    std::string names = "<a>";
    for (int name = 0; name < 2'000'000; ++name)
        names += "<n" + std::to_string(name) + "/>";
    expect_too_large(ods("names.ods", names + "</a>"));
}

TEST(TheRoom, BoundsOneLongAttribute) {
    expect_too_large(ods("attribute.ods", "<a b=\"" + std::string(60 << 20, 'x') + "\"/>"));
}

TEST(TheRoom, BoundsTextsOfXlsx) {
    std::string const cell = "<c t=\"str\"><f>A1</f><v>" + std::string(30'000, 'x') + "</v></c>";
    expect_too_large(xlsx("texts.xlsx", "<row>" + times(2'000, cell) + times(2'000, cell) + "</row>"));
}

TEST(TheRoom, HoldsWhatAnOrdinaryWorkbookNeeds) {
    std::string const cell = cell_start + R"( office:string-value="as saved"/>)";
    std::string const row =
        R"(<table:table-row table:number-rows-repeated="1000">)" + times(100, cell) + "</table:table-row>";
    auto const results = inspect(written("ordinary.fods", flat_head + row + flat_tail), Format::fods, size_limit);
    ASSERT_TRUE(results.has_value());
    EXPECT_EQ(results->size(), 100'000U);
}

TEST(AFileLargerThanTheLimit, IsNotRead) {
    Path const file = written("sparse.ods", "PK");
    std::filesystem::resize_file(file, std::uint64_t{10} << 30);
    Path const copy = file.parent_path() / "copy";
    try {
        copy_and_hash(file, copy, size_limit);
        ADD_FAILURE() << "it was copied";
    } catch (Trouble const& trouble) {
        EXPECT_EQ(words(trouble.reason), "too large");
        EXPECT_STREQ(trouble.what(), "it has 10240 MiB, more than the limit of 64 MiB");
    }
    EXPECT_FALSE(std::filesystem::exists(copy));
}

} // namespace hearthcell::tests::archive
