// What counts as a link, how it is hidden, and that it comes back.

#include "extension/archive/files/problem.hpp"
#include "extension/archive/links/may_link.hpp"
#include "extension/archive/links/put_links_back.hpp"
#include "extension/archive/links/xml_links.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests::archive {
namespace {

using namespace hearthcell::archive;

std::string rewritten(std::string const& xml, Changes& changes, std::uint64_t bytes = std::uint64_t{1} << 30) {
    std::string text;
    Room room(bytes);
    RewrittenXml rewriting(
        changes, [&](std::string_view piece) { text += piece; }, room);
    // By letters, since files come in pieces that end anywhere.
    for (char const letter : xml)
        rewriting.feed({&letter, 1});
    rewriting.finish();
    return text.substr(text.find('\n') + 1);
}

struct Hidden {
    explicit Hidden(std::string const& xml, int depth = 0) {
        HideLinks changes(outside, "content.xml", depth);
        text = rewritten(xml, changes);
    }
    [[nodiscard]] std::string back() const {
        PutLinksBack changes(outside);
        return rewritten(text, changes);
    }
    Outside outside{"/tmp/a folder/9"};
    std::string text;
};

bool may_link(std::string const& xml) {
    MayLink search;
    for (char const letter : xml)
        search.feed({&letter, 1});
    return search.found();
}

} // namespace

TEST(AnAddress, LeadsOutsideUnlessItStaysInThePackage) {
    for (char const* inside : {"", "#Data.A1", "Pictures/a.png", "./Object 1", "a/../b", "data:image/png;base64,AA==",
                               "vnd.sun.star.script:A.B.C?language=Basic&location=document"})
        EXPECT_FALSE(leads_outside(inside, 0)) << inside;
    for (char const* outside :
         {"http://site/a.png", "HTTP://site/", "file:///a", "//site/a", "/etc/passwd", "\\\\site\\a", "../a.png",
          "a/../../b", "%2e%2e/a", "%2E%2E/a", ".%2e/a", "vnd.sun.star.webdav://site/a", "c:/a", "Pictures\\..\\..\\a"})
        EXPECT_TRUE(leads_outside(outside, 0)) << outside;
    EXPECT_FALSE(leads_outside("..", 1)) << "a chart in a folder of its own means the document so";
    EXPECT_TRUE(leads_outside("../..", 1));
    EXPECT_TRUE(leads_outside("a.png", -1)) << "a flat file has no package";
}

TEST(ALink, IsHiddenAndComesBackAsItWas) {
    for (char const* xml : {
             "<draw:image xlink:href=\"http://site/a.png?b=1&amp;c=2\"/>",
             "<draw:image q:href=\"../a%20b.png\" draw:name=\"n &lt; &#10;m\"/>",
             "<form:form form:datasource=\"file:///a.odb\"/>",
             "<Relationship Id=\"a\" Type=\"http://x/image\" Target=\"a.png\" TargetMode=\"External\"/>",
             "<Relationship Id=\"a\" Type=\"http://x/image\" Target=\"file:///a.png\"/>",
             "<webPr url=\"site\"/>",
             "<table:table-cell table:formula=\"of:=['file:///it''s.ods'#$Data.A1]+SUM(['../b.ods'#$D.A1:.A2])\"/>",
         }) {
        Hidden const hidden(xml);
        EXPECT_FALSE(hidden.outside.hidden().empty()) << xml;
        for (OutsideLink const& link : hidden.outside.hidden())
            EXPECT_EQ(hidden.text.find(link.address), std::string::npos) << hidden.text;
        EXPECT_NE(hidden.text.find("file:///tmp/a%20folder/9/outside-"), std::string::npos) << hidden.text;
        EXPECT_EQ(hidden.back(), xml);
        EXPECT_TRUE(may_link(xml)) << xml;
    }
}

TEST(ADrawingInLetters, IsSearchedForLinksPackedOrNot) {
    // base64 of <svg><image href="file:///a.png"/></svg>, and of the same packed by gzip
    for (char const* letters : {"PHN2Zz48aW1hZ2UgaHJlZj0iZmlsZTovLy9hLnBuZyIvPjwvc3ZnPg==",
                                "H4sIAAAAAAACA7MpLku3s8nMTUxPVcgoSk2zVUrLzEm10tfXT9QryEtX0rez0QcpAQCbzQPlKAAAAA=="}) {
        std::string const xml = "<office:binary-data>" + std::string(letters) + "</office:binary-data>";
        Hidden const hidden(xml, -1);
        ASSERT_EQ(hidden.outside.hidden().size(), 1U) << letters;
        EXPECT_EQ(hidden.outside.hidden()[0].address, "file:///a.png");
        EXPECT_NE(hidden.text, xml);
        Hidden const again(hidden.back(), -1);
        ASSERT_EQ(again.outside.hidden().size(), 1U);
        EXPECT_EQ(again.outside.hidden()[0].address, "file:///a.png") << "it came back";
        EXPECT_TRUE(may_link(xml));
        Hidden const nested("<image href=\"data:image/svg+xml;base64," + std::string(letters) + "\"/>");
        EXPECT_EQ(nested.outside.hidden().size(), 1U);
    }
    for (char const* harmless : {"PHN2Zy8+", "iVBORw0KGgo=", "PG5vIFhNTA==", "", "H4sIAAAA"}) {
        std::string const xml = "<a>" + std::string("<office:binary-data>") + harmless + "</office:binary-data></a>";
        Hidden const hidden(xml, -1);
        EXPECT_EQ(hidden.back(), hidden.text);
        EXPECT_TRUE(hidden.outside.hidden().empty()) << harmless;
    }
}

TEST(ADrawingInLetters, ThatUnpacksToMoreThanThereIsRoomForIsRefused) {
    // base64 of <svg> and 40,000 blanks, packed by gzip
    Outside outside("/tmp/a folder/9");
    HideLinks changes(outside, "content.xml", -1);
    std::string const bomb =
        "<office:binary-data>H4sIAAAAAAACA+3BQREAAAQAsCqCOHUEcCe/"
        "nxTbcrYrAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAACAd9ymHnlFnAAA</office:binary-data>";
    EXPECT_THROW(rewritten(bomb, changes, 20000), Trouble);
}

TEST(ALink, ComesBackFromWhereverTheOfficeWritesItsName) {
    Hidden const hidden("<draw:image xlink:href=\"http://site/a.png\"/>");
    std::string const url = hidden.text.substr(24, hidden.text.rfind('"') - 24);
    std::string const name = url.substr(url.rfind('/') + 1);
    for (std::string const& written : {url, name, "../" + name, "../../" + name, "./" + name})
        EXPECT_EQ(hidden.outside.put_back(written), "http://site/a.png") << written;
    EXPECT_EQ(hidden.outside.put_back("['file:///tmp/a%20folder/9/workbook.fods/" + url + "'#$D.A1]"),
              "['http://site/a.png'#$D.A1]");
}

TEST(AHyperlink, Stays) {
    for (char const* xml :
         {"<text:a xlink:href=\"http://site/\">more</text:a>", "<draw:a xlink:href=\"http://site/\"/>",
          "<Relationship Id=\"a\" Type=\"http://x/hyperlink\" Target=\"http://site/\" "
          "TargetMode=\"External\"/>"}) {
        Hidden const hidden(xml);
        EXPECT_EQ(hidden.text, xml);
        EXPECT_TRUE(hidden.outside.hidden().empty());
    }
}

TEST(WhatLeadsNowhere, IsWrittenAsItWas) {
    for (char const* xml : {
             "<a>text &lt;with&gt; &amp; signs<b c=\"d\"/> and more</a>",
             "<draw:image xlink:href=\"Pictures/a.png\"/>",
             "<Relationship Id=\"a\" Type=\"http://x/worksheet\" Target=\"/xl/sheet1.xml\"/>",
             "<table:table-cell table:formula=\"of:=[$'it''s'.A1]\"/>",
         }) {
        Hidden const hidden(xml);
        EXPECT_EQ(hidden.text, xml);
        EXPECT_TRUE(hidden.outside.hidden().empty()) << xml;
    }
}

TEST(AChart, InAFlatFileMeansItsOwnDocument) {
    EXPECT_TRUE(Hidden("<chart:chart xlink:href=\"..\"/>", -1).outside.hidden().empty());
    EXPECT_FALSE(Hidden("<draw:image xlink:href=\"..\"/>", -1).outside.hidden().empty());
}

TEST(WhatIsKeptOfAnotherWorkbook, IsNamedAsInTheFormulaAndGetsItsOwnAddressBack) {
    std::string const xml = "<a><table:table-cell table:formula=\"of:=['file:///a.ods'#$Data.A1]\"/><table:table "
                            "table:name=\"'file:///a.ods'#Data\"><table:table-source xlink:href=\"../a.ods\"/>"
                            "</table:table></a>";
    Hidden const hidden(xml);
    EXPECT_EQ(hidden.outside.hidden().size(), 1U);
    EXPECT_EQ(hidden.back(), xml);
}

TEST(ATextOfAnEntity, IsNotReadFromAFile) {
    Hidden const hidden("<!DOCTYPE a [<!ENTITY far SYSTEM \"file:///etc/passwd\">]><a>before &far; after</a>");
    EXPECT_EQ(hidden.text, "<a>before  after</a>");
    ASSERT_EQ(hidden.outside.taken_out().size(), 1U);
    EXPECT_EQ(hidden.outside.taken_out()[0].address, "file:///etc/passwd");
}

TEST(ALookForLinks, SeesThemInLettersOfTwoBytes) {
    std::string const two_bytes("\xFF\xFE<\0a\0/\0>\0", 10);
    EXPECT_TRUE(may_link(two_bytes));
    EXPECT_TRUE(may_link("<?xml version=\"1.0\" encoding=\"UTF-7\"?><a/>"));
    EXPECT_FALSE(may_link("<?xml version=\"1.0\" encoding=\"UTF-8\"?><a b=\"c\">d</a>"));
}

TEST(ALink, ThatIsOneOfTooManyIsTooLarge) {
    Outside outside("/tmp");
    auto const hide_many = [&] {
        for (int number = 0; number < 200'000; ++number)
            outside.hide({"picture", "", std::to_string(number)});
    };
    EXPECT_THROW(hide_many(), Trouble);
}

TEST(AFormula, ThatNamesManyFilesTakesNoTime) {
    std::string formula;
    for (int number = 0; number < 300'000; ++number)
        formula += "'a'#b+x'#";
    Hidden const hidden("<c f=\"" + formula + "\"/>");
    EXPECT_FALSE(hidden.outside.hidden().empty());
    EXPECT_EQ(hidden.back(), "<c f=\"" + formula + "\"/>");
}

TEST(AText, ThatDoesNotFitIntoItsRoomIsTooLarge) {
    Outside outside("/tmp");
    HideLinks changes(outside, "content.xml", 0);
    std::string const xml = "<c f=\"" + std::string(1 << 20, 'x') + "\"/>";
    EXPECT_EQ(rewritten(xml, changes, 8 << 20).size(), xml.size());
    try {
        rewritten(xml, changes, 1 << 20);
        ADD_FAILURE() << "it was read";
    } catch (Trouble const& trouble) {
        EXPECT_EQ(trouble.reason, Reason::too_large) << trouble.what();
    }
}

TEST(AProblem, NamesAFewLinksAndCountsTheOthers) {
    Outside outside("/tmp");
    EXPECT_EQ(outside.in_words(), "");
    outside.hide({"picture", "Data", "http://site/0.png"});
    EXPECT_EQ(outside.in_words(), "1 link: picture http://site/0.png (Data)");
    for (int number = 1; number < 8; ++number)
        outside.hide({"picture", "", "http://site/" + std::to_string(number) + ".png"});
    EXPECT_TRUE(outside.in_words().starts_with("8 links: ")) << outside.in_words();
    EXPECT_TRUE(outside.in_words().ends_with("4.png and 3 more")) << outside.in_words();
}

} // namespace hearthcell::tests::archive
