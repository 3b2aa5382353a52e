// The menu's commands that open a workbook or store a copy of one.

#include "menu_in_windows.hpp"

#include "functions/edition.hpp"

namespace hearthcell::tests {

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
    make_long(file, 150000);
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

INSTANTIATE_TEST_SUITE_P(In, MenuInWindows, testing::ValuesIn(languages), name_of);

} // namespace hearthcell::tests
