#include "calls.hpp"

#include "functions/explain/explain.hpp"

namespace hearthcell::tests {
namespace {

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
                Call const call = calls.of(function, example);
                sentences.push_back(explain(function, call.values));
                formulas.push_back(question_about(call).formula());
            }
        }
    }
    std::vector<CellValue> const results = evaluate(formulas);
    for (std::size_t i = 0; i < results.size(); ++i)
        EXPECT_EQ(results[i], CellValue(sentences[i])) << formulas[i];
}

} // namespace
} // namespace hearthcell::tests
