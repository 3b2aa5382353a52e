// 'Do the same in a folder', given as a command: what runs, what is asked, what stays as it is.

#include "old_sheets.hpp"
#include "open_dialogs.hpp"
#include "stand_in_program.hpp"

#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>

#include <sstream>
#include <sys/stat.h>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

/// A document that was started from an old sheet, and has a function of ours.
class SameInFolder : public OldSheets {
protected:
    SameInFolder() {
        example = start_from(office, original);
        first_sheet(example).formula("D4", "=STOVE.BOILINGPOINT(1240)");
    }
    ~SameInFolder() override {
        try {
            close(example);
        } catch (std::exception const&) { // the office is gone, which the test has said
        }
    }

    Said same(Given const& how) { return command(office, example, "do-the-same-in-folder", how); }
    [[nodiscard]] Given given() const { return {results, sheets, original, true}; }
    [[nodiscard]] Given attended() const { return {results, sheets, original, false, Attended::yes}; }
    [[nodiscard]] std::string asked() const { return program.asked(); }

    /// At the end nothing is left of it.
    void expect_no_private_copy() const {
        std::string const after = asked().substr(asked().find("--example ") + 10);
        std::filesystem::path const copy = after.substr(0, after.find(" --of"));
        EXPECT_EQ(copy.filename(), "example.ods");
        EXPECT_TRUE(eventually([&] { return !std::filesystem::exists(copy.parent_path()); })) << copy;
    }

    StandInProgram const program{folder / "program", original}; // any workbook will do for a summary
    Office office{{.package = package()}};
    Reference<css::frame::XModel> example;
    std::string const title = "Do the same in a folder";
    std::filesystem::path const few = results.string() + ", five first";
};

} // namespace

TEST_F(SameInFolder, ComparesTheDocumentAsItIsOnTheScreenAndLeavesItAsItIs) {
    Reference<css::view::XSelectionSupplier> const selection(example->getCurrentController(), UNO_QUERY_THROW);
    Reference<css::sheet::XSpreadsheetDocument> const model(example, UNO_QUERY_THROW);
    Reference<css::container::XIndexAccess> const all(model->getSheets(), UNO_QUERY_THROW);
    Reference<css::sheet::XSpreadsheet> const first(all->getByIndex(0), UNO_QUERY_THROW);
    selection->select(Any(first->getCellRangeByName("A3:B4")));
    Reference<css::util::XModifiable> const changes(example, UNO_QUERY_THROW);
    auto const undo = Reference<css::document::XUndoManagerSupplier>(example, UNO_QUERY_THROW)->getUndoManager();
    auto const undoable = undo->getAllUndoActionTitles();
    for (bool const is_changed : {true, false}) {
        changes->setModified(is_changed);
        std::filesystem::remove_all(results);
        said = same(given());
        EXPECT_EQ(said.state, Said::State::done) << said.words;
        ASSERT_TRUE(eventually([&] { return open_document(office, results / "summary.ods").is(); }));
        close(open_document(office, results / "summary.ods"));
        EXPECT_EQ(changes->isModified(), is_changed);
    }
    EXPECT_EQ(undo->getAllUndoActionTitles(), undoable);
    Reference<css::sheet::XCellRangeAddressable> const still(selection->getSelection(), UNO_QUERY_THROW);
    EXPECT_EQ(still->getRangeAddress().StartRow, 2);
    EXPECT_EQ(still->getRangeAddress().EndColumn, 1);
    EXPECT_TRUE(example->getURL().isEmpty());
    EXPECT_EQ(Document::open(office, program.given()).sheet(0).formula("D4"), "=HEARTHCELL.STOVE.BOILINGPOINT(1240)");
}

TEST_F(SameInFolder, ShowsThePlanThenDoesFiveThenAllAsItIsTold) {
    program.write("constants.csv", "example,sheet,cell,function,argument,value,sheets\r\n");
    program.leave_no_summary(); // an office without windows does not survive that it opens one where somebody attends
    said = same(attended());
    EXPECT_EQ(said.state, Said::State::done) << said.words;
    press(office, title, english(menu::Text::few_first));
    ASSERT_TRUE(eventually([&] { return std::filesystem::exists(few / "read.csv"); }));
    press(office, title, english(menu::Text::do_all));
    ASSERT_TRUE(eventually([&] { return std::filesystem::exists(results / "read.csv"); }));
    expect_gone(office, title);

    std::istringstream lines(asked());
    std::vector<std::string> runs;
    for (std::string line; std::getline(lines, line);)
        runs.push_back(line.substr(0, line.find(" --example")) + line.substr(line.find(" --of")));
    std::string const start = sheets.string() + " --of " + original.string(), pair = " --compare=Sheet1.D4=Sheet1.B4",
                      end = " --quiet --progress-lines";
    ASSERT_EQ(runs.size(), 3U) << asked();
    EXPECT_EQ(runs[0].find(start + " --plan --output "), 0U) << runs[0];
    EXPECT_EQ(runs[1], start + " --yes" + pair + " --try --output " + few.string() + end);
    EXPECT_EQ(runs[2], start + " --yes" + pair + " --output " + results.string() + end);
}

TEST_F(SameInFolder, DoesNothingWhereThePlanIsGivenUpOrItsValuesAreNotConfirmed) {
    same(attended());
    press(office, title, english(menu::Text::do_all)); // which cannot be pressed yet
    press(office, title, english(menu::Text::cancel));
    expect_gone(office, title);
    EXPECT_FALSE(std::filesystem::exists(results));
    EXPECT_FALSE(std::filesystem::exists(few));
    expect_no_private_copy();
}

TEST_F(SameInFolder, StopsTheComparisonAsItIsTold) {
    program.write("slow", "");
    same(attended());
    ASSERT_TRUE(eventually([&] { return !asked().empty(); }));
    press(office, english(menu::Text::comparing), english(menu::Text::cancel));
    expect_gone(office, english(menu::Text::comparing));
    expect_no_private_copy();
    EXPECT_FALSE(std::filesystem::exists(results));
    EXPECT_TRUE(office.alive());
}

TEST_F(SameInFolder, LeavesNoPrivateCopyWhereTheOfficeEnds) {
    program.write("slow", "");
    same(given());
    ASSERT_TRUE(eventually([&] { return !asked().empty(); }));
    office.restart();
    expect_no_private_copy();
}

TEST_F(SameInFolder, DoesNotWaitForAPipeInTheOriginalsPlace) {
    std::filesystem::rename(original, folder / "elsewhere.ods");
    ASSERT_EQ(::mkfifo(original.c_str(), 0600), 0); // the document remembers this place
    same(given());
    EXPECT_TRUE(eventually([&] { return !asked().empty(); })) << "the program reads it, and says what it is";
    EXPECT_TRUE(office.alive());
}

TEST_F(SameInFolder, GoesOnOnlyWhereTheValuesAreConfirmed) {
    Given not_confirmed = given();
    not_confirmed.confirmed = false;
    same(not_confirmed);
    ASSERT_TRUE(eventually([&] { return !asked().empty(); }));
    expect_no_private_copy();
    EXPECT_FALSE(std::filesystem::exists(results));
}

TEST_F(SameInFolder, LeavesNothingWhereTheProgramCannotCompare) {
    program.write("refusal", "the sheets have nothing in common\n");
    same(given());
    ASSERT_TRUE(eventually([&] { return !asked().empty(); }));
    expect_no_private_copy();
    EXPECT_FALSE(std::filesystem::exists(results));
    EXPECT_TRUE(office.alive());
}

TEST_F(SameInFolder, RefusesAnOriginalThatWasMovedAndAFolderThatIsNotThere) {
    std::filesystem::rename(original, folder / "moved.ods");
    said = same(given());
    EXPECT_EQ(said.state, Said::State::failed);
    EXPECT_EQ(said.words, "The original “" + original.string() +
                              "” is not there: perhaps it was moved or renamed. Please choose where it is now.");
    std::filesystem::rename(folder / "moved.ods", original);
    Given elsewhere = given();
    elsewhere.source = folder / "nowhere";
    said = same(elsewhere);
    EXPECT_EQ(said.state, Said::State::failed);
    EXPECT_EQ(said.words, "The folder “" + (folder / "nowhere").string() + "” is not there.");
    EXPECT_EQ(asked(), "");
}

TEST_F(SameInFolder, RefusesResultsInOrAroundTheFolderOrWithoutAWholePath) {
    std::filesystem::create_directory_symlink(sheets, folder / "by another name");
    Given wrong = given();
    for (std::filesystem::path const& path : {sheets, sheets / "2014/out", folder, folder / "by another name/out"}) {
        wrong.target = path;
        said = same(wrong);
        EXPECT_EQ(said.state, Said::State::failed) << path;
        EXPECT_EQ(said.words.find("The results cannot go to “" + path.string() + "”."), 0U) << said.words;
    }
    EXPECT_EQ(asked(), "");
}

TEST_F(SameInFolder, PointsOutThatTheOriginalIsAnotherThanItWasWhereverItIsNow) {
    same(attended());
    press(office, title, english(menu::Text::cancel));
    expect_gone(office, title);
    Given elsewhere = attended();
    elsewhere.original = folder / "moved.ods";
    make_old_sheet(office, elsewhere.original, 1500);
    std::string words = english(menu::Text::original_changed);
    words.replace(words.find("%1"), 2, elsewhere.original.string());
    same(elsewhere);
    press(office, title, words); // a sentence, which stays where it is
    press(office, title, english(menu::Text::cancel));
    expect_gone(office, title);
}

TEST_F(SameInFolder, DoesNothingByWhatTheDocumentSaysAlone) {
    Given without = given();
    without.original.clear(); // the document names one
    EXPECT_EQ(same(without).state, Said::State::given_up);
    EXPECT_EQ(asked(), "");
}

} // namespace hearthcell::tests
