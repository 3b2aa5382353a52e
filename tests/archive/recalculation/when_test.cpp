// Years in the names of folders, and days.

#include "extension/archive/recalculation/when.hpp"

#include <gtest/gtest.h>

namespace hearthcell::archive {

TEST(AYear, IsTheOneOfTheInnermostFolderThatHasOne) {
    EXPECT_EQ(year_of("2019/run.ods"), 2019);
    EXPECT_EQ(year_of("archive 2010-2020/tests 2017-03/site/run 2021.ods"), 2017);
    EXPECT_EQ(year_of("run 2019.ods"), std::nullopt) << "a folder's, not the file's";
    EXPECT_EQ(year_of("stove 20190/12019/run.ods"), std::nullopt) << "four digits, no more";
    EXPECT_EQ(year_of("1899/2100/run.ods"), std::nullopt);
}

TEST(AFolderOrYear, IsTheOutermostFolderWhereThereIsNoYear) {
    EXPECT_EQ(folder_or_year("site/old/run.ods"), "site");
    EXPECT_EQ(folder_or_year("site/2018/run.ods"), "2018");
    EXPECT_EQ(folder_or_year("run.ods"), "(no folder)");
}

TEST(ADay, IsReadAndWrittenAsTheSame) {
    for (char const* text :
         {"1899-12-30", "1900-03-01", "2000-02-29", "2024-12-31", "2021-06-01 00:01", "2021-06-01 23:59"})
        EXPECT_EQ(written_day(day_in(text).value()), text);
    EXPECT_EQ(day_in("2000-01-01"), 36526) << "as Calc shows it: by hand, from its documentation's day 0, 1899-12-30";
    EXPECT_EQ(day_in("2000-01-01T12:00:00"), 36526.5);
}

TEST(ADay, IsNotWhatOnlyLooksLikeOne) {
    for (char const* text : {"", "2021", "2021-02-30", "2021-13-01", "2021-6-1", "05.03.2021", "2021-06-01x",
                             "2021-06-01 24:00", "2021-06-01 1:00", "12021-06-01", "36526"})
        EXPECT_EQ(day_in(text), std::nullopt) << text;
}

} // namespace hearthcell::archive
