#include "calc.hpp"

#include "tests/support/content.hpp"

#include <cmath>
#include <regex>

namespace hearthcell::tests {
namespace {

/// A formula of the page, and the number that it shows behind it.
struct Shown {
    std::string formula, number, unit;
};

/// From a line such as
///     =STOVE.WOODENERGY(520; 14%; 18.7)                   8185 kJ
///     | … | `=STOVE.NORMALBOILTIME(31.7; 14.5; 95.85)` gives 29.2 min … |
/// Formulas behind which no number stands, with a unit, are not tried.
std::vector<Shown> shown_in(std::string const& page) {
    std::regex const in_block(R"((?:^|\n)(=STOVE\.[^\n]*\)) +([0-9.]+) (kJ|kW|%|m?g|adults|°C))");
    std::regex const in_text(R"(`(=STOVE\.[^`\n]*)` gives ([0-9.]+) (kJ|kW|%|min))");
    std::vector<Shown> all;
    for (std::regex const& pattern : {in_block, in_text})
        for (std::sregex_iterator at(page.begin(), page.end(), pattern), end; at != end; ++at)
            all.push_back({at->str(1), at->str(2), at->str(3)});
    return all;
}

/// Calc's interface takes formulas as they are saved, where a percentage and a semicolon are what they are on the page.
TEST_F(Calc, GivesWhatTheReadmeShows) {
    sheet.formulas("A2", {{"400", "0.14", "18.7"}, {"150", "0.2", "19.1"}}); // the two fuels of its example
    sheet.formulas("F2",
                   {{"0", "12"}, {"5", "96"}, {"15", "74"}, {"25", "88"}, {"40", "61"}, {"45", "14"}}); // and its hood
    std::vector<Shown> const shown = shown_in(content(README));
    EXPECT_GE(shown.size(), 24U) << "the page is written in another way than this test reads it";
    for (auto const& [formula, digits, unit] : shown) {
        std::size_t const point = digits.find('.');
        double const decimals = point == std::string::npos ? 0 : double(digits.size() - point - 1);
        double const value = number(evaluate(formula)) * (unit == "%" ? 100 : 1);
        EXPECT_LE(std::abs(value - std::stod(digits)), 0.5000001 * std::pow(10, -decimals))
            << formula << " gives " << value;
    }
}

} // namespace
} // namespace hearthcell::tests
