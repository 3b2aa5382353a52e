// The menu: its place in Calc, and the commands that open packaged workbooks.

#include "commands.hpp"

#include "extension/menu/commands.hpp"
#include "extension/office/process.hpp"
#include "extension/office/text.hpp"
#include "manifest/generator/guide/words.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/configuration/theDefaultProvider.hpp>
#include <com/sun/star/container/XHierarchicalNameAccess.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XNotifyingDispatch.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/lang/XInitialization.hpp>

#include <algorithm>
#include <chrono>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

std::string without_marks(std::string_view label) {
    std::string text(label);
    std::erase(text, '~');
    return text;
}

/// What the office makes of the package's menu, in the language of its own menus.
class ConfiguredMenu {
public:
    explicit ConfiguredMenu(Office& office) {
        css::uno::Sequence<Any> arguments(1);
        arguments.getArray()[0] <<= css::beans::PropertyValue(
            "nodepath", 0, Any(rtl::OUString("/org.openoffice.Office.Addons/AddonUI/OfficeMenuBar/hearthcell")),
            css::beans::PropertyState_DIRECT_VALUE);
        node.set(css::configuration::theDefaultProvider::get(office.context())
                     ->createInstanceWithArguments("com.sun.star.configuration.ConfigurationAccess", arguments),
                 UNO_QUERY_THROW);
    }

    [[nodiscard]] std::string value(std::string const& path) const {
        rtl::OUString text;
        node->getByHierarchicalName(office::wide(path)) >>= text;
        return office::narrow(text);
    }

    /// Of each line in the order in which they stand: a label, or "-" for a line between groups.
    [[nodiscard]] std::vector<std::string> lines() const {
        std::vector<std::string> found;
        Reference<css::container::XNameAccess> const all(node->getByHierarchicalName("Submenu"), UNO_QUERY_THROW);
        for (rtl::OUString const& name : all->getElementNames()) {
            std::string const line = "Submenu/" + office::narrow(name) + "/";
            found.push_back(value(line + "URL") == "private:separator" ? "-" : without_marks(value(line + "Title")));
        }
        return found;
    }

private:
    Reference<css::container::XHierarchicalNameAccess> node;
};

void make_template(Office& office, std::filesystem::path const& file, std::string const& says) {
    std::filesystem::create_directories(file.parent_path());
    Document document = Document::blank(office);
    document.sheet(0).text("A1", says);
    document.save(file);
}

std::string first_cell(Reference<css::frame::XModel> const& document) {
    return office::asking("reading the first cell", [&] {
        Reference<css::sheet::XSpreadsheetDocument> const model(document, UNO_QUERY_THROW);
        Reference<css::container::XIndexAccess> const sheets(model->getSheets(), UNO_QUERY_THROW);
        Reference<css::sheet::XSpreadsheet> const first(sheets->getByIndex(0), UNO_QUERY_THROW);
        return Sheet(first).shown("A1");
    });
}

/// Gives a command that opens one new document, and reads that one's first cell.
std::string first_cell_of_new(Office& office, Document const& from, std::string const& name) {
    auto const before = untitled_documents(office);
    Said const said = command(office, from, name);
    EXPECT_EQ(said.state, Said::State::done) << said.words;
    EXPECT_EQ(said.words, "");
    std::string text = "nothing was opened";
    for (auto const& document : untitled_documents(office))
        if (std::find(before.begin(), before.end(), document) == before.end()) {
            text = first_cell(document);
            close(document);
        }
    return text;
}

std::string guide_title(Language language) {
    return std::string(generator::guide::word(generator::guide::Word::title, language));
}

} // namespace

TEST(TheMenu, StandsInCalcsMenuBarInItsOrder) {
    ConfiguredMenu const menu(office_with_package());
    EXPECT_EQ(menu.value("Context"), "com.sun.star.sheet.SpreadsheetDocument");
    EXPECT_EQ(without_marks(menu.value("Title")), "Hearthcell");
    std::vector<std::string> const expected{"New bench record",
                                            "New comparison",
                                            "New logger import",
                                            "New campaign overview",
                                            "-",
                                            "Function guide",
                                            "-",
                                            "Check this workbook",
                                            "Check the selected cells",
                                            "Seen, leave it",
                                            "-",
                                            "Copy for sharing…",
                                            "-",
                                            "Start from an old sheet…",
                                            "Do the same in a folder…",
                                            "Recalculate a folder…",
                                            "-",
                                            "Edition and licence"};
    EXPECT_EQ(menu.lines(), expected);
}

TEST(TheMenu, OpensTheGuideAndTheTemplatesAsNewDocuments) {
    Office office({.package = package()});
    Document const from = Document::blank(office);
    std::filesystem::path const templates = package_of(office) / "template/Hearthcell";
    make_template(office, templates / "bench-record.ots", "a bench record");
    make_template(office, templates / "comparison.ots", "a comparison");
    make_template(office, templates / "logger-import.ots", "a log");
    make_template(office, templates / "campaign.ots", "a campaign");
    make_template(office, package_of(office) / "template/Hearthcell (fr)/comparison.ots", "une comparaison");
    EXPECT_EQ(first_cell_of_new(office, from, "new-bench-record"), "a bench record");
    EXPECT_EQ(first_cell_of_new(office, from, "new-comparison"), "a comparison");
    EXPECT_EQ(first_cell_of_new(office, from, "new-log-import"), "a log");
    EXPECT_EQ(first_cell_of_new(office, from, "new-campaign-overview"), "a campaign");
    EXPECT_EQ(first_cell_of_new(office, from, "function-guide"), guide_title(Language::english));
}

TEST(TheMenu, SpeaksTheOfficesLanguageAndOpensItsTemplates) {
    Office office({.package = package(), .menus = "fr"});
    EXPECT_EQ(ConfiguredMenu(office).lines().at(0), "Nouvelle fiche d’essais");
    Document const from = Document::blank(office);
    std::filesystem::path const templates = package_of(office) / "template/Hearthcell";
    std::filesystem::path const french = package_of(office) / "template/Hearthcell (fr)";
    std::filesystem::remove_all(french);
    make_template(office, templates / "bench-record.ots", "a bench record");
    make_template(office, templates / "comparison.ots", "a comparison");
    make_template(office, french / "comparison.ots", "une comparaison");
    EXPECT_EQ(first_cell_of_new(office, from, "new-bench-record"), "a bench record"); // there is none in French
    EXPECT_EQ(first_cell_of_new(office, from, "new-comparison"), "une comparaison");
    EXPECT_EQ(first_cell_of_new(office, from, "function-guide"), guide_title(Language::french));
    EXPECT_NE(command(office, from, "edition-and-licence").words.find("Texte de la licence"), std::string::npos);
}

TEST(TheMenu, SaysInWordsThatAFileIsMissingOrCannotBeOpened) {
    Office office({.package = package()});
    Document const from = Document::blank(office);
    std::filesystem::path const guide = package_of(office) / "guide/en.ods";
    std::filesystem::remove(guide);
    Said said = command(office, from, "function-guide");
    EXPECT_EQ(said.state, Said::State::failed);
    EXPECT_EQ(said.words, "The file “" + guide.string() +
                              "” is missing from the installed package. Please install Hearthcell again.");

    std::filesystem::create_directory(guide); // a folder is there, but no workbook
    said = command(office, from, "function-guide");
    EXPECT_EQ(said.state, Said::State::failed);
    EXPECT_EQ(said.words.find("LibreOffice could not open “" + guide.string() + "”."), 0) << said.words;
    EXPECT_TRUE(office.alive());
}

TEST(TheMenu, SaysInWordsThatThePackageIsNotFound) {
    std::filesystem::path const nameless = scratch_folder() / "nameless.oxt"; // without the file that says who it is
    std::filesystem::copy_file(package(), nameless, std::filesystem::copy_options::overwrite_existing);
    office::Process without("/usr/bin/zip", {"-q", "-d", nameless.string(), "description.xml"}, "/dev/null");
    ASSERT_EQ(without.wait(std::chrono::seconds(20)), 0);
    Office office({.package = nameless});
    Document const from = Document::blank(office);
    Said const said = command(office, from, "new-comparison");
    EXPECT_EQ(said.state, Said::State::failed);
    EXPECT_EQ(said.words.find("LibreOffice does not say where the Hearthcell package is installed."), 0) << said.words;
    EXPECT_NE(command(office, from, "edition-and-licence").words.find("https://www.mozilla.org/MPL/2.0/"),
              std::string::npos);
}

TEST(TheMenu, TellsTheEditionAndWhereTheLicenceIs) {
    Office& office = office_with_package();
    std::string const words = command(office, Document::blank(office), "edition-and-licence").words;
    std::filesystem::path const licence = package_of(office) / "LICENSE";
    EXPECT_EQ(words.find(std::get<std::string>(evaluate(office, {"=STOVE.VERSION()"}).at(0))), 0) << words;
    EXPECT_NE(words.find("MPL-2.0"), std::string::npos) << words;
    EXPECT_NE(words.find(licence.string()), std::string::npos) << words;
    EXPECT_TRUE(std::filesystem::is_regular_file(licence));
}

TEST(TheMenu, LeavesCommandsThatAreNotOursAlone) {
    Office& office = office_with_package();
    EXPECT_THROW(command(office, Document::blank(office), "no-such-command"), std::runtime_error);
}

TEST(TheMenu, SurvivesAFrameThatIsClosedOrWasNeverThere) {
    Office& office = office_with_package();
    office::asking("giving a command to a frame that is gone", [&] {
        Reference<css::frame::XNotifyingDispatch> const handler(
            office.context()->getServiceManager()->createInstanceWithContext("hearthcell.Menu", office.context()),
            UNO_QUERY_THROW);
        css::uno::Sequence<css::beans::PropertyValue> unattended(1);
        unattended.getArray()[0] = {"Unattended", 0, Any(true), css::beans::PropertyState_DIRECT_VALUE};
        css::util::URL url;
        url.Complete = "vnd.hearthcell:copy-for-sharing";
        handler->dispatch(url, unattended); // never given a frame
        {
            Document const document = Document::blank(office);
            css::uno::Sequence<Any> frame(1);
            frame.getArray()[0] <<=
                Reference<css::frame::XModel>(document.model(), UNO_QUERY_THROW)->getCurrentController()->getFrame();
            Reference<css::lang::XInitialization>(handler, UNO_QUERY_THROW)->initialize(frame);
        }
        for (menu::Entry const& entry : menu::entries) {
            url.Complete = office::wide(menu::url_of(entry));
            handler->dispatch(url, unattended);
        }
    });
    for (auto const& document : untitled_documents(office))
        close(document);
    EXPECT_TRUE(office.alive());
}

} // namespace hearthcell::tests
