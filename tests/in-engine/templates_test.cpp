// The template workbooks as people get them: every one that is built, in every language.

#include "templates.hpp"

#include "extension/demonstration/demo_data.hpp"
#include "extension/office/templates.hpp"
#include "functions/edition.hpp"

#include <algorithm>
#include <map>

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
        if (has_formulas(workbook, sheet)) {
            EXPECT_EQ(workbook.sheet(sheet).shown("A3"), edition + in_language(" is active."));
        }
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

/// Read once for all languages, since each is held against it.
std::vector<ReadText> const& english_texts(std::string const& name) {
    static std::map<std::string, std::vector<ReadText>> all;
    auto const [texts, is_new] = all.try_emplace(name);
    if (is_new)
        texts->second = read_texts(Document::open(office_with_package(), template_file("en", name)));
    return texts->second;
}

TEST_P(Template, SaysEveryTextInItsLanguage) {
    auto const& english = english_texts(name());
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
        if (has_formulas(workbook, sheet)) {
            EXPECT_EQ(
                workbook.sheet(sheet).shown("A3"),
                in_language("Hearthcell is missing: nothing is worked out here, and cells show #NAME?. Install it "
                            "and open this sheet again, or ask for a copy for sharing."));
        }
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

TEST(Templates, AreOfferedByTheTemplateManagerInAGroupForEachLanguage) {
    std::vector<std::string> offered, built;
    for (office::OfferedTemplate const& entry : office::offered_templates(office_with_package(), "Hearthcell"))
        offered.push_back(entry.group + "/" + entry.file);
    for (std::string const language : {"English", "français", "español", "Kiswahili"}) {
        std::string const group = "Hearthcell (" + language + ")";
        for (std::string const& name : template_names())
            built.push_back(group + "/" + name);
        built.push_back(group + "/function-guide");
    }
    std::ranges::sort(built);
    std::ranges::sort(offered);
    EXPECT_EQ(offered, built);
}

} // namespace
} // namespace hearthcell::tests
