// A copy keeps what is not a number: charts, styles and named cells.

#include "tests/archive/runs/archive_runs.hpp"

#include "extension/office/document.hpp"
#include "extension/office/text.hpp"
#include "tests/archive/made/good_workbooks.hpp"

#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/table/XTableChart.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>

namespace css = com::sun::star;

namespace hearthcell::tests::archive {
namespace {

office::Office& office_with_package() {
    static office::Office office({.package = PACKAGE});
    return office;
}

/// All that this test looks for in a workbook.
struct Appearance {
    std::vector<std::string> names; // "efficiency = Results.B4"
    std::vector<std::string> charts;
    float weight = 0;
    sal_Int32 background = 0;

    bool operator==(Appearance const&) const = default;
};

Appearance appearance_of(std::filesystem::path const& file) {
    office::Document const document = office::Document::open(office_with_package(), file);
    Appearance all;
    for (office::NamedBlock const& block : document.named_blocks())
        all.names.push_back(block.name + " = " + block.sheet + "." + block.range);
    return office::asking("looking at " + file.string(), [&] {
        css::uno::Reference<css::container::XIndexAccess> const sheets(document.model()->getSheets(),
                                                                       css::uno::UNO_QUERY_THROW);
        css::uno::Reference<css::table::XTableChartsSupplier> const results(sheets->getByIndex(1),
                                                                            css::uno::UNO_QUERY_THROW);
        css::uno::Reference<css::container::XIndexAccess> const charts(results->getCharts(), css::uno::UNO_QUERY_THROW);
        for (sal_Int32 index = 0; index < charts->getCount(); ++index) {
            css::uno::Reference<css::table::XTableChart> const chart(charts->getByIndex(index),
                                                                     css::uno::UNO_QUERY_THROW);
            for (css::table::CellRangeAddress const& range : chart->getRanges())
                all.charts.push_back(std::to_string(range.Sheet) + ":" + std::to_string(range.StartColumn) + "," +
                                     std::to_string(range.StartRow) + "-" + std::to_string(range.EndRow));
        }
        css::uno::Reference<css::table::XCellRange> const cells(results, css::uno::UNO_QUERY_THROW);
        css::uno::Reference<css::beans::XPropertySet> const cell(cells->getCellByPosition(1, 3),
                                                                 css::uno::UNO_QUERY_THROW);
        cell->getPropertyValue("CharWeight") >>= all.weight;
        cell->getPropertyValue("CellBackColor") >>= all.background;
        return all;
    });
}

class ACopy : public testing::TestWithParam<int> {};

std::string format_name(testing::TestParamInfo<int> const& one) {
    return good_workbook(one.param).path.extension().string().substr(1);
}

} // namespace

TEST_P(ACopy, KeepsChartsStylesAndNamedCells) {
    Workbook const workbook = good_workbook(GetParam());
    ASSERT_TRUE(workbook.sheets[1].chart);
    Appearance const original = appearance_of(made().good() / workbook.path);
    EXPECT_EQ(original.names.size(), workbook.names.size());
    ASSERT_EQ(original.charts.size(), 1U);
    EXPECT_EQ(original.weight, css::awt::FontWeight::BOLD);
    EXPECT_EQ(original.background, 0xfdf6e3);
    Appearance const copy = appearance_of(whole_run().ended.output / "good" / workbook.path);
    EXPECT_EQ(copy.names, original.names);
    EXPECT_EQ(copy.charts, original.charts);
    EXPECT_EQ(copy.weight, original.weight);
    EXPECT_EQ(copy.background, original.background);
}

INSTANTIATE_TEST_SUITE_P(Formats, ACopy, testing::Values(70, 71, 73, 76), format_name);

} // namespace hearthcell::tests::archive
