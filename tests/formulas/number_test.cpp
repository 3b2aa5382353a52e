// Which texts are numbers, for formulas, for --set and for what is collected.

#include "extension/formulas/number.hpp"

#include <gtest/gtest.h>

namespace hearthcell::formulas {

TEST(ANumberInText, IsATextThatIsNothingElse) {
    EXPECT_EQ(number_in("5"), 5);
    EXPECT_EQ(number_in("-0.5"), -0.5);
    EXPECT_EQ(number_in("1.25e3"), 1250);
    EXPECT_EQ(number_in("+5"), 5);     // as Calc takes what is typed
    EXPECT_EQ(number_in("1e-400"), 0); // likewise
    for (char const* const text :
         {"", " 5", "5 ", "\t7", "\n5", "nan", "inf", "-inf", "0x1A", "1,000", "1e999", "5 kg"})
        EXPECT_FALSE(number_in(text)) << '\'' << text << '\'';
}

} // namespace hearthcell::formulas
