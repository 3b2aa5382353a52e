// 'Recalculate a folder' with its dialogs.

#include "menu_in_windows.hpp"

namespace hearthcell::tests {

namespace {

class RecalculateInWindows : public MenuInWindows {
protected:
    std::string const folder_title = title_of(menu::Text::recalculate_folder, language); // of the dialog that asks

    /// Fills that dialog in and starts.
    void recalculate(std::string const& window, std::filesystem::path const& sheets,
                     std::filesystem::path const& results) {
        choose(window, menu::Text::recalculate_folder);
        std::string const start = label(menu::Text::recalculate, language);
        auto const dialog = screen.window(folder_title, start);
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
        picture(folder_title);
        screen.click(*dialog->find(start));
        EXPECT_TRUE(screen.is_gone(folder_title));
    }
};

} // namespace

TEST_P(RecalculateInWindows, RecalculatesAFolderAndOpensTheSummary) {
    std::filesystem::path const sheets = office.folder() / "old", results = office.folder() / "new";
    std::filesystem::copy(OLD_ARCHIVE, sheets, std::filesystem::copy_options::recursive);
    open("private:factory/scalc");
    recalculate("Untitled 1", sheets, results);
    EXPECT_TRUE(screen.window("summary.ods"));
    picture("the summary");
    EXPECT_TRUE(std::filesystem::exists(results / "2016/flat-grate-1.fods"));
    EXPECT_TRUE(office.alive());
}

TEST_P(RecalculateInWindows, StopsRecalculatingWhenItIsTold) {
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

TEST_P(RecalculateInWindows, SaysWhyAFolderCannotBeRecalculatedAndLetsFoldersBeChosen) {
    open("private:factory/scalc");
    recalculate("Untitled 1", office.folder(), office.folder() / "inside it");
    std::string const said = answer("Hearthcell");
    std::string const inside = (office.folder() / "inside it").string();
    std::string words(menu::text(menu::Text::results_elsewhere, language));
    words.replace(words.find("%1"), 2, inside);
    EXPECT_NE(said.find(words), std::string::npos) << said;

    choose("Untitled 1", menu::Text::recalculate_folder);
    std::string const choose_folder = label(menu::Text::choose_folder, language);
    auto const dialog = screen.window(folder_title, choose_folder);
    ASSERT_TRUE(dialog);
    screen.click(*dialog->find(choose_folder));
    answer(label(menu::Text::choose_old_sheets, language), "Cancel");
    answer(folder_title, label(menu::Text::cancel, language));
}

INSTANTIATE_TEST_SUITE_P(In, RecalculateInWindows, testing::ValuesIn(languages), name_of);

} // namespace hearthcell::tests
