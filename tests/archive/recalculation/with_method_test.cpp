// Formulas whose calls are given another method.

#include "extension/archive/recalculation/with_method.hpp"
#include "extension/formulas/our_functions.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests::archive {

using hearthcell::archive::methods;
using hearthcell::archive::place_of_method;
using hearthcell::archive::with_method;

TEST(WithMethod, KnowsTheMethodsOfTheCatalogue) {
    int functions = 0;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            if (auto const place = place_of_method(function)) {
                ++functions;
                std::vector<std::string_view> names;
                for (std::string_view const name : function.arguments[*place].choices)
                    names.push_back(name);
                EXPECT_EQ(names, std::vector<std::string_view>(methods.begin(), methods.end())) << function.name;
            }
    EXPECT_GT(functions, 5);
}

TEST(WithMethod, IsPutWhereTheArgumentStandsOrWouldStand) {
    std::map<std::string, std::string> const expected{
        {"=STOVE.USEFULHEAT(A1;B1;C1)", "=STOVE.USEFULHEAT(A1;B1;C1;\"WBT 3\")"},
        {"=STOVE.USEFULHEAT(A1; B1; C1;; D1)", "=STOVE.USEFULHEAT(A1; B1; C1;\"WBT 3\"; D1)"},
        {"=STOVE.USEFULHEAT(A1;B1;C1;Site.B9 & \"\";D1)", "=STOVE.USEFULHEAT(A1;B1;C1;\"WBT 3\";D1)"},
        {"=HEARTHCELL.STOVE.USEFULHEAT(SUM(A1;A2);B1;C1;)*2",
         "=HEARTHCELL.STOVE.USEFULHEAT(SUM(A1;A2);B1;C1;\"WBT 3\")*2"},
        {"=STOVE.BENCHEFFICIENCY(1;2;3;4;5;6;7;8)", "=STOVE.BENCHEFFICIENCY(1;2;3;4;5;6;7;8;;\"WBT 3\")"},
        {"=STOVE.EFFICIENCY(STOVE.USEFULHEAT(1;2;3);STOVE.WOODENERGY(4;5;6;\"properties\"))",
         "=STOVE.EFFICIENCY(STOVE.USEFULHEAT(1;2;3;\"WBT 3\");STOVE.WOODENERGY(4;5;6;\"WBT 3\"))"},
        {"=SUM(STOVE.EACHROW(\"waterheat\";A1:A9;B1:B9;C1:C9))",
         "=SUM(STOVE.EACHROW(\"waterheat\";A1:A9;B1:B9;C1:C9;\"WBT 3\"))"}};
    for (auto const& [formula, other] : expected)
        EXPECT_EQ(with_method(formula, "WBT 3"), other) << formula;
}

TEST(WithMethod, LeavesAloneWhatTakesNone) {
    for (char const* formula : {"=STOVE.BOILINGPOINT(1240)", "=USEFULHEAT(1;2;3)", "=\"STOVE.USEFULHEAT(1;2;3)\"",
                                "=A1+1", "=STOVE.USEFULHEAT(1;2", "=STOVE.EACHROW(A1;B1:B9)", "=STOVE.NOSUCH(1)", ""})
        EXPECT_EQ(with_method(formula, "WBT 3"), std::nullopt) << formula;
}

} // namespace hearthcell::tests::archive
