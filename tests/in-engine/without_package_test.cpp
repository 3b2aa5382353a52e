#include "calc.hpp"

namespace hearthcell::tests {

TEST(WithoutThePackage, CalcKnowsNoStoveFunction) {
    EXPECT_TRUE(office_without_package().functions("STOVE.").empty());
    EXPECT_EQ(evaluate(office_without_package(), {"=STOVE.BOILINGPOINT(0)"}).at(0), CellValue(unknown_name));
}

TEST(WithThePackage, CalcOffersTheStoveFunctions) {
    EXPECT_FALSE(office_with_package().functions("STOVE.").empty());
    // IAPWS R7-97, region 4, at 101.325 kPa
    EXPECT_NEAR(number(evaluate(office_with_package(), {"=STOVE.BOILINGPOINT(0)"}).at(0)), 99.974, 0.001);
}

} // namespace hearthcell::tests
