// The menu as people use it: opened with the mouse in a Calc with windows, each command chosen, each dialog answered.

#include "calc.hpp"
#include "program_on_path.hpp"
#include "screen.hpp"

#include "extension/menu/commands.hpp"
#include "extension/office/file_url.hpp"
#include "extension/office/text.hpp"
#include "functions/edition.hpp"

#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XTitle.hpp>
#include <com/sun/star/util/XCloseable.hpp>

#include <algorithm>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

std::string label(menu::Text which, Language language) {
    std::string text(menu::text(which, language));
    std::erase(text, '~');
    return text;
}

std::string name_of(testing::TestParamInfo<Language> const& language) {
    constexpr char const* names[] = {"English", "French", "Spanish", "Swahili"};
    return names[std::size_t(language.param)];
}

class MenuInWindows : public testing::TestWithParam<Language> {
protected:
    Language const language = GetParam();
    ProgramOnPath const program{scratch_folder() / "programs"};
    Office office{{.package = package(), .menus = std::string(tag_of(language)), .windows = true}};
    Screen screen{office};
    std::filesystem::path const packaged = office.folder() / "bundled" / package().stem();

    /// Opens a spreadsheet in a window of its own; an address of the office's or of a file.
    Reference<css::frame::XModel> open(rtl::OUString const& address) {
        return office::asking("opening a window", [&] {
            return Reference<css::frame::XModel>(office.desktop()->loadComponentFromURL(address, "_blank", 0, {}),
                                                 UNO_QUERY_THROW);
        });
    }

    void choose(std::string const& window, menu::Text which) {
        std::string const command = label(which, language);
        auto shown = screen.window(window, "Hearthcell");
        ASSERT_TRUE(shown) << "no menu in " << window;
        screen.click(*shown->find("Hearthcell"));
        shown = screen.window(window, command);
        ASSERT_TRUE(shown) << "the menu lacks " << command;
        picture("menu");
        screen.click(*shown->find(command));
    }

    /// Answers a dialog of ours with OK, or with another button; gives what it said.
    std::string answer(std::string const& title, std::string const& button = "OK") {
        auto const dialog = screen.window(title, button);
        if (!dialog)
            return "no dialog came";
        picture(title);
        screen.click(*dialog->find(button));
        EXPECT_TRUE(screen.is_gone(title));
        EXPECT_TRUE(office.alive());
        return dialog->words();
    }

    /// The dialog that asks for folders: named as the command, without the dots.
    [[nodiscard]] std::string folder_title() const {
        std::string const command = label(menu::Text::recalculate_folder, language);
        return command.substr(0, command.find("…"));
    }

    /// Fills that dialog in and starts.
    void recalculate(std::string const& window, std::filesystem::path const& sheets,
                     std::filesystem::path const& results) {
        choose(window, menu::Text::recalculate_folder);
        std::string const start = label(menu::Text::recalculate, language);
        auto const dialog = screen.window(folder_title(), start);
        ASSERT_TRUE(dialog) << "no dialog came";
        auto const edits = dialog->of_role(role::TEXT);
        ASSERT_EQ(edits.size(), 3U);
        picture("empty");
        screen.click(*dialog->find(start)); // nothing happens as long as there are no folders
        screen.click(edits[0]);
        screen.type(sheets);
        screen.click(edits[1]);
        screen.type(results);
        screen.click(edits[2]);
        screen.type("efficiency,boil_time");
        picture(folder_title());
        screen.click(*dialog->find(start));
        EXPECT_TRUE(screen.is_gone(folder_title()));
    }

    /// Chooses a command that opens a new document, and closes that.
    void expect_new_document(std::string const& window, menu::Text which) {
        auto const before = open_documents();
        auto const is_new = [&](auto const& document) {
            return std::find(before.begin(), before.end(), document) == before.end();
        };
        choose(window, which);
        Reference<css::frame::XModel> opened;
        EXPECT_TRUE(eventually([&] {
            auto const now = open_documents();
            auto const found = std::find_if(now.begin(), now.end(), is_new);
            return found != now.end() && (opened = *found).is();
        })) << label(which, language);
        if (!opened.is())
            return;
        office::asking("looking at the new document", [&] {
            EXPECT_TRUE(opened->getURL().isEmpty());
            auto const title = Reference<css::frame::XTitle>(opened, UNO_QUERY_THROW)->getTitle();
            EXPECT_TRUE(screen.window(office::narrow(title)));
            picture(label(which, language));
            Reference<css::util::XCloseable>(opened, UNO_QUERY_THROW)->close(true);
        });
        EXPECT_TRUE(office.alive());
    }

    std::vector<Reference<css::frame::XModel>> open_documents() {
        return office::asking("counting the open documents", [&] {
            std::vector<Reference<css::frame::XModel>> found;
            auto const all = office.desktop()->getComponents()->createEnumeration();
            while (all->hasMoreElements())
                if (Reference<css::frame::XModel> const model(all->nextElement(), css::uno::UNO_QUERY); model.is())
                    found.push_back(model);
            return found;
        });
    }

    void picture(std::string const& name) {
        std::string const test = testing::UnitTest::GetInstance()->current_test_info()->name();
        screen.picture(test.substr(test.find('/') + 1) + " " + test.substr(0, test.find('/')) + " " +
                       std::to_string(++pictures) + " " + name);
    }
    int pictures = 0;
};

} // namespace

TEST_P(MenuInWindows, OffersItsCommandsAndTellsTheEdition) {
    open("private:factory/scalc");
    choose("Untitled 1", menu::Text::about);
    std::string const said = answer("Hearthcell");
    EXPECT_EQ(said.find(edition), 0) << said;
    EXPECT_NE(said.find((packaged / "LICENSE").string()), std::string::npos) << said;
}

TEST_P(MenuInWindows, OpensTheGuideAndTemplatesOrSaysThatTheyAreMissing) {
    open("private:factory/scalc");
    for (menu::Text const command :
         {menu::Text::function_guide, menu::Text::new_bench_record, menu::Text::new_comparison})
        expect_new_document("Untitled 1", command);

    std::filesystem::path const templates = packaged / "template";
    std::filesystem::remove_all(templates); // of all languages
    choose("Untitled 1", menu::Text::new_bench_record);
    std::string const said = answer("Hearthcell");
    EXPECT_NE(said.find((templates / "Hearthcell/bench-record.ots").string()), std::string::npos) << said;
}

TEST_P(MenuInWindows, AsksWhereToSaveTheCopyForSharing) {
    std::filesystem::path const file = office.folder() / "stove.ods";
    {
        Document document = Document::blank(office);
        document.sheet(0).formula("A1", "=STOVE.BOILINGPOINT(1240)");
        document.sheet(0).formula("A2", "=STOVE.BOILINGPOINT(99999)");
        document.save(file);
    }
    open(office::file_url(file));
    std::string name(menu::text(menu::Text::name_of_copy, language));
    name.replace(name.find("%1"), 2, "stove");
    std::filesystem::path const copy = office.folder() / (name + ".ods");
    std::string const picker(menu::text(menu::Text::picker_title, language));

    choose("stove.ods", menu::Text::copy_for_sharing);
    answer(picker, "Cancel");
    EXPECT_FALSE(std::filesystem::exists(copy));

    choose("stove.ods", menu::Text::copy_for_sharing);
    answer(picker, "Save");
    std::string const said = answer("Hearthcell");
    EXPECT_NE(said.find(copy.string()), std::string::npos) << said;
    EXPECT_NE(said.find(": 2."), std::string::npos) << said;
    EXPECT_TRUE(std::filesystem::exists(copy));
    open(office::file_url(copy));
    EXPECT_TRUE(screen.window(name));
    picture("the copy");
}

TEST_P(MenuInWindows, StopsMakingTheCopyForSharingWhenItIsTold) {
    std::filesystem::path const file = office.folder() / "long.ods";
    {
        Document document = Document::blank(office);
        document.sheet(0).formulas("A1", {{"=ROW()/50", "=STOVE.BOILINGPOINT(A1)"}});
        document.sheet(0).fill_down("A1:B150000");
        document.save(file);
    }
    open(office::file_url(file));
    auto const open_before = open_documents().size();
    choose("long.ods", menu::Text::copy_for_sharing);
    answer(std::string(menu::text(menu::Text::picker_title, language)), "Save");
    answer(label(menu::Text::copying, language), label(menu::Text::cancel, language));
    std::string const said = answer("Hearthcell");
    EXPECT_NE(said.find(menu::text(menu::Text::copy_stopped, language)), std::string::npos) << said;
    for (auto const& left : std::filesystem::directory_iterator(office.folder()))
        EXPECT_TRUE(left.path().extension() != ".ods" || left.path() == file) << left.path();
    EXPECT_EQ(open_documents().size(), open_before);
}

TEST_P(MenuInWindows, RecalculatesAFolderAndOpensTheSummary) {
    std::filesystem::path const sheets = office.folder() / "old", results = office.folder() / "new";
    std::filesystem::copy(OLD_ARCHIVE, sheets, std::filesystem::copy_options::recursive);
    open("private:factory/scalc");
    recalculate("Untitled 1", sheets, results);
    EXPECT_TRUE(screen.window("summary.ods"));
    picture("the summary");
    EXPECT_TRUE(std::filesystem::exists(results / "2016/flat-grate-1.fods"));
    EXPECT_TRUE(office.alive());
}

TEST_P(MenuInWindows, StopsRecalculatingWhenItIsTold) {
    std::filesystem::path const sheets = office.folder() / "old", results = office.folder() / "new";
    std::filesystem::create_directories(sheets);
    for (int time = 0; time < 40; ++time)
        std::filesystem::copy(OLD_ARCHIVE, sheets / std::to_string(time), std::filesystem::copy_options::recursive);
    open("private:factory/scalc");
    recalculate("Untitled 1", sheets, results);
    ASSERT_TRUE(eventually([&] { return std::filesystem::exists(results / "0"); })) << "the first copies";
    answer(label(menu::Text::recalculating, language), label(menu::Text::cancel, language));
    std::string const said = answer("Hearthcell");
    EXPECT_NE(said.find(results.string()), std::string::npos) << said;
    EXPECT_FALSE(std::filesystem::exists(results / "changes.csv")) << "it came to its end";
    EXPECT_TRUE(office.alive());
}

TEST_P(MenuInWindows, SaysWhyAFolderCannotBeRecalculatedAndLetsFoldersBeChosen) {
    open("private:factory/scalc");
    recalculate("Untitled 1", office.folder(), office.folder() / "inside it");
    std::string const said = answer("Hearthcell");
    EXPECT_NE(said.find(menu::text(menu::Text::not_recalculated, language)), std::string::npos) << said;
    EXPECT_NE(said.find("lies inside the input"), std::string::npos) << said;

    choose("Untitled 1", menu::Text::recalculate_folder);
    std::string const choose_folder = label(menu::Text::choose_folder, language);
    auto const dialog = screen.window(folder_title(), choose_folder);
    ASSERT_TRUE(dialog);
    screen.click(*dialog->find(choose_folder));
    answer(label(menu::Text::choose_old_sheets, language), "Cancel");
    answer(folder_title(), label(menu::Text::cancel, language));
}

INSTANTIATE_TEST_SUITE_P(In, MenuInWindows, testing::ValuesIn(languages), name_of);

} // namespace hearthcell::tests
