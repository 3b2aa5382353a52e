// 'Start from an old sheet' and 'Do the same in a folder' with their dialogs.

#include "menu_in_windows.hpp"

#include <com/sun/star/frame/XTitle.hpp>

namespace hearthcell::tests {

namespace css = com::sun::star;

namespace {

class OldSheetInWindows : public MenuInWindows {
protected:
    OldSheetInWindows() {
        std::filesystem::create_directories(sheets);
        for (char const* const name : {"stove.ods", "stove 2.ods", "stove 3.xlsx"}) {
            Document document = Document::blank(office);
            Sheet sheet = document.sheet(0);
            sheet.text("A3", "Altitude");
            sheet.number("B3", 1240);
            sheet.text("A4", "Boiling point");
            sheet.formula("B4", "=100-B3/300");
            document.save(sheets / name);
        }
    }

    [[nodiscard]] std::string said(menu::Text which) const { return label(which, language); }

    /// Chooses the first command and the old sheet, and types a function beside the old formula; gives the title of the
    /// window that comes.
    std::string start() {
        choose("Untitled 1", menu::Text::start_from_old);
        if (!screen.window(said(menu::Text::choose_old_sheet), "Open"))
            throw std::runtime_error("nobody asks for the old sheet");
        screen.type(original);
        answer(said(menu::Text::choose_old_sheet), "Open");
        std::string const words = answer("Hearthcell");
        EXPECT_NE(words.find(original.string()), std::string::npos) << words;
        type_beside("=STOVE.BOILINGPOINT(1240)");
        return office::asking("reading a title", [&] {
            return office::narrow(
                css::uno::Reference<css::frame::XTitle>(open_documents().front(), css::uno::UNO_QUERY_THROW)
                    ->getTitle());
        });
    }

    void type_beside(std::string const& formula) {
        office::asking("typing", [&] {
            css::uno::Reference<css::sheet::XSpreadsheetDocument> const copy(open_documents().front(),
                                                                             css::uno::UNO_QUERY_THROW);
            css::uno::Reference<css::container::XIndexAccess> const all(copy->getSheets(), css::uno::UNO_QUERY_THROW);
            css::uno::Reference<css::sheet::XSpreadsheet> const first(all->getByIndex(0), css::uno::UNO_QUERY_THROW);
            Sheet(first).formula("D4", formula);
        });
    }

    /// Fills the dialog of the second command in and goes on.
    void fill_in() {
        auto const dialog = screen.window(title, said(menu::Text::compare_now));
        ASSERT_TRUE(dialog);
        auto const edits = dialog->of_role(role::TEXT);
        ASSERT_EQ(edits.size(), 3U);
        screen.click(edits[1]);
        screen.type(sheets);
        screen.click(edits[2]);
        screen.type(results);
        picture(title);
        screen.click(*dialog->find(said(menu::Text::compare_now)));
    }

    std::string const title = title_of(menu::Text::same_in_folder, language); // of the second command's dialogs
    std::filesystem::path const sheets = office.folder() / "old", original = sheets / "stove.ods",
                                results = office.folder() / "new";
};

} // namespace

TEST_P(OldSheetInWindows, IsStartedFromAndTheSameIsDoneInAFolder) {
    open("private:factory/scalc");
    choose(start(), menu::Text::same_in_folder);
    fill_in();

    auto const plan = screen.window(title, said(menu::Text::few_first));
    ASSERT_TRUE(plan);
    picture("plan");
    screen.click(*plan->find(said(menu::Text::few_first))); // nothing happens as long as the values are not confirmed
    auto confirmed = *plan->find(said(menu::Text::constants_confirmed));
    confirmed.x = confirmed.left + 8; // the box; beyond its text nothing happens
    screen.click(confirmed);
    picture("confirmed");
    EXPECT_FALSE(std::filesystem::exists(results));
    screen.click(*plan->find(said(menu::Text::few_first)));
    EXPECT_TRUE(screen.window("summary.ods"));
    auto const trial = screen.window(title, said(menu::Text::do_all));
    ASSERT_TRUE(trial);
    picture("trial");
    screen.click(*trial->find(said(menu::Text::do_all)));
    EXPECT_TRUE(eventually([&] { return std::filesystem::exists(results / "summary.ods"); }));
    EXPECT_TRUE(screen.is_gone(said(menu::Text::doing_all)));
    picture("all");
    for (char const* const made : {"stove 2.ods", "stove 3.xlsx", "old-and-new.csv"})
        EXPECT_TRUE(std::filesystem::exists(results / made)) << made;
    EXPECT_TRUE(office.alive());
}

TEST_P(OldSheetInWindows, IsRefusedWhereItsOriginalWasMoved) {
    open("private:factory/scalc");
    std::string const window = start();
    std::filesystem::rename(original, office.folder() / "moved.ods");
    choose(window, menu::Text::same_in_folder);
    fill_in();
    std::string const words = answer("Hearthcell");
    EXPECT_NE(words.find(original.string()), std::string::npos) << words;
    auto const again = screen.window(title, said(menu::Text::compare_now)); // with what was typed
    ASSERT_TRUE(again);
    answer(title, said(menu::Text::cancel));
    EXPECT_FALSE(std::filesystem::exists(results));
}

TEST_P(OldSheetInWindows, SaysThatNothingWasTyped) {
    open("private:factory/scalc");
    std::string const window = start();
    type_beside("");
    choose(window, menu::Text::same_in_folder);
    fill_in();
    std::string const nothing = said(menu::Text::nothing_to_carry), words = answer("Hearthcell");
    EXPECT_NE(words.find(nothing.substr(0, nothing.find('\n'))), std::string::npos) << words;
}

INSTANTIATE_TEST_SUITE_P(In, OldSheetInWindows, testing::ValuesIn(languages), name_of);

} // namespace hearthcell::tests
