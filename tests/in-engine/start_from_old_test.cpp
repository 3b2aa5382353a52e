// 'Start from an old sheet', given as a command.

#include "old_sheets.hpp"

#include "extension/office/text.hpp"
#include "tests/support/content.hpp"

#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/util/XModifiable.hpp>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

class StartFromOldSheet : public OldSheets {};

bool is_modified(Reference<css::frame::XModel> const& document) {
    return Reference<css::util::XModifiable>(document, UNO_QUERY_THROW)->isModified();
}

} // namespace

TEST_F(StartFromOldSheet, OpensACopyWithoutANameThatRemembersItsOriginal) {
    auto const copy = start_from(office_with_package(), original);
    EXPECT_EQ(said.words.find("This is a copy. It remembers its original, “" + original.string() + "”"), 0U)
        << said.words;
    EXPECT_NE(said.words.find("choose “Do the same in a folder…”"), std::string::npos) << said.words;
    EXPECT_TRUE(copy->getURL().isEmpty());
    EXPECT_EQ(first_sheet(copy).formula("B4"), "=100-B3/300");
    EXPECT_EQ(remembered_original(copy), original.string());
    EXPECT_FALSE(is_modified(copy)) << "nothing was typed yet";
    auto const facts =
        Reference<css::document::XDocumentPropertiesSupplier>(copy, UNO_QUERY_THROW)->getDocumentProperties();
    EXPECT_TRUE(facts->getTemplateURL().isEmpty()) << "the office would ask whether to follow the original's styles";
    close(copy);
}

TEST_F(StartFromOldSheet, RemembersItInEveryFormatAndLeavesTheOriginalAsItIs) {
    for (std::string const from : {".ods", ".fods", ".xlsx", ".xls"}) {
        std::filesystem::path const old_sheet = folder / ("an old sheet" + from);
        make_old_sheet(office_with_package(), old_sheet, 700);
        std::string const before = content(old_sheet);
        for (std::string const to : {".ods", ".xlsx", ".xls"}) {
            std::filesystem::path const saved = folder / ("saved" + to);
            auto const copy = start_from(office_with_package(), old_sheet);
            first_sheet(copy).formula("D4", "=STOVE.BOILINGPOINT(B3)");
            save_as(copy, saved);
            close(copy);
            EXPECT_EQ(content(old_sheet), before);
            Document const opened = Document::open(office_with_package(), saved);
            EXPECT_EQ(remembered_original(opened.model()), old_sheet.string()) << from << " " << to;
            EXPECT_GT(number(opened.sheet(0).value("D4")), 97) << from << " " << to;
        }
    }
}

TEST_F(StartFromOldSheet, RemembersTheLatestOneWhereACopyIsStartedFromACopy) {
    auto const first = start_from(office_with_package(), original);
    save_as(first, folder / "one of ours.ods");
    close(first);
    auto const second = start_from(office_with_package(), folder / "one of ours.ods");
    EXPECT_EQ(remembered_original(second), (folder / "one of ours.ods").string());
    close(second);
}

TEST_F(StartFromOldSheet, SaysThatAFileCannotBeOpened) {
    std::filesystem::create_directory(folder / "no sheet.ods");
    for (char const* const name : {"nothing.ods", "no sheet.ods"}) {
        Said const refused = command(office_with_package(), Document::blank(office_with_package()),
                                     "start-from-old-sheet", {}, folder / name);
        EXPECT_EQ(refused.state, Said::State::failed) << name;
        EXPECT_EQ(refused.words.find("LibreOffice could not open “" + (folder / name).string() + "”."), 0U)
            << refused.words;
    }
}

} // namespace hearthcell::tests
