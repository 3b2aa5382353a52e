// 'Start from an old sheet' and 'Do the same in a folder' with their dialogs.

#include "menu_in_windows.hpp"
#include "stand_in_program.hpp"

#include <com/sun/star/frame/XTitle.hpp>

#include <algorithm>

namespace hearthcell::tests {

namespace css = com::sun::star;

namespace {

class OldSheetInWindows : public MenuInWindows {
protected:
    OldSheetInWindows() {
        std::filesystem::create_directories(sheets);
        Document document = Document::blank(office);
        Sheet sheet = document.sheet(0);
        sheet.text("A3", "Altitude");
        sheet.number("B3", 1240);
        sheet.text("A4", "Boiling point");
        sheet.formula("B4", "=100-B3/300");
        document.save(original);
    }

    [[nodiscard]] std::string said(menu::Text which) const { return label(which, language); }

    /// The dialogs of the second command are named as it is, without the dots.
    [[nodiscard]] std::string title() const {
        std::string const command = said(menu::Text::same_in_folder);
        return command.substr(0, command.find("…"));
    }

    /// Chooses the first command and the old sheet; gives the title of the window that comes.
    std::string start() {
        choose("Untitled 1", menu::Text::start_from_old);
        if (!screen.window(said(menu::Text::choose_old_sheet), "Open"))
            throw std::runtime_error("nobody asks for the old sheet");
        screen.type(original);
        answer(said(menu::Text::choose_old_sheet), "Open");
        std::string const words = answer("Hearthcell");
        EXPECT_NE(words.find(original.string()), std::string::npos) << words;
        auto const copy = open_documents().front();
        return office::asking("reading a title", [&] {
            return office::narrow(css::uno::Reference<css::frame::XTitle>(copy, css::uno::UNO_QUERY_THROW)->getTitle());
        });
    }

    std::filesystem::path const sheets = office.folder() / "old", original = sheets / "stove.ods",
                                results = office.folder() / "new";
};

} // namespace

TEST_P(OldSheetInWindows, IsStartedFromAndTheSameIsDoneInAFolder) {
    open("private:factory/scalc");
    std::string const window = start();
    StandInProgram const stand_in(scratch_folder() / "programs", original);
    choose(window, menu::Text::same_in_folder);
    auto const dialog = screen.window(title(), said(menu::Text::compare_now));
    ASSERT_TRUE(dialog);
    auto const edits = dialog->of_role(role::TEXT);
    ASSERT_EQ(edits.size(), 3U);
    screen.click(edits[1]);
    screen.type(sheets);
    screen.click(edits[2]);
    screen.type(results);
    picture(title());
    screen.click(*dialog->find(said(menu::Text::compare_now)));

    auto const plan = screen.window(title(), said(menu::Text::few_first));
    ASSERT_TRUE(plan);
    picture("plan");
    screen.click(*plan->find(said(menu::Text::few_first))); // nothing happens as long as the values are not confirmed
    auto confirmed = *plan->find(said(menu::Text::constants_confirmed));
    confirmed.x = confirmed.left + 8; // the box; beyond its text nothing happens
    screen.click(confirmed);
    picture("confirmed");
    screen.click(*plan->find(said(menu::Text::few_first)));
    EXPECT_TRUE(screen.window("summary.ods"));
    auto const trial = screen.window(title(), said(menu::Text::do_all));
    ASSERT_TRUE(trial);
    picture("trial");
    screen.click(*trial->find(said(menu::Text::do_all)));
    EXPECT_TRUE(eventually([&] { return std::filesystem::exists(results / "summary.ods"); }));
    EXPECT_TRUE(screen.is_gone(title()));
    picture("all");
}

INSTANTIATE_TEST_SUITE_P(In, OldSheetInWindows, testing::ValuesIn(languages), name_of);

} // namespace hearthcell::tests
