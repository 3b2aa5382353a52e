#include "calc.hpp"

#include <algorithm>
#include <cctype>

namespace hearthcell::tests {
namespace {

std::string each_letter(std::string text, int (*change)(int)) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [change](unsigned char letter) { return static_cast<char>(change(letter)); });
    return text;
}

std::string first_letters_large(std::string text) {
    text = each_letter(text, std::tolower);
    text.at(0) = 'S';
    text.at(text.find('.') + 1) =
        static_cast<char>(std::toupper(static_cast<unsigned char>(text.at(text.find('.') + 1))));
    return text;
}

} // namespace

TEST_F(Calc, KnowsEveryFunctionInEveryLetterCase) {
    std::vector<std::string> const names = office_with_package().functions("STOVE.");
    ASSERT_FALSE(names.empty());
    std::vector<std::string> formulas;
    for (std::string const& name : names)
        for (std::string const& spelling :
             {name, each_letter(name, std::tolower), first_letters_large(name), "s" + name.substr(1)})
            formulas.push_back("=" + spelling + "()");

    // Called without arguments, a function that is known may give anything but an unknown name.
    std::vector<CellValue> const results = evaluate(formulas);
    for (std::size_t index = 0; index < formulas.size(); ++index)
        EXPECT_NE(results[index], CellValue(unknown_name)) << formulas[index];
}

TEST_F(Calc, TakesTheStoredNameToo) {
    auto const results =
        evaluate({"=STOVE.BOILINGPOINT(1240)", "=stove.boilingpoint(1240)", "=Hearthcell.Stove.boilingPoint(1240)"});
    EXPECT_GT(number(results[0]), 90.0);
    EXPECT_EQ(results[1], results[0]);
    EXPECT_EQ(results[2], results[0]);
}

} // namespace hearthcell::tests
