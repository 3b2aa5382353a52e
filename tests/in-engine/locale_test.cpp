// Results must not depend on the language and number format of the office or of the process.

#include "calls.hpp"

#include "functions/explain/explain.hpp"

namespace hearthcell::tests {

TEST(Locale, AGermanOfficeGivesTheKernelsBitsAndWordsForEveryExample) {
    Office german({.package = package(), .locale = "de-DE"});
    Document const document = Document::blank(german);
    Sheet sheet = document.sheet(0);
    sheet.number("A1", 1.5);
    ASSERT_EQ(sheet.shown("A1"), "1,5") << "this office is not German at all";

    Calls calls(sheet);
    auto const result_of = [&sheet](std::string const& formula) {
        sheet.formula("A1", formula);
        return sheet.value("A1");
    };
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (Example const& example : function.examples) {
                Call const call = calls.of(function, example);
                std::string const question = question_about(call).formula();
                EXPECT_EQ(result_of(call.formula()), call.expected()) << call.formula();
                EXPECT_EQ(result_of(question), CellValue(explain(function, call.values))) << question;
            }
}

} // namespace hearthcell::tests
