// The menu's check of a workbook: what it opens, what it leaves as it is, and what is not said again.

#include "checks.hpp"
#include "commands.hpp"
#include "open_dialogs.hpp"

#include "extension/office/file_url.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>

#include <algorithm>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

/// A record of six runs with a slip in the third, saved as a file.
class CheckCommand : public Calc {
protected:
    CheckCommand() {
        Document blank = Document::blank(office_with_package());
        Sheet record = blank.sheet(0);
        for (int row = 1; row <= 6; ++row) {
            record.text("A" + std::to_string(row), "run " + std::to_string(row));
            record.number("B" + std::to_string(row), 500 + 7 * row);
            record.number("C" + std::to_string(row), row == 3 ? 14 : 0.14);
        }
        record.formula("D1", "=STOVE.DRYMASS(B1;C1)");
        record.fill_down("D1:D6");
        blank.save(file);
        saved.emplace(Document::open(office_with_package(), file, office::Access::read_write));
    }

    /// Gives the command and takes the workbook that it opens.
    Reference<css::frame::XModel> report(char const* name = "check-this-workbook") {
        auto const before = untitled_documents(office_with_package());
        said = command(office_with_package(), *saved, name);
        EXPECT_EQ(said.state, Said::State::done) << said.words;
        for (auto const& opened : untitled_documents(office_with_package()))
            if (std::find(before.begin(), before.end(), opened) == before.end())
                return opened;
        ADD_FAILURE() << "nothing was opened";
        return {};
    }

    [[nodiscard]] Reference<css::util::XModifiable> modifiable() const { return {saved->model(), UNO_QUERY_THROW}; }

    std::filesystem::path const file = scratch_folder() / "record of 'runs'.ods";
    std::optional<Document> saved;
    Said said;
};

TEST_F(CheckCommand, OpensAWorkbookThatLeadsToTheCells) {
    auto const opened = report();
    EXPECT_EQ(said.words, "Runs: 6. Nothing stands out in 5 of them; look at run 3.");
    Sheet const shown = first_sheet(opened);
    EXPECT_EQ(shown.shown("A1"), "Check of record of 'runs'.ods");
    EXPECT_EQ(shown.shown("A2"), said.words);
    EXPECT_EQ(shown.shown_rows("A4:G5"),
              (office::TextRows{{"run", "cell", "function", "value shown", "remark", "effect", "seen"},
                                {"run 3", "D3", "STOVE.DRYMASS", "#NUM!",
                                 "moisture is 14, outside 0 to 0.75: 14 is 1400 %; type 14% or 0.14.",
                                 "It would be 448.06.", ""}}));
    EXPECT_EQ(shown.formula("B5"), "=HYPERLINK(\"" + office::narrow(office::file_url(file)) + "#'Sheet1'.D3\";\"D3\")");
    close(opened);
}

TEST_F(CheckCommand, LeavesTheDocumentAsItIs) {
    Reference<css::frame::XModel> const model(saved->model(), UNO_QUERY_THROW);
    Reference<css::view::XSelectionSupplier> const selection(model->getCurrentController(), UNO_QUERY_THROW);
    Reference<css::container::XIndexAccess> const sheets(saved->model()->getSheets(), UNO_QUERY_THROW);
    Reference<css::sheet::XSpreadsheet> const sheet_of_saved(sheets->getByIndex(0), UNO_QUERY_THROW);
    selection->select(Any(sheet_of_saved->getCellRangeByName("C2:D3")));
    modifiable()->setModified(false);
    close(report());
    EXPECT_FALSE(modifiable()->isModified());
    EXPECT_FALSE(
        Reference<css::document::XUndoManagerSupplier>(model, UNO_QUERY_THROW)->getUndoManager()->isUndoPossible());
    Reference<css::sheet::XCellRangeAddressable> const still(selection->getSelection(), UNO_QUERY_THROW);
    EXPECT_EQ(still->getRangeAddress().EndRow, 2);
    EXPECT_EQ(still->getRangeAddress().StartColumn, 2);
}

TEST_F(CheckCommand, ChecksTheSelectedCells) {
    Reference<css::frame::XModel> const model(saved->model(), UNO_QUERY_THROW);
    Reference<css::container::XIndexAccess> const sheets(saved->model()->getSheets(), UNO_QUERY_THROW);
    Reference<css::sheet::XSpreadsheet> const first(sheets->getByIndex(0), UNO_QUERY_THROW);
    Reference<css::view::XSelectionSupplier>(model->getCurrentController(), UNO_QUERY_THROW)
        ->select(Any(first->getCellRangeByName("D1:D2")));
    close(report("check-selected-cells"));
    EXPECT_EQ(said.words, "Runs: 2. Nothing stands out in any of them.");
}

TEST_F(CheckCommand, LeavesOutWhatWasSeenUntilAValueChanges) {
    auto const opened = report();
    first_sheet(opened).text("G5", "x");
    Said const kept = command(office_with_package(), opened, "seen-leave-it");
    EXPECT_EQ(kept.state, Said::State::done) << kept.words;
    EXPECT_EQ(kept.words.find("Remarks that are left out from now on: 1."), 0U) << kept.words;
    EXPECT_TRUE(modifiable()->isModified());
    close(opened);

    std::filesystem::path const again = scratch_folder() / "seen.ods";
    saved->save(again);
    saved.emplace(Document::open(office_with_package(), again, office::Access::read_write));
    close(report());
    EXPECT_EQ(said.words, "Runs: 6. Nothing stands out in any of them.");
    saved->sheet(0).number("C3", 15);
    close(report());
    EXPECT_EQ(said.words, "Runs: 6. Nothing stands out in 5 of them; look at run 3.");
}

TEST_F(CheckCommand, StopsWhenItIsToldAndLeavesNothing) {
    saved->sheet(0).fill_down("A6:D60000");
    modifiable()->setModified(false);
    auto const before = untitled_documents(office_with_package());
    std::string const title = english(menu::Text::checking);
    said = command(office_with_package(), *saved, "check-this-workbook", {}, {}, Attended::yes);
    EXPECT_EQ(said.state, Said::State::done) << said.words;
    press(office_with_package(), title, english(menu::Text::cancel));
    expect_gone(office_with_package(), title);
    EXPECT_EQ(untitled_documents(office_with_package()), before);
    EXPECT_FALSE(modifiable()->isModified());
}

TEST_F(CheckCommand, SaysWhereSeenRemarksAreKept) {
    Said const elsewhere = command(office_with_package(), *saved, "seen-leave-it");
    EXPECT_EQ(elsewhere.state, Said::State::failed);
    EXPECT_EQ(elsewhere.words.find("This is not the result of a check."), 0U) << elsewhere.words;
}

} // namespace hearthcell::tests
