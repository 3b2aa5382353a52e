// The menu's copy for sharing as a command: what it does to the open document and to files, and what it refuses.

#include "copy_for_sharing.hpp"
#include "old_sheets.hpp"

#include "extension/office/file_url.hpp"
#include "extension/office/process.hpp"
#include "extension/office/text.hpp"
#include "tests/support/all_below.hpp"
#include "tests/support/content.hpp"
#include "tests/support/small_disk.hpp"

#include <com/sun/star/beans/PropertyAttribute.hpp>
#include <com/sun/star/beans/XPropertyContainer.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>
#include <chrono>
#include <fstream>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

bool is_modified(Document const& document) {
    return Reference<css::util::XModifiable>(document.model(), UNO_QUERY_THROW)->isModified();
}

void set_modified(Document const& document, bool modified) {
    Reference<css::util::XModifiable>(document.model(), UNO_QUERY_THROW)->setModified(modified);
}

/// Of the document's first sheet.
Reference<css::util::XProtectable> protection(Document const& document) {
    Reference<css::container::XIndexAccess> const sheets(document.model()->getSheets(), UNO_QUERY_THROW);
    return {sheets->getByIndex(0), UNO_QUERY_THROW};
}

} // namespace

TEST_F(CopyForSharing, LeavesTheOpenDocumentAsItIs) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240)");
    std::filesystem::path const file = scratch_folder() / "original.ods";
    document.save(file);
    Document const saved = Document::open(office_with_package(), file, office::Access::read_write);
    std::string const bytes = content(file);
    for (bool const modified : {false, true}) {
        set_modified(saved, modified);
        share(saved);
        EXPECT_EQ(is_modified(saved), modified);
        EXPECT_EQ(saved.sheet(0).formula("A1"), "=HEARTHCELL.STOVE.BOILINGPOINT(1240)");
        EXPECT_TRUE(comments(saved, 0).empty());
    }
    EXPECT_TRUE(content(file) == bytes);
    EXPECT_EQ(office::narrow(Reference<css::frame::XModel>(saved.model(), UNO_QUERY_THROW)->getURL()),
              office::narrow(office::file_url(file)));
}

TEST_F(CopyForSharing, IsMadeOfReadOnlyAndProtectedDocuments) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240)");
    protection(document)->protect({});
    std::filesystem::path const file = scratch_folder() / "read only.ods";
    document.save(file);
    share(Document::open(office_with_package(), file, office::Access::read_only));
    Document const shared = received();
    expect_same(shared.sheet(0).values("A1"), sheet.values("A1"));
    EXPECT_TRUE(protection(shared)->isProtected());
    EXPECT_TRUE(protection(document)->isProtected());
}

TEST_F(CopyForSharing, DoesNotSayWhichOldSheetTheDocumentWasStartedFrom) {
    auto const facts = [](Document const& of) {
        return Reference<css::document::XDocumentPropertiesSupplier>(of.model(), UNO_QUERY_THROW)
            ->getDocumentProperties()
            ->getUserDefinedProperties();
    };
    for (char const* const name : {"Hearthcell original", "Hearthcell original, SHA-1", "Bench"})
        facts(document)->addProperty(rtl::OUString::createFromAscii(name), css::beans::PropertyAttribute::REMOVABLE,
                                     css::uno::Any(rtl::OUString("/home/somebody/old/first.ods")));
    share(document);
    Document const shared = received();
    auto const kept = Reference<css::beans::XPropertySet>(facts(shared), UNO_QUERY_THROW)->getPropertySetInfo();
    EXPECT_TRUE(kept->hasPropertyByName("Bench")) << "the user's own";
    EXPECT_FALSE(kept->hasPropertyByName("Hearthcell original"));
    EXPECT_FALSE(kept->hasPropertyByName("Hearthcell original, SHA-1"));
    EXPECT_FALSE(remembered_original(document.model()).empty()) << "the document itself stays as it is";
}

TEST_F(CopyForSharing, HasNoPasswordAndSaysSo) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240)");
    office::asking("giving the document a password", [&] {
        css::beans::PropertyValue const options[] = {
            {"FilterName", 0, css::uno::Any(rtl::OUString("calc8")), css::beans::PropertyState_DIRECT_VALUE},
            {"Password", 0, css::uno::Any(rtl::OUString("secret")), css::beans::PropertyState_DIRECT_VALUE}};
        Reference<css::frame::XStorable>(document.model(), UNO_QUERY_THROW)
            ->storeAsURL(office::file_url(scratch_folder() / "secret.ods"), {options, 2});
    });
    Said const said = command(office_with_package(), document, "copy-for-sharing", copy);
    EXPECT_NE(said.words.find("The copy has no password"), std::string::npos) << said.words;
    expect_same(received().sheet(0).values("A1"), sheet.values("A1"));
}

TEST_F(CopyForSharing, SaysInWordsThatASheetIsLockedByAPassword) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240)");
    protection(document)->protect("secret");
    Said const said = command(office_with_package(), document, "copy-for-sharing", copy);
    EXPECT_EQ(said.state, Said::State::failed);
    EXPECT_EQ(said.words.find("The sheet “" + sheet.name() + "” is protected by a password"), 0) << said.words;
    EXPECT_FALSE(std::filesystem::exists(copy));
}

TEST_F(CopyForSharing, NeverTakesThePlaceOfAnOpenDocument) {
    std::filesystem::path const file = scratch_folder() / "open.ods";
    document.save(file);
    std::string const bytes = content(file);
    std::filesystem::path const other_name = scratch_folder() / "other name.ods";
    std::filesystem::remove(other_name);
    std::filesystem::create_symlink(file, other_name);
    Document const open = Document::open(office_with_package(), file);
    for (auto const& target : {file, other_name}) {
        Said const said = command(office_with_package(), document, "copy-for-sharing", target);
        EXPECT_EQ(said.state, Said::State::failed);
        EXPECT_EQ(said.words.find("“" + target.string() + "” is open"), 0) << said.words;
    }
    EXPECT_TRUE(content(file) == bytes);
}

TEST_F(CopyForSharing, SaysInWordsThatItCannotBeWritten) {
    std::filesystem::path const file = scratch_folder() / "a file, no folder";
    std::ofstream(file) << "something";
    std::filesystem::path const nowhere = file / "copy.ods";
    Said const said = command(office_with_package(), document, "copy-for-sharing", nowhere);
    EXPECT_EQ(said.state, Said::State::failed);
    EXPECT_EQ(said.words.find("The copy could not be saved as “" + nowhere.string() + "”."), 0) << said.words;
    EXPECT_EQ(content(file), "something");
    EXPECT_EQ(command(office_with_package(), document, "copy-for-sharing").state, Said::State::given_up);
}

TEST_F(CopyForSharing, SaysInWordsThatTheDiskIsFullAndLeavesNoHalfCopy) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240)");
    SmallDisk const disk(scratch_folder() / "full", "size=4k");
    if (!disk.mounted())
        GTEST_SKIP() << "no small disk can be mounted here: " << disk.why_not();
    std::filesystem::path const target = scratch_folder() / "full" / "copy.ods";
    Said const said = command(office_with_package(), document, "copy-for-sharing", target);
    EXPECT_EQ(said.state, Said::State::failed);
    EXPECT_EQ(said.words.find("The copy could not be saved as “" + target.string() + "”."), 0) << said.words;
    EXPECT_FALSE(std::filesystem::exists(target)) << std::filesystem::file_size(target);
    EXPECT_TRUE(office_with_package().alive());
}

TEST_F(CopyForSharing, KeepsAFileThatItCannotReplace) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240)");
    SmallDisk const disk(scratch_folder() / "read only disk", "size=100k");
    std::filesystem::path const target = scratch_folder() / "read only disk" / "copy.ods";
    std::ofstream(target) << "an older copy";
    if (!disk.mounted() || !disk.make_read_only())
        GTEST_SKIP() << "no small disk can be mounted here: " << disk.why_not();
    Said const said = command(office_with_package(), document, "copy-for-sharing", target);
    EXPECT_EQ(said.state, Said::State::failed);
    EXPECT_EQ(said.words.find("The copy could not be saved as “" + target.string() + "”."), 0) << said.words;
    EXPECT_EQ(content(target), "an older copy");
}

TEST_F(CopyForSharing, IsAnXlsxWhereItsNameSaysSo) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240)");
    sheet.formula("A2", "=STOVE.BOILINGPOINT(99999)");
    std::filesystem::path const target = scratch_folder() / "for another program.xlsx";
    Said const said = command(office_with_package(), document, "copy-for-sharing", target);
    EXPECT_EQ(said.state, Said::State::done) << said.words;
    std::string const xml = entry_of(target, "xl/worksheets/sheet1.xml");
    EXPECT_NE(xml.find("95.8502545"), std::string::npos) << xml;
    EXPECT_EQ(xml.find("STOVE"), std::string::npos) << xml;
    Document const received = Document::open(office_without_package(), target);
    expect_same(received.sheet(0).values("A1:A2"), sheet.values("A1:A2"));
}

TEST_F(CopyForSharing, LeavesNoFileBetweenBehind) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240)");
    auto const count = [] {
        return std::ranges::count_if(all_below(scratch_folder()), [](std::filesystem::path const& file) {
            return file.string().find("/profile/") == std::string::npos && std::filesystem::is_regular_file(file);
        });
    };
    share(document);
    auto const before = count();
    share(document);
    EXPECT_EQ(count(), before);
}

} // namespace hearthcell::tests
