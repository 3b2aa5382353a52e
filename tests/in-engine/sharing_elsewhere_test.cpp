// Formulas of ours outside of cells, in a copy for sharing: in names, conditional formats and validity rules.

#include "copy_for_sharing.hpp"
#include "rules.hpp"

#include "extension/office/text.hpp"
#include "extension/sharing/freeze.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/util/XProtectable.hpp>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::beans::XPropertySet;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

std::string meaning(Document const& document, std::string const& name) {
    return office::asking("reading a name", [&] {
        Reference<XPropertySet> const properties(document.model(), UNO_QUERY_THROW);
        Reference<css::container::XNameAccess> const names(properties->getPropertyValue("NamedRanges"),
                                                           UNO_QUERY_THROW);
        return office::narrow(
            Reference<css::sheet::XNamedRange>(names->getByName(office::wide(name)), UNO_QUERY_THROW)->getContent());
    });
}

/// Where the package is missing the office may write the function in small letters.
bool still_calls_us(std::string const& formula) {
    return formula.find("STOVE.") != std::string::npos || formula.find("stove.") != std::string::npos;
}

} // namespace

TEST_F(CopyForSharing, HoldsValuesInNames) {
    sheet.number("A1", 1240);
    define(document, "Boil", "STOVE.BOILINGPOINT($Sheet1.$A$1)");
    define(document, "Twice", "Boil*2");
    define(document, "Warned", "IF(STOVE.BOILINGPOINT(99999)>1;STOVE.SOURCE(\"BOILINGPOINT\");\"low\")");
    define(document, "Limits", "STOVE.SERIES({1;2;4};;\"all\")"); // a block
    define(document, "Here", "STOVE.BOILINGPOINT($Sheet1.A1)");   // the cell at the side
    define(document, "Mine", "$Sheet1.$A$1+1");
    Said const said = command(office_with_package(), document, "copy-for-sharing", copy);
    EXPECT_NE(said.words.find("depends on the cell: 2."), std::string::npos) << said.words;

    Document const shared = received();
    double const boil = number(evaluate("=STOVE.BOILINGPOINT(1240)"));
    EXPECT_NEAR(std::stod(meaning(shared, "Boil")), boil, 1e-14 * boil);
    EXPECT_EQ(meaning(shared, "Twice"), "Boil*2");
    EXPECT_EQ(meaning(shared, "Warned").find("IF(#NUM!>1;\"IAPWS"), 0U) << meaning(shared, "Warned");
    EXPECT_TRUE(still_calls_us(meaning(shared, "Limits"))) << meaning(shared, "Limits");
    EXPECT_TRUE(still_calls_us(meaning(shared, "Here"))) << meaning(shared, "Here");
    EXPECT_EQ(meaning(shared, "Mine"), "$Sheet1.$A$1+1");
    shared.sheet(0).formula("C1", "=Twice");
    EXPECT_NEAR(number(shared.sheet(0).value("C1")), 2 * boil, 1e-13 * boil);
    EXPECT_EQ(meaning(document, "Boil"), "HEARTHCELL.STOVE.BOILINGPOINT($Sheet1.$A$1)");
}

TEST_F(CopyForSharing, HoldsValuesInConditionalFormats) {
    sheet.number("A1", 1240);
    define(document, "Boil", "STOVE.BOILINGPOINT(1240)");
    add_conditional_format(document, "B1:B9", Comparison::greater, "STOVE.BOILINGPOINT($A$1)");
    add_conditional_format(document, "C3:C9", Comparison::formula_holds, "AND(C1>STOVE.BOILINGPOINT($A$1);C1>A1)");
    add_conditional_format(document, "D1:D9", Comparison::formula_holds, "D1>STOVE.BOILINGPOINT(A1)");
    add_conditional_format(document, "E1:E9", Comparison::formula_holds, "E1>STOVE.BOILINGPOINT(ROW()*100)");
    add_conditional_format(document, "F1:F9", Comparison::greater, "Boil");
    add_conditional_format(document, "G1:G9", Comparison::greater, "$A$1");
    Said const said = command(office_with_package(), document, "copy-for-sharing", copy);
    EXPECT_NE(said.words.find("depends on the cell: 2."), std::string::npos) << said.words;

    auto const before = conditions(document), after = conditions(received());
    ASSERT_EQ(after.size(), 6U);
    double const boil = number(evaluate("=STOVE.BOILINGPOINT(1240)"));
    EXPECT_NEAR(std::stod(after[0]), boil, 1e-13);
    EXPECT_EQ(after[1], "AND(C1>" + after[0] + ",C1>A1)");
    for (std::size_t const same : {4U, 5U})
        EXPECT_EQ(after[same], before[same]);
    for (std::size_t const left : {2U, 3U})
        EXPECT_TRUE(still_calls_us(after[left])) << after[left];
    EXPECT_EQ(before[0], "STOVE.BOILINGPOINT($A$1)");
}

TEST_F(CopyForSharing, HoldsValuesInValidityRules) {
    sheet.number("A1", 1240);
    add_validity(document, "B2:B9", "0", "STOVE.BOILINGPOINT($A$1)");
    add_validity(document, "D2:D4", "C2", "STOVE.BOILINGPOINT($A$1)");
    add_validity(document, "F2:F4", "0", "STOVE.BOILINGPOINT(A1)");
    Said const said = command(office_with_package(), document, "copy-for-sharing", copy);
    EXPECT_NE(said.words.find("depends on the cell: 1."), std::string::npos) << said.words;

    Document const shared = received();
    double const boil = number(evaluate("=STOVE.BOILINGPOINT(1240)"));
    EXPECT_EQ(validity(shared, "B5").first, "0");
    EXPECT_NEAR(std::stod(validity(shared, "B5").second), boil, 1e-13);
    EXPECT_EQ(validity(shared, "D2").first, validity(document, "D2").first); // and still at the side of its cell
    EXPECT_EQ(validity(shared, "D4").first, validity(document, "D4").first);
    EXPECT_EQ(validity(shared, "D4").second, validity(shared, "B5").second);
    EXPECT_TRUE(still_calls_us(validity(shared, "F2").second)) << validity(shared, "F2").second;
}

TEST_F(CopyForSharing, LeavesTheSheetAroundAsItWas) {
    sheet.number("A1", 1240);
    define(document, "Boil", "STOVE.BOILINGPOINT($Sheet1.$A$1)");
    define(document, "Column", "STOVE.BOILINGPOINT(SUM($Sheet1.$A:$A))"); // meets no cell that something is tried in
    share(document);
    Document const shared = received();
    EXPECT_EQ(meaning(shared, "Column"), meaning(shared, "Boil"));
    EXPECT_EQ(shared.sheet(0).values("A1:D4"), sheet.values("A1:D4"));
    EXPECT_EQ(shared.sheet(0).shown("B2"), "");
    EXPECT_EQ(shared.sheets(), 1);
}

TEST(SharingElsewhere, ReadsConditionsAsTheyAreShown) {
    Office office({.package = package(), .locale = "fr-FR", .menus = "fr"});
    Document const document = Document::blank(office);
    document.sheet(0).number("A1", 1240);
    add_conditional_format(document, "B1:B9", Comparison::formula_holds, "SUM(B1;0.5)>STOVE.BOILINGPOINT($A$1)");
    sharing::Frozen const frozen = sharing::freeze(document.model(), "Hearthcell");
    document.hold(frozen.held);
    EXPECT_EQ(frozen.left, 0); // shown with semicolons here, with commas where the office speaks English
    EXPECT_EQ(conditions(document).at(0).find("SUM(B1;0.5)>95.85"), 0U) << conditions(document).at(0);
}

} // namespace hearthcell::tests
