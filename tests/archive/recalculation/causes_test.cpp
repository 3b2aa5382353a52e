// Why results changed, as the program tells it: what formulas read and call, in themselves and through names.

#include "extension/archive/recalculation/comparison.hpp"
#include "extension/archive/recalculation/links.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XDatabaseRanges.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace hearthcell::tests::archive {
namespace {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using hearthcell::archive::Change;
using hearthcell::archive::Volatility;

/// A workbook in which B1 of the first sheet is worked out by a function of ours from A1, and all results have changed.
class Causes : public ::testing::Test {
protected:
    Causes() : document_(office::Document::open(office(), file(), office::Access::read_write)) {
        document_.sheet(0).number("A1", 2300);
        document_.sheet(0).formula("B1", "=STOVE.BOILINGPOINT(A1)");
    }

    /// `of_sheet`: whose name it is; -1: the workbook's. `seen_from`: a cell of the first sheet.
    void define(std::string const& name, std::string const& content, int of_sheet = -1,
                css::table::CellAddress const& seen_from = {0, 0, 0}) {
        office::asking("defining a name", [&] {
            Reference<css::container::XIndexAccess> const sheets(document_.model()->getSheets(), UNO_QUERY_THROW);
            Reference<css::beans::XPropertySet> const owner(
                of_sheet < 0 ? css::uno::Any(document_.model()) : sheets->getByIndex(of_sheet), UNO_QUERY_THROW);
            Reference<css::sheet::XNamedRanges>(owner->getPropertyValue("NamedRanges"), UNO_QUERY_THROW)
                ->addNewByName(office::wide(name), office::wide(content), seen_from, 0);
        });
    }

    void define_table(std::string const& name, css::table::CellRangeAddress const& cells) {
        office::asking("defining a table", [&] {
            Reference<css::beans::XPropertySet> const properties(document_.model(), UNO_QUERY_THROW);
            Reference<css::sheet::XDatabaseRanges>(properties->getPropertyValue("DatabaseRanges"), UNO_QUERY_THROW)
                ->addNewByName(office::wide(name), cells);
        });
    }

    /// The change of one more formula, which is put into a cell of a sheet.
    Change change_of(std::string const& formula, std::string const& cell = "B9", int sheet = 0) {
        document_.sheet(sheet).formula(cell, formula);
        document_.recalculate();
        for (Change const& change : all_changes())
            if (change.place.sheet == sheet && hearthcell::archive::cell_name(change.place) == cell)
                return change;
        ADD_FAILURE() << formula << " in " << cell << " has not changed: " << document_.sheet(sheet).formula(cell);
        return {};
    }

    std::vector<Change> all_changes() {
        hearthcell::archive::Room room(1 << 20);
        hearthcell::archive::StoredResults stored;
        for (int sheet = 0; sheet < 2; ++sheet)
            for (int row = 0; row < 12; ++row)
                for (int column = 0; column < 6; ++column)
                    stored.add({{sheet, row, column}, -1.0, false}, room); // which none of the formulas gives
        stored.sort();
        return hearthcell::archive::compare(document_, stored, {}, {"/tmp", "/tmp"}).changes;
    }

    static std::string called(Change const& change) {
        std::string names;
        for (Function const* const function : change.functions)
            names += std::string(function->name) + ' ';
        return names;
    }

private:
    static office::Office& office() {
        static office::Office one({.package = PACKAGE});
        return one;
    }

    /// Names with a dot in them come out of files only: the office lets nobody define one.
    static std::filesystem::path file() {
        std::filesystem::path const path = office().folder() / "names with dots.fods";
        std::ofstream(path) << R"(<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" office:version="1.3"
 office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>
<table:table table:name="Sheet1"/><table:table table:name="Two"/><table:named-expressions>
<table:named-range table:name="site.boil" table:base-cell-address="$Sheet1.$A$1" table:cell-range-address="$Sheet1.$B$1"/>
<table:named-range table:name="site.altitude" table:base-cell-address="$Sheet1.$A$1"
 table:cell-range-address="$Sheet1.$A$1"/>
<table:named-range table:name="fuel.T1" table:base-cell-address="$Sheet1.$A$1" table:cell-range-address="$Sheet1.$B$1"/>
</table:named-expressions></office:spreadsheet></office:body></office:document>
)";
        return path;
    }

    office::Document document_;
};

TEST_F(Causes, AreOfTheFormulaItselfWhereItReadsNothingThatChanged) {
    Change const change = change_of("=STOVE.BOILINGPOINT(A1)+A2");
    EXPECT_TRUE(change.own);
    EXPECT_EQ(called(change), "BOILINGPOINT ");
    EXPECT_FALSE(change_of("=B1*2").own);
    EXPECT_EQ(called(change_of("=B1*2")), "");
    EXPECT_FALSE(change_of("=SUM(A1:B3)").own);
    EXPECT_FALSE(change_of("=$Sheet1.B1+1", "A1", 1).own);
    EXPECT_TRUE(change_of("=B1+1", "A1", 1).own) << "of the other sheet, which is empty";
}

TEST_F(Causes, LieInACellThatANameWithADotStandsFor) {
    EXPECT_FALSE(change_of("=site.boil*2").own);
    EXPECT_FALSE(change_of("=fuel.T1*2").own) << "which looks like the cell T1 of a sheet";
    EXPECT_TRUE(change_of("=site.altitude*2").own);
}

TEST_F(Causes, LieInACellThatANamedExpressionReads) {
    define("twice", "2*$Sheet1.$B$1");
    EXPECT_FALSE(change_of("=twice").own);
    define("four_times", "twice*2");
    EXPECT_FALSE(change_of("=four_times").own) << "through another name";
    define("above", "B8", -1, {0, 1, 8}); // the cell above, seen from B9
    EXPECT_FALSE(change_of("=above", "B2").own) << "B1";
    EXPECT_TRUE(change_of("=above", "A9").own) << "A8";
    define("here", "$B$1", 1);
    EXPECT_TRUE(change_of("=here+1", "C3", 1).own) << "B1 of the sheet that the name belongs to";
}

TEST_F(Causes, LieBetweenTwoNamedCells) {
    define("first", "$Sheet1.$A$1");
    define("last", "$Sheet1.$C$2");
    EXPECT_FALSE(change_of("=SUM(first:last)").own);
    EXPECT_TRUE(change_of("=first+last").own);
}

TEST_F(Causes, LieInATable) {
    define_table("Runs", {0, 1, 0, 2, 1}); // B1:C2
    EXPECT_FALSE(change_of("=SUM(Runs)").own);
    define_table("Others", {0, 3, 0, 4, 1}); // D1:E2
    EXPECT_TRUE(change_of("=SUM(Others)").own);
}

TEST_F(Causes, AreNoneWhereANameIsVolatile) {
    define("heute", "TODAY()");
    EXPECT_EQ(change_of("=heute").volatility, Volatility::itself);
    define("next_week", "heute+7");
    EXPECT_EQ(change_of("=next_week").volatility, Volatility::itself);
    EXPECT_EQ(change_of("=B9+1", "B10").volatility, Volatility::follows);
    EXPECT_EQ(change_of("=A1&\"heute\"").volatility, Volatility::none);
    define("day", "TODAY()", 1);
    define("day", "43000");
    EXPECT_EQ(change_of("=day").volatility, Volatility::none);
    EXPECT_EQ(change_of("=day", "A1", 1).volatility, Volatility::itself) << "the name of the other sheet";
    EXPECT_EQ(change_of("=$Two.day").volatility, Volatility::itself);
}

TEST_F(Causes, AreOurFunctionsAlsoThroughNames) {
    define("boil", "STOVE.BOILINGPOINT($Sheet1.$A$1)");
    Change const change = change_of("=boil+1");
    EXPECT_EQ(called(change), "BOILINGPOINT ");
    EXPECT_TRUE(change.own);
}

TEST(Links, AreShownAsTheOriginalsWhereverTheyStandInAFormula) {
    hearthcell::archive::Places places{"/tmp/w/1/2/3/4/5/6/7/8/9", "/home/archive/2014"};
    auto const shown = [&](std::string const& formula) {
        return hearthcell::archive::with_original_links(formula, places);
    };
    EXPECT_EQ(
        shown("='file:///tmp/w/1/2/3/4/5/6/7/8/site.ods'#$Sheet1.A1+'file:///tmp/w/1/2/3/4/5/6/7/8/9/b.ods'#name"),
        "='file:///home/archive/site.ods'#$Sheet1.A1+'file:///home/archive/2014/b.ods'#name");
    for (char const* const other :
         {"=\"file:///tmp/w/1/2/3/4/5/6/7/8/site.ods\"", "='file:///elsewhere/site.ods'#$Sheet1.A1", "=A1"})
        EXPECT_EQ(shown(other), other);
}

} // namespace
} // namespace hearthcell::tests::archive
