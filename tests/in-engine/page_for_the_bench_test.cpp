// The page for the bench: printed, it is one run, in the order in which the record takes it.

#include "bench_record.hpp"

namespace hearthcell::tests {
namespace {

using ThePageForTheBench = BenchRecord;
constexpr int page = 1; // its place among the sheets

INSTANTIATE_TEST_SUITE_P(Templates, ThePageForTheBench, testing::ValuesIn(template_languages),
                         [](auto const& tested) { return std::string(tested.param); });

TEST_P(ThePageForTheBench, WorksNothingOut) {
    EXPECT_FALSE(has_formulas(workbook, page));
}

TEST_P(ThePageForTheBench, HasEightTwelveAndSixLinesOfNineMillimetresForThePen) {
    auto const heights = heights_of_rows(workbook, page, 32);
    int lines = 0;
    for (int const height : heights)
        lines += height >= 895 ? 1 : 0; // hundredths of a millimetre, and twips in between
    EXPECT_EQ(lines, 8 + 12 + 6);
}

TEST_P(ThePageForTheBench, IsOnePageAtItsFullSize) {
    auto const pdf = scratch_folder() / "page.pdf";
    workbook.save(pdf);
    EXPECT_EQ(pages_of(pdf), workbook.sheets());
    std::string const text = text_of_page(pdf, page + 1);
    for (char const* const line : {"One run at the bench", "☐ sand at hand", "start or level", "clock", "notes"})
        EXPECT_NE(text.find(said_here(line)), std::string::npos) << line << " in " << text;
    EXPECT_NE(text_of_page(pdf, page + 2).find(said_here("Readings at the bench, run by run")), std::string::npos);
    std::filesystem::remove(pdf);
}

} // namespace
} // namespace hearthcell::tests
