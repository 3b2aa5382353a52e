// The guide as acceptance test: every example of the catalogue, evaluated and judged by Calc itself.

#include "guide.hpp"

#include "functions/edition.hpp"

#include <set>

namespace hearthcell::tests {
namespace {

std::string whole(double number) {
    return std::to_string(std::size_t(number));
}

} // namespace

TEST_P(FunctionGuide, FindsEveryExampleOfTheCatalogueToAgree) {
    Guide guide(office_with_package(), GetParam());
    std::string const all = std::to_string(checks_in_the_catalogue());
    for (bool const recalculated : {false, true}) {
        if (recalculated)
            guide.recalculate();
        EXPECT_EQ(guide.verdict(), phrase(Word::all_agree, guide.language, all));
        EXPECT_EQ(guide.checks(), double(checks_in_the_catalogue()));
        EXPECT_EQ(guide.agreeing(), guide.checks());
        EXPECT_EQ(guide.status(), phrase(Word::is_installed, guide.language));
    }
    std::vector<Guide::Check> const checks = guide.all_checks();
    EXPECT_EQ(checks.size(), checks_in_the_catalogue());
    for (Guide::Check const& check : checks)
        EXPECT_EQ(check.verdict(), phrase(Word::agrees, guide.language))
            << check.sheet.name() << " " << check.row << ": " << check.sheet.shown(check.address(of_result));
}

TEST_P(FunctionGuide, HoldsNoErrorButWhereAnExampleMustGiveOne) {
    Guide guide(office_with_package(), GetParam());
    for (int place = 0; place < guide.document.sheets(); ++place) {
        Sheet const sheet = guide.document.sheet(place);
        int row = 0;
        for (auto const& cells : sheet.values("A1:BZ1000")) {
            ++row;
            for (std::size_t column = 0; column < cells.size(); ++column)
                if (CellError const* const error = std::get_if<CellError>(&cells[column])) {
                    std::string const sign = *error == not_available  ? "#N/A"
                                             : *error == not_a_result ? "#NUM!"
                                                                      : "#VALUE!";
                    EXPECT_EQ(column, std::size_t(of_result)) << sheet.name() << " " << row;
                    EXPECT_EQ(cells.at(of_expected), CellValue(phrase(Word::an_error, guide.language, sign)))
                        << sheet.name() << " " << row;
                }
        }
    }
}

TEST_P(FunctionGuide, SaysSoWhereAValueIsNotTheOneThatItMustBe) {
    Guide guide(office_with_package(), GetParam());
    std::vector<Guide::Check> checks = guide.all_checks();
    std::size_t spoilt = 0;
    bool number_spoilt = false, text_spoilt = false, error_spoilt = false;
    for (Guide::Check& check : checks) {
        CellValue const& result = check.cells[of_result];
        if (double const* const value = std::get_if<double>(&result); value != nullptr && !number_spoilt) {
            check.sheet.number(check.address(of_expected), *value + 2 * number(check.cells[of_margin]));
            number_spoilt = true;
        } else if (std::holds_alternative<std::string>(result) && !text_spoilt) {
            check.sheet.text(check.address(of_expected), std::get<std::string>(result) + " ");
            text_spoilt = true;
        } else if (std::holds_alternative<CellError>(result) && !error_spoilt) {
            check.sheet.formula(check.address(of_result), "=1/0"); // an error, but of another kind
            error_spoilt = true;
        } else {
            continue;
        }
        ++spoilt;
        guide.recalculate();
        EXPECT_EQ(check.verdict(), phrase(Word::differs, guide.language)) << check.sheet.name() << " " << check.row;
        EXPECT_EQ(guide.agreeing(), guide.checks() - double(spoilt));
        EXPECT_EQ(guide.verdict(),
                  phrase(Word::some_differ, guide.language, std::to_string(spoilt), whole(guide.checks())));
    }
    EXPECT_EQ(spoilt, 3U);
}

TEST_P(FunctionGuide, SaysInWordsThatHearthcellIsMissing) {
    Guide guide(office_without_package(), GetParam());
    guide.recalculate();
    EXPECT_EQ(guide.status(), phrase(Word::is_missing, guide.language));
    EXPECT_EQ(guide.verdict(), phrase(Word::nothing_checked, guide.language));
    EXPECT_EQ(guide.agreeing(), 0);
    std::vector<Guide::Check> const checks = guide.all_checks();
    EXPECT_EQ(checks.size(), checks_in_the_catalogue());
    for (Guide::Check const& check : checks) {
        EXPECT_EQ(check.cells[of_result], CellValue(unknown_name)) << check.sheet.name() << " " << check.row;
        EXPECT_EQ(check.verdict(), phrase(Word::unchecked, guide.language)) << check.sheet.name() << " " << check.row;
    }
}

TEST_P(FunctionGuide, SaysInWordsThatAnotherEditionIsInstalled) {
    Guide guide(office_with_package(), GetParam());
    for (Guide::Check& check : guide.all_checks())
        if (check.cells[of_result] == CellValue(edition) && check.cells[0] == CellValue("STOVE.VERSION()"))
            check.sheet.text(check.address(of_result), "Hearthcell 99");
    guide.recalculate();
    EXPECT_EQ(guide.status(), phrase(Word::is_another_edition, guide.language, edition, "Hearthcell 99"));
    EXPECT_EQ(guide.agreeing(), guide.checks() - 1);
}

TEST(FunctionGuides, AreOfFourLanguages) {
    std::set<std::string> verdicts;
    for (Language const language : languages)
        verdicts.insert(Guide(office_with_package(), language).verdict());
    EXPECT_EQ(verdicts.size(), languages.size());
}

INSTANTIATE_TEST_SUITE_P(In, FunctionGuide, testing::ValuesIn(languages), name_of_language);

} // namespace hearthcell::tests
