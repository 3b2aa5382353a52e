// Names are the same whatever letter case, accents, blanks, hyphens and apostrophes they are written with.

#include "functions/catalogue/names.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

TEST(SameName, LooksAtLettersOnly) {
    for (char const* const written :
         {"lena dura", "LENA DURA", "le\u00f1a dura", "len\u0303a dura", "lena\tdura", "lena-dura", "lena\u00a0dura",
          "le\u00adna dura", "lena\u2009dura", "lena\u2010dura", "lena\u2013dura", "lena\u202fdura", "lena'dura",
          "lena\u2018dura", "lena\u2019dura", "lena\u0345 dura", "lenadura"})
        EXPECT_TRUE(same_name("le\u00f1a dura", written)) << written;
}

TEST(SameName, TakesNothingElseForAnAccentOrABlank) {
    for (char const* const written :
         {"lena", "lena dura x", "le\u00b5na dura", "le\u0370na dura", "lena\u2026dura", "lena\u20acdura",
          "lena\u00d7dura", "le\u00dfa dura", "lena\xcd dura", "lena\xcc dura", "lena\xc3 dura", "lena\xc3\xc4 dura",
          "lena\xe2\x80 dura", "lena\u200edura", "lena\u2016dura"})
        EXPECT_FALSE(same_name("le\u00f1a dura", written)) << written;
}

} // namespace
} // namespace hearthcell::tests
