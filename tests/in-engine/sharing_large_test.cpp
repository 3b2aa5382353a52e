// Copies for sharing of documents with tens of thousands of formulas: the time they take, and that they can be stopped.

#include "copy_for_sharing.hpp"
#include "open_dialogs.hpp"

#include "extension/menu/texts.hpp"
#include "extension/office/text.hpp"
#include "tests/support/all_below.hpp"
#include "tests/support/content.hpp"

#include <com/sun/star/util/XModifiable.hpp>

#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <iterator>
#include <set>
#include <sstream>
#include <thread>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

/// Of the office, in seconds.
double processor_time() {
    std::string const line = content("/proc/" + std::to_string(office_with_package().process_id()) + "/stat");
    std::istringstream fields(line.substr(line.rfind(')') + 1));
    std::string skipped;
    for (int field = 3; field < 14; ++field)
        fields >> skipped;
    double user = 0, system = 0;
    fields >> user >> system;
    return (user + system) / double(sysconf(_SC_CLK_TCK));
}

class LargeCopyForSharing : public CopyForSharing {
protected:
    void fill(int rows) {
        sheet.formulas("A1", {{"=ROW()/40", "=STOVE.BOILINGPOINT(A1)", "=B1+1"}});
        sheet.fill_down("A1:C" + std::to_string(rows));
    }

    /// Processor time for a column of so many.
    double time_for(int rows) {
        fill(rows);
        double const before = processor_time();
        share(document);
        return processor_time() - before;
    }

    /// What an office does only once: loads libraries, makes a database for signatures.
    void warm_up() {
        share(document);
        std::filesystem::remove(copy);
    }

    static std::set<std::filesystem::path> files() {
        std::set<std::filesystem::path> found;
        for (auto const& file : all_below(scratch_folder()))
            if (file.string().find("/profile/") == std::string::npos && std::filesystem::is_regular_file(file))
                found.insert(file);
        return found;
    }
    static std::vector<std::filesystem::path> files_beyond(std::set<std::filesystem::path> const& before) {
        std::vector<std::filesystem::path> added;
        std::ranges::set_difference(files(), before, std::back_inserter(added));
        return added;
    }

    static int open_documents() {
        int count = 0;
        auto const open = office_with_package().desktop()->getComponents()->createEnumeration();
        for (; open->hasMoreElements(); ++count)
            open->nextElement();
        return count;
    }
    /// Until the copy that is being changed is open, too.
    static void wait_for_hidden_copy(int open_before) {
        while (office_with_package().alive() && open_documents() == open_before)
            std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
};

} // namespace

TEST_F(LargeCopyForSharing, TakesTimeInStepWithTheNumberOfFormulas) {
    warm_up();
    double const few = time_for(5000), many = time_for(20000);
    EXPECT_LT(many, 8 * few) << "5,000 formulas: " << few << " s, 20,000: " << many << " s";
}

TEST_F(LargeCopyForSharing, LeavesNothingWhenItIsStopped) {
    warm_up();
    fill(100000);
    Reference<css::util::XModifiable> const changes(document.model(), UNO_QUERY_THROW);
    changes->setModified(false);
    std::string const all = "A1:C500";
    auto const before = sheet.values(all);
    auto const files_before = files();
    int const open_before = open_documents();

    Said const started = command(office_with_package(), document, "copy-for-sharing", copy, {}, Attended::yes);
    EXPECT_EQ(started.state, Said::State::done) << started.words;
    wait_for_hidden_copy(open_before);
    press(office_with_package(), english(menu::Text::copying), english(menu::Text::cancel));
    expect_gone(office_with_package(), english(menu::Text::copying));

    EXPECT_FALSE(std::filesystem::exists(copy));
    EXPECT_EQ(files_beyond(files_before), std::vector<std::filesystem::path>());
    EXPECT_EQ(open_documents(), open_before);
    EXPECT_FALSE(changes->isModified());
    EXPECT_EQ(sheet.values(all), before);
    EXPECT_EQ(sheet.formula("B100000"), "=HEARTHCELL.STOVE.BOILINGPOINT(A100000)");
    EXPECT_TRUE(comments(document, 0).empty());
}

TEST_F(LargeCopyForSharing, IsMadeBesideTheOfficeWhereSomebodyAttends) {
    fill(3000);
    command(office_with_package(), document, "copy-for-sharing", copy, {}, Attended::yes);
    document.sheet(0).number("E1", 1); // the office is there for others meanwhile
    expect_gone(office_with_package(), english(menu::Text::copying));
    Document const shared = received();
    expect_same(shared.sheet(0).values("A1:C3000"), sheet.values("A1:C3000"));
    EXPECT_EQ(comments(shared, 0).size(), 1U);
}

TEST_F(LargeCopyForSharing, IsMadeAlsoWhereTheDocumentIsClosedMeanwhile) {
    fill(20000);
    auto const before = sheet.values("B19000:C20000");
    int const open_before = open_documents();
    command(office_with_package(), document, "copy-for-sharing", copy, {}, Attended::yes);
    wait_for_hidden_copy(open_before);
    document.close();
    expect_gone(office_with_package(), english(menu::Text::copying));
    expect_same(received().sheet(0).values("B19000:C20000"), before);
}

TEST_F(LargeCopyForSharing, KeepsMixedResultsCommentsAndFormulasBetween) {
    sheet.formulas("A1", {{"=ROW()", "=IF(MOD(A1;7)=0;STOVE.BOILINGPOINT(99999);IF(MOD(A1;5)=0;"
                                     "\"a\"&STOVE.BOILINGPOINT(0);STOVE.BOILINGPOINT(A1)))"}});
    sheet.fill_down("A1:B1200");
    sheet.formula("B900", "=A900*2");
    sheet.text("B1100", "by hand");
    comment_on(document, 0, "B500", "Measured at noon");
    share(document);
    Document const shared = received();
    expect_same(shared.sheet(0).values("A1:B1200"), sheet.values("A1:B1200"));
    EXPECT_EQ(shared.sheet(0).shown_rows("B1:B1200"), sheet.shown_rows("B1:B1200"));
    EXPECT_EQ(shared.sheet(0).formula("B900"), "=A900*2");
    EXPECT_EQ(shared.sheet(0).formula("B7"), "=#NUM!");
    EXPECT_EQ(comments(shared, 0).at("B500"), "Measured at noon");
}

} // namespace hearthcell::tests
