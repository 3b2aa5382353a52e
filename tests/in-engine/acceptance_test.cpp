#include "calls.hpp"

#include "functions/explain/explain.hpp"

namespace hearthcell::tests {
namespace {

/// Every element of a block is a check of its own.
std::size_t checks_in_the_catalogue() {
    std::size_t count = 0;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (Example const& example : function.examples)
                count += example.expected.kind == Expected::Kind::block
                             ? example.expected.rows * example.expected.columns
                             : 1;
    return count;
}

TEST(AcceptanceWorkbook, FindsEveryExampleOfTheCatalogueToAgree) {
    Document document = Document::open(office_with_package(), ACCEPTANCE_SHEET);
    document.recalculate();
    Sheet const sheet = document.sheet("Checks");
    EXPECT_EQ(number(sheet.value("B2")), double(checks_in_the_catalogue()));
    EXPECT_EQ(number(sheet.value("B1")), number(sheet.value("B2")));
    int const last = 3 + int(number(sheet.value("B2")));
    for (auto const& row : sheet.shown_rows("A4:H" + std::to_string(last)))
        EXPECT_EQ(row.at(7), "agrees") << row.at(2) << " gives " << row.at(3) << ", must be " << row.at(4);
}

TEST(AcceptanceWorkbook, AgreesWithNothingWhereThePackageIsMissing) {
    Document document = Document::open(office_without_package(), ACCEPTANCE_SHEET);
    document.recalculate();
    EXPECT_EQ(number(document.sheet("Checks").value("B1")), 0);
}

TEST_F(Calc, GivesTheKernelsOwnBitsForEveryExample) {
    Calls calls(sheet);
    std::vector<Call> all;
    std::vector<std::string> formulas;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (Example const& example : function.examples) {
                all.push_back(calls.of(function, example));
                formulas.push_back(all.back().formula());
            }
    std::vector<CellValue> const results = evaluate(formulas);
    for (std::size_t i = 0; i < all.size(); ++i)
        EXPECT_EQ(results[i], all[i].expected()) << formulas[i];
}

TEST_F(Calc, ExplainsEveryExampleInTheKernelsOwnWords) {
    Calls calls(sheet);
    std::vector<std::string> formulas, sentences;
    for (Group const& group : catalogue()) {
        for (Function const& function : group.functions) {
            for (Example const& example : function.examples) {
                Call call = calls.of(function, example);
                call.texts.insert(call.texts.begin(), "\"" + std::string(function.name) + "\"");
                sentences.push_back(function.name == "EXPLAIN" ? "Fine." : explain(function, call.values));
                call.function = find_function("EXPLAIN");
                formulas.push_back(call.formula());
            }
        }
    }
    std::vector<CellValue> const results = evaluate(formulas);
    for (std::size_t i = 0; i < results.size(); ++i)
        EXPECT_EQ(results[i], CellValue(sentences[i])) << formulas[i];
}

} // namespace
} // namespace hearthcell::tests
