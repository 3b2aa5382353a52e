#include "manifest/workbook/formula.hpp"

#include <gtest/gtest.h>

namespace hearthcell::workbook {
namespace {

std::string in_french(std::string_view formula) {
    return rewritten(formula, {{"Runs", "Essais"}, {"Two variants", "Deux variantes d'un foyer"}},
                     [](std::string_view text) { return text == "say \"no\"" ? "dites \"non\"" : std::string(text); });
}

TEST(Formula, NamesSheetsAnewWhereTheyAreReferredTo) {
    EXPECT_EQ(in_french("of:=[Runs.A1]+[$Runs.$B$2:.C3]"), "of:=['Essais'.A1]+[$'Essais'.$B$2:.C3]");
    EXPECT_EQ(in_french("of:=['Two variants'.A1]"), "of:=['Deux variantes d''un foyer'.A1]");
    EXPECT_EQ(in_french("#Runs.A1"), "#'Essais'.A1");
}

TEST(Formula, LeavesOtherNamesAlone) {
    EXPECT_EQ(in_french("of:=RunsNeeded+Runs+[.Runs1]+[OldRuns.A1]"), "of:=RunsNeeded+Runs+[.Runs1]+[OldRuns.A1]");
    EXPECT_EQ(in_french("of:=[Läufe.A1]"), "of:=[Läufe.A1]");
}

TEST(Formula, TranslatesTextsBetweenQuotesAndNothingElse) {
    EXPECT_EQ(in_french(R"(of:=IF([.A1]="";"say ""no""";"Runs.A1"))"), R"(of:=IF([.A1]="";"dites ""non""";"Runs.A1"))");
}

} // namespace
} // namespace hearthcell::workbook
