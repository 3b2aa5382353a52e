// 'May I empty the pot?': what the bench record answers while pot and char can still be weighed, in each language.

#include "bench_record.hpp"

namespace hearthcell::tests {
namespace {

class MayIEmptyThePot : public BenchRecord {
protected:
    MayIEmptyThePot() {
        fill_in();
        workbook.follow_typing(false);
        stove.text("L12", stove.choices("L12").at(0)); // a boil, which needs no level
        type("start or level", "");
        for (char const* const name : {"air", "pot empty, with lid and probe", "pot and water at start", "water start",
                                       "wood laid out", "char tray empty", "boil began", "fire out", "water end",
                                       "pot and water at end", "wood left", "char and tray"})
            type(name, "");
        workbook.follow_typing(true);
    }

    /// A run typed reading by reading, as it goes on, on the site and with the fuel of the demonstration. The tests'
    /// office writes numbers the English way, as every office its own.
    void type(std::string const& name, double value) { bench.number(reading(name, 6), value); }
    void type(std::string const& name, char const* text) { bench.text(reading(name, 6), text); }
    void type_until_lit() {
        workbook.follow_typing(false);
        type("pot empty, with lid and probe", 745);
        type("pot and water at start", 4345);
        type("water start", 14.5);
        type("wood laid out", 940);
        type("air", 15.5);
        workbook.follow_typing(true);
    }
    void type_the_char(double grams) {
        type("char tray empty", 310);
        type("char and tray", 310 + grams);
    }
    void type_the_end() {
        workbook.follow_typing(false);
        type("boil began", "28:20");
        type("fire out", "30:00");
        type("water end", 95.5);
        type("pot and water at end", 4150);
        type("wood left", 428);
        workbook.follow_typing(true);
    }
};

INSTANTIATE_TEST_SUITE_P(Templates, MayIEmptyThePot, testing::ValuesIn(template_languages),
                         [](auto const& tested) { return std::string(tested.param); });

TEST_P(MayIEmptyThePot, SaysNothingOfARunThatHasNotBegun) {
    EXPECT_EQ(answer(6), "");
}

TEST_P(MayIEmptyThePot, NamesWhatIsMissingInTheOrderOfTheBench) {
    auto const misses = [](std::string const& name) {
        return said_here("Not yet. ") + said_here("Missing: ") + said_here(name) + ".";
    };
    type("air", 15.5);
    EXPECT_EQ(answer(6), misses("pot empty, with lid and probe"));
    type("pot empty, with lid and probe", 745);
    EXPECT_EQ(answer(6), misses("pot and water at start"));
    type_until_lit();
    EXPECT_EQ(answer(6), misses("boil began"));
    type("boil began", "28:20");
    EXPECT_EQ(answer(6), misses("fire out"));
    type("fire out", "30:00");
    EXPECT_EQ(answer(6), misses("water end"));
    type("water end", 95.5);
    EXPECT_EQ(answer(6), misses("pot and water at end"));
    type("pot and water at end", 4150);
    type("wood left", 428);
    type("char and tray", 346);
    EXPECT_EQ(answer(6), misses("char tray empty"));
    stove.text("L12", stove.choices("L12").at(1)); // with a simmer, so that a run has to say which it is
    EXPECT_EQ(answer(6), misses("start or level"));
    no_errors();
}

TEST_P(MayIEmptyThePot, AsksForTheCharWhereTheMethodNeedsIt) {
    type_until_lit();
    type_the_end();
    for (char const* const method : {"WBT 4.2.3", "WBT 3"}) {
        use(method);
        EXPECT_EQ(answer(6), said_here("Not yet: char not weighed, and this method needs it.")) << method;
    }
    for (char const* const method : {"properties", "ISO 19867-1"}) {
        use(method);
        EXPECT_EQ(answer(6), said_here("All there; you may empty it. No char was weighed: none is credited."))
            << method;
    }
}

TEST_P(MayIEmptyThePot, LetsItGoWhenAllIsThereByEachMethod) {
    type_until_lit();
    type_the_end();
    type_the_char(36);
    for (char const* const method : methods) {
        use(method);
        for (int const run : {1, 2, 3, 4, 5, 6})
            EXPECT_EQ(answer(run), said_here("All there; you may empty it.")) << method << ", run " << run;
    }
}

// At 1240 m and 1016 hPa the water took up 1.22 MJ until it boiled, after 28 min; in the two minutes that the same fire
// burned on it cannot have carried off 1.3 kg as steam, which is 2.9 MJ.
TEST_P(MayIEmptyThePot, SendsThePotBackToTheScaleWhenTooMuchIsGone) {
    type_until_lit();
    type("boil began", "19:40");
    type("fire out", "22:00");
    type("pot and water at end", 3045);
    EXPECT_EQ(answer(6), sentence("Weigh the pot again: {1} kg gone in {2} min is too much.", {"1.3", "22"}));
    type("pot and water at end", 4150);
    EXPECT_EQ(answer(6), said_here("Not yet. ") + said_here("Missing: ") + said_here("water end") + ".");
    type("boil began", "");
    type("fire out", "");
    type("pot and water at end", 2745); // without a time only what is above four tenths
    EXPECT_EQ(answer(6), sentence("Weigh the pot again: {1} kg gone of {2} kg is too much.", {"1.6", "3.6"}));
    type("start or level", bench.choices("C9").at(3).c_str()); // at a power level any share may go, but for the wood
    EXPECT_EQ(answer(6), said_here("Not yet. ") + said_here("Missing: ") + said_here("fire out") + ".");
    type("wood laid out", 200); // 172 g dry are 3.2 MJ, and 1.6 kg of steam 3.6 MJ
    EXPECT_EQ(answer(6), sentence("Weigh the pot again: {1} kg gone is more than the wood can boil off.", {"1.6"}));
}

TEST_P(MayIEmptyThePot, SeesWeighingsThatCannotBe) {
    type_until_lit();
    type_the_end();
    type_the_char(36);
    type("pot and water at end", 4400);
    EXPECT_EQ(answer(6), sentence("Weigh the pot again: it is {1} g heavier than at the start.", {"55"}));
    type("pot and water at end", 700);
    EXPECT_EQ(answer(6), said_here("Weigh the pot again: it is no heavier than the empty pot."));
    type("pot and water at end", 4150);
    type("wood left", 940);
    EXPECT_EQ(answer(6), said_here("Weigh the wood again: as much is left as was laid out."));
    type("wood left", 428);
    type_the_char(360); // of 512 g at 13.8 %, which are 441 g dry
    EXPECT_EQ(answer(6), sentence("Weigh the char again: {1} g from {2} g of dry wood is too much.", {"360", "441"}));
    type("char and tray", "some");
    EXPECT_EQ(answer(6), said_here("char and tray") + ": " + said_here("a number is needed, not a text."));
    no_errors();
}

TEST_P(MayIEmptyThePot, SeesTemperaturesThatCannotBe) {
    type_until_lit();
    type_the_end();
    type_the_char(36);
    type("water end", 14);
    EXPECT_EQ(answer(6), said_here("Read the water again: it is colder at the end than at the start."));
    type("water end", 98);
    EXPECT_EQ(answer(6),
              sentence("Read the water again: {1} °C is {2} K above the boiling point of the place.", {"98.0", "2.1"}));
}

TEST_P(MayIEmptyThePot, ShowsWhatExplainFindsOddInACompleteRun) {
    type_until_lit();
    type_the_end();
    type_the_char(36);
    type("boil began", "2:10");
    type("fire out", "4:00");
    EXPECT_EQ(answer(6).find(said_here("Look again before you empty it. ") + said_here("Odd:")), 0U) << answer(6);
    stove.text("C9", ""); // the altitude
    EXPECT_EQ(answer(6), said_here("The readings are all there, but stove, place, fuel or settings on the first sheet "
                                   "are not filled yet."));
}

} // namespace
} // namespace hearthcell::tests
