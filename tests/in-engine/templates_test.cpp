// The template workbooks as people get them: every one that is built, in every language.

#include "templates.hpp"

#include "extension/demonstration/demo_data.hpp"
#include "extension/office/templates.hpp"
#include "functions/edition.hpp"

#include <algorithm>

namespace hearthcell::tests {
namespace {

/// A template in a language.
class Template : public testing::TestWithParam<std::tuple<std::string_view, std::string>> {
protected:
    [[nodiscard]] std::string_view language() const { return std::get<0>(GetParam()); }
    [[nodiscard]] std::string name() const { return std::get<1>(GetParam()); }
    [[nodiscard]] std::string in_language(std::string const& english) const {
        return said(english, language(), name());
    }
    [[nodiscard]] Document open(Office& office = office_with_package()) const {
        return Document::open(office, template_file(language(), name()), office::Access::read_write);
    }
    [[nodiscard]] bool has_data() const { return std::filesystem::exists(demo_data(name())); }
};

std::string name_of(testing::TestParamInfo<Template::ParamType> const& info) {
    std::string name = std::get<1>(info.param) + "_" + std::string(std::get<0>(info.param));
    std::ranges::replace(name, '-', '_');
    return name;
}

INSTANTIATE_TEST_SUITE_P(All, Template,
                         testing::Combine(testing::ValuesIn(template_languages), testing::ValuesIn(template_names())),
                         name_of);

void expect_no_errors(Document const& workbook, char const* when) {
    for (int sheet = 0; sheet < workbook.sheets(); ++sheet)
        EXPECT_EQ(errors_on(workbook, sheet), "") << when << ", on " << workbook.sheet(sheet).name();
}

void expect_a_page_a_sheet(Document& workbook, std::string const& name) {
    auto const pdf = scratch_folder() / (name + ".pdf");
    workbook.save(pdf);
    EXPECT_EQ(pages_of(pdf), workbook.sheets());
    std::filesystem::remove(pdf);
}

TEST_P(Template, ShowsNoErrorAndOnePageASheetWhileItIsEmpty) {
    Document workbook = open();
    workbook.recalculate();
    expect_no_errors(workbook, "empty");
    for (int sheet = 0; sheet < workbook.sheets(); ++sheet)
        EXPECT_EQ(workbook.sheet(sheet).shown("A3"), edition + in_language(" is active."));
    expect_a_page_a_sheet(workbook, name());
}

TEST_P(Template, ShowsNoErrorAndOnePageASheetWithTheDataOfTheDemonstration) {
    if (!has_data())
        GTEST_SKIP() << "no data for the demonstration of " << name();
    Document workbook = open();
    fill(workbook, demo_data(name()));
    workbook.recalculate();
    expect_no_errors(workbook, "filled");
    expect_a_page_a_sheet(workbook, name());
}

TEST_P(Template, IsLockedWithoutAPasswordButForItsInputsWhichSayWhatTheyTake) {
    Document const workbook = open();
    for (int sheet = 0; sheet < workbook.sheets(); ++sheet)
        EXPECT_EQ(faults_of_protection(workbook, sheet), "") << workbook.sheet(sheet).name();
}

TEST_P(Template, SaysEveryTextInItsLanguage) {
    auto const english = read_texts(Document::open(office_with_package(), template_file("en", name())));
    auto const here = read_texts(open());
    ASSERT_EQ(here.size(), english.size());
    for (std::size_t place = 0; place < here.size(); ++place)
        EXPECT_EQ(here[place].text, in_language(english[place].text)) << here[place].where;
}

TEST_P(Template, PrintsTheCautionsAtTheFootOfEachSheet) {
    Document const workbook = open();
    for (int sheet = 0; sheet < workbook.sheets(); ++sheet) {
        std::string const footer = footer_of(workbook, sheet);
        for (std::string const caution :
             {"Cautions: fire, scalding water and carbon monoxide injure and kill. Test outdoors or under a hood that "
              "draws, never alone, with a carbon monoxide alarm at head height and sand or an extinguisher at hand. "
              "Headache or dizziness: stop and get into fresh air.",
              "Gloves, closed shoes, no synthetic clothes, no petrol or paraffin on a live fire. Stand the scale "
              "beside "
              "the stove instead of carrying a boiling pot. Char lights up again by itself: keep it in a metal bucket "
              "with a lid. Local codes, the makers’ instructions and licensed practice come before this sheet."})
            EXPECT_NE(footer.find(in_language(caution)), std::string::npos) << footer;
    }
}

TEST_P(Template, SaysThatHearthcellIsMissing) {
    Document workbook = open(office_without_package());
    workbook.recalculate();
    for (int sheet = 0; sheet < workbook.sheets(); ++sheet)
        EXPECT_EQ(workbook.sheet(sheet).shown("A3"),
                  in_language("Hearthcell is missing: nothing is worked out here, and cells show #NAME?. Install it "
                              "and open this sheet again, or ask for a copy for sharing."));
}

TEST_P(Template, SaysThatItWasMadeForAnotherEdition) {
    Document const workbook = open();
    Sheet sheet = workbook.sheet(0);
    std::string formula = sheet.formula("A3");
    for (std::size_t at = formula.find(edition); at != std::string::npos; at = formula.find(edition, at + 1))
        formula.replace(at, std::string_view(edition).size(), "Hearthcell 99");
    ASSERT_EQ(faults_of_protection(workbook, 0), ""); // lifts it
    sheet.formula("A3", formula);
    EXPECT_EQ(sheet.shown("A3"), edition + in_language(" is active, but this sheet was made for ") + "Hearthcell 99" +
                                     in_language(": results may differ."));
}

/// A template of the project itself, in each language.
class InEachLanguage : public testing::TestWithParam<std::string_view> {
protected:
    [[nodiscard]] static Document filled(std::string const& name) {
        Document workbook =
            Document::open(office_with_package(), template_file(GetParam(), name), office::Access::read_write);
        fill(workbook, demo_data(name));
        workbook.recalculate();
        return workbook;
    }
};

INSTANTIATE_TEST_SUITE_P(Templates, InEachLanguage, testing::ValuesIn(template_languages),
                         [](auto const& tested) { return std::string(tested.param); });

// Computed apart from the five runs: IAPWS SR6-08 and IAPWS-IF97 by iapws 1.5.3, the altimeter's column by hand.
TEST_P(InEachLanguage, TheBenchRecordGivesTheMeansOfItsRuns) {
    Document const workbook = filled("bench-record");
    EXPECT_NEAR(number_named(workbook, "boiling_point"), 95.9264, 1e-4);
    EXPECT_NEAR(number_named(workbook, "efficiency"), 0.2424457, 1e-5); // two formulations of the latent heat
    EXPECT_NEAR(number_named(workbook, "boil_time"), 28.1, 1e-6);       // (28 1/3 + 27 2/3 + 28 5/6 + 28 1/6 + 27.5)/5
    EXPECT_NEAR(number_named(workbook, "specific_fuel"), 105.56429, 1e-5);
    EXPECT_EQ(workbook.sheet(1).shown("F33"), "nothing to remark");
}

TEST_P(InEachLanguage, TheFireOfTheBenchRecordIsTheOneThatItsEfficiencyCounts) {
    // One definition of the fire: whatever the method counts of the char, efficiency × firepower is the cooking power.
    Document const workbook = filled("bench-record");
    for (char const* const method : {"properties", "ISO 19867-1", "WBT 4.2.3", "WBT 3"}) {
        workbook.sheet(0).text("L6", method);
        Sheet const results = workbook.sheet(2);
        for (int row = 8; row <= 12; ++row) {
            std::string const at = std::to_string(row);
            double const efficiency = number(results.value("G" + at)), fire = number(results.value("H" + at));
            EXPECT_NEAR(efficiency * fire, number(results.value("I" + at)), 1e-12) << method << ", row " << row;
            if (std::string_view(method) != "ISO 19867-1") { // which defines no equivalent dry fuel
                EXPECT_NEAR(number(results.value("J" + at)),
                            number(results.value("K" + at)) / number(results.value("C" + at)), 1e-9);
            }
        }
    }
}

TEST_P(InEachLanguage, TheBoilingPointMeasuredThatDayGoesBeforeTheComputedOne) {
    Document const workbook = filled("bench-record");
    workbook.sheet(0).number("C12", 95.6);
    EXPECT_EQ(number_named(workbook, "boiling_point"), 95.6);
    EXPECT_EQ(workbook.sheet(0).shown("A14"),
              said("The boiling point measured that day is used.", GetParam(), "bench-record"));
    workbook.sheet(0).text("C9", ""); // no altitude is needed then
    EXPECT_EQ(number_named(workbook, "boiling_point"), 95.6);
    EXPECT_GT(number_named(workbook, "efficiency"), 0.2);
}

TEST_P(InEachLanguage, TheTypedBoilIsTheResultAndTheLogItsCheck) {
    Document const workbook = filled("bench-record");
    Sheet const heating = workbook.sheet(1);
    for (std::string const run : {"33", "34", "35"}) {
        double const log = number(heating.value("C" + run)), typed = number(heating.value("E" + run));
        double const uncertainty = number(heating.value("D" + run));
        EXPECT_GT(uncertainty, 0.03) << run;
        EXPECT_LT(uncertainty, 0.5) << run;
        EXPECT_LT(std::abs(log - typed), 2 * uncertainty + 0.5) << run;
    }
    workbook.sheet(0).text("K18", "26:00");
    EXPECT_EQ(heating.shown("F33"),
              said("The boil of the log and the typed one lie further apart than the log leaves in "
                   "doubt: check both.",
                   GetParam(), "bench-record"));
    EXPECT_NEAR(number(workbook.sheet(2).value("B8")), 26, 1e-9);
}

TEST_P(InEachLanguage, ARunOfTheBenchRecordSaysWhatIsMissing) {
    Document const workbook = filled("bench-record");
    Sheet sheet = workbook.sheet(0);
    auto const in_language = [](std::string const& text) { return said(text, GetParam(), "bench-record"); };
    sheet.text("I18", "");
    EXPECT_EQ(sheet.shown("B30"),
              in_language("Not yet: char not weighed. This method can do without it: type 0, and none "
                          "is credited."));
    EXPECT_EQ(sheet.shown("M18"), "10/11");
    EXPECT_EQ(workbook.sheet(2).shown("G8"), "");

    sheet.text("C19", "4,3 kg");
    EXPECT_EQ(sheet.shown("B31"),
              in_language("pot and water at start") + ": " + in_language("a number is needed, not a text."));
    EXPECT_EQ(workbook.sheet(2).shown("G9"), "");

    sheet.text("C9", ""); // the altitude
    EXPECT_EQ(sheet.shown("A14"), in_language("Missing: the altitude, or the pressure read at the place."));
    EXPECT_EQ(sheet.shown("B32"),
              in_language("The readings are all there, but stove, place, fuel or settings above are "
                          "not filled yet."));
    sheet.text("C9", "high up");
    EXPECT_EQ(sheet.shown("A14"), in_language("Altitude and pressures: a number is needed, not a text."));
    EXPECT_EQ(errors_on(workbook, 0) + errors_on(workbook, 2), "");
}

TEST_P(InEachLanguage, ATimeThatCannotBeReadStaysAnErrorAndIsExplained) {
    Document const workbook = filled("bench-record");
    Sheet sheet = workbook.sheet(0);
    sheet.text("K18", "1:75");
    EXPECT_EQ(workbook.sheet(2).value("B8"), CellValue(not_a_result));
    EXPECT_EQ(sheet.shown("B30"), "time is \"1:75\", but minutes and seconds that follow a larger unit end at 59.");
}

TEST_P(InEachLanguage, ABoilThatIsOddIsSaidToBeSo) {
    Document const workbook = filled("bench-record");
    Sheet sheet = workbook.sheet(0);
    sheet.text("K18", "0:30");
    EXPECT_NE(sheet.shown("B30").find("Odd: a boil within 3 minutes"), std::string::npos) << sheet.shown("B30");
    sheet.text("K18", "31:40"); // the fire was out after 30:00
    EXPECT_EQ(sheet.shown("B30"),
              said("The boil began after the fire was out: check both times.", GetParam(), "bench-record"));
}

TEST_P(InEachLanguage, ALogOfTheBenchRecordSaysWhatIsMissing) {
    Document const workbook = filled("bench-record");
    Sheet sheet = workbook.sheet(1);
    auto const in_language = [](std::string const& text) { return said(text, GetParam(), "bench-record"); };
    sheet.text("A9", "");
    EXPECT_EQ(sheet.shown("F33"), in_language("Missing: the time of a temperature."));
    sheet.text("B10", "hot");
    EXPECT_EQ(sheet.shown("F33"), in_language("A temperature is a text: a number is needed."));
    EXPECT_EQ(errors_on(workbook, 1), "");
}

TEST(Templates, AreOfferedByTheTemplateManagerInAGroupForEachLanguage) {
    std::vector<std::string> offered, built;
    for (office::OfferedTemplate const& entry : office::offered_templates(office_with_package(), "Hearthcell"))
        offered.push_back(entry.group + "/" + entry.file);
    for (std::string_view const language : template_languages)
        for (std::string const& name : template_names())
            built.push_back((language == "en" ? "Hearthcell" : "Hearthcell (" + std::string(language) + ")") + "/" +
                            name);
    std::ranges::sort(built);
    std::ranges::sort(offered);
    EXPECT_EQ(offered, built);
}

} // namespace
} // namespace hearthcell::tests
