#include "calc.hpp"

#include <bit>
#include <cstdint>

namespace hearthcell::tests {
namespace {

std::vector<std::string> const formulas{"=STOVE.AIRPRESSURE(1830)",
                                        "=STOVE.BOILINGPOINT(2300.5)",
                                        "=STOVE.BOILINGPOINTAT(823.4)",
                                        "=STOVE.WATERHEAT(5000;20.5;95)",
                                        "=STOVE.WATERHEAT(5000;20;95;\"WBT 3\")",
                                        "=STOVE.WATERMASS(2.5;20)",
                                        "=STOVE.DRYMASS(1000;0.12)",
                                        "=STOVE.DRYMASS(1000;12)",
                                        "=STOVE.DRYMASS(\"much\";0.12)",
                                        "=STOVE.FIREPOWER(9000.5;25.25)"};

} // namespace

TEST(Locale, AGermanOfficeGivesTheSameBits) {
    Office german({.package = package(), .locale = "de-DE"});
    Document const document = Document::blank(german);
    Sheet sheet = document.sheet(0);
    sheet.number("A1", 1.5);
    ASSERT_EQ(sheet.shown("A1"), "1,5") << "this office is not German at all";

    auto const here = evaluate(office_with_package(), formulas);
    auto const there = evaluate(german, formulas);
    for (std::size_t index = 0; index < formulas.size(); ++index) {
        ASSERT_EQ(there[index].index(), here[index].index()) << formulas[index];
        if (double const* const value = std::get_if<double>(&here[index]))
            EXPECT_EQ(std::bit_cast<std::uint64_t>(std::get<double>(there[index])),
                      std::bit_cast<std::uint64_t>(*value))
                << formulas[index];
        else
            EXPECT_EQ(there[index], here[index]) << formulas[index];
    }
}

} // namespace hearthcell::tests
