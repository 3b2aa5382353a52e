// Uncertainty of a part of a result, by the word that names it.

#include "support/asking.hpp"

namespace hearthcell::tests {
namespace {

std::string const balance = "CARBONBALANCE", room = "ROOMCONCENTRATION";

Value fire(Value part) {
    return column({189.6, 9000.0, 380.0, 450.0, 2.0, std::move(part)});
}
Value const doubts_of_fire = column({2.0, 90.0, 4.0, 10.0, 1.0, empty});
Value kitchen(Value part) {
    return column({9.5, 24.0, 10.0, 60.0, 0.04, empty, std::move(part)});
}
Value const doubts_of_kitchen = column({0.4, 1.0, 2.0, 1.0, 0.005, empty, empty});

TEST(UncertaintyOfAPart, IsThatOfTheOneNamed) {
    // Central differences of the equations, in Python.
    EXPECT_NEAR(number(ask("UNCERTAINTY", {balance, fire(std::string("CO")), doubts_of_fire})), 0.33657890, 1e-7);
    EXPECT_NEAR(
        number(ask("UNCERTAINTY", {balance, fire(std::string("rendement de combustion modifié")), doubts_of_fire})),
        0.00061644661, 1e-10);
    EXPECT_NEAR(number(ask("UNCERTAINTY", {room, kitchen(std::string("mean")), doubts_of_kitchen})), 0.40061529, 1e-7);
    EXPECT_NEAR(number(ask("UNCERTAINTY", {room, kitchen(std::string("in the long run")), doubts_of_kitchen})),
                0.49542179, 1e-7);
}

TEST(UncertaintyOfAPart, IsThatOfTheFirstWhereNoneIsNamed) {
    double const first = number(ask("UNCERTAINTY", {balance, fire(std::string("CO2")), doubts_of_fire}));
    EXPECT_EQ(number(ask("UNCERTAINTY", {balance, fire(empty), doubts_of_fire})), first);
    EXPECT_EQ(number(ask("UNCERTAINTY", {balance, fire(0.0), doubts_of_fire})), first); // an empty cell
}

TEST(UncertaintyOfAPart, IsNoneOfAllOrOfWhatIsNoPart) {
    EXPECT_EQ(failure_in(ask("UNCERTAINTY", {balance, fire(std::string("all")), doubts_of_fire})).reason,
              Reason::unknown_name);
    EXPECT_EQ(failure_in(ask("UNCERTAINTY", {balance, fire(std::string("soot")), doubts_of_fire})).reason,
              Reason::unknown_name);
    EXPECT_EQ(failure_in(ask("UNCERTAINTY", {balance, fire(7.0), doubts_of_fire})).reason, Reason::number_for_text);
    EXPECT_EQ(
        failure_in(ask("UNCERTAINTY", {balance, column({189.6, 450.0, 380.0, 9000.0}), column({2.0, 10.0, 4.0, 90.0})}))
            .reason,
        Reason::background_above_reading);
}

TEST(UncertaintyOfAPart, IsExplainedInTheUnitOfThatPart) {
    std::string const of_gas = explained("UNCERTAINTY", {balance, fire(std::string("CO")), doubts_of_fire});
    EXPECT_NE(
        of_gas.find("STOVE.CARBONBALANCE gives 18.7202 g with these values; the standard uncertainty is 0.336579 g"),
        std::string::npos)
        << of_gas;
    std::string const of_room = explained("MONTECARLO", {room, kitchen(std::string("mean")), doubts_of_kitchen});
    EXPECT_NE(of_room.find("0.400615 mg/m³"), std::string::npos) << of_room;
    EXPECT_NE(of_room.find("share entering 1"), std::string::npos) << of_room; // left out, and so exactly known
}

TEST(ExplainUncertainty, NamesADefaultThatIsNoRowOfATable) {
    std::string const sentence = explained("UNCERTAINTY", {std::string("FUELCARBON"), column({447.2}), column({2.0})});
    EXPECT_NE(sentence.find("carbon share 0.5; net char 0 g; char carbon share 0.85"), std::string::npos) << sentence;
}

} // namespace
} // namespace hearthcell::tests
