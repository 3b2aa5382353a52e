// What a cell is given back, and that nothing of it is kept or lost.

#include "tests/addin/loaded.hpp"

#include "functions/edition.hpp"

#include <gtest/gtest.h>

#include <malloc.h>

namespace hearthcell::tests {
namespace {

class Results : public testing::Test {
protected:
    Held stove = new_stove();
};

std::size_t bytes_in_use() {
    return ::mallinfo2().uordblks;
}

} // namespace

TEST_F(Results, ThatFailCarryCalcsErrorCode) {
    EXPECT_EQ(error_code(number_of(stove.get(), "boilingPoint", Any(1e9), Any(), Any())), not_a_result);
    EXPECT_EQ(error_code(number_of(stove.get(), "boilingPoint", Any(1.0), text("x"), Any())), not_a_value);
    EXPECT_EQ(error_code(number_of(stove.get(), "calorificValue", text("moon dust"))), not_available);
    EXPECT_EQ(error_code(any_of(stove.get(), "minutes", text("no time"), Any())), not_a_value);
}

TEST_F(Results, ThatAreTextsAreTexts) {
    EXPECT_EQ(any_of(stove.get(), "version", Any()).get<OUString>().toUtf8(), edition);
}

TEST_F(Results, ThatAreBlocksHaveRowsOfOneLength) {
    Any const name = text("DRYMASS");
    Any const found = any_of(stove.get(), "budget", name, column({Any(500.0), Any(0.12)}),
                             column({Any(1.0), Any(0.01)}), Any(), Any());
    Cells block;
    ASSERT_TRUE(found >>= block);
    ASSERT_EQ(block.getLength(), 2);
    EXPECT_EQ(block.get()->nRefCount, 2); // ours, and that of what was found
    for (Sequence<Any> const& row : std::as_const(block)) {
        EXPECT_EQ(row.getLength(), block[0].getLength());
        EXPECT_EQ(row[0].getValueTypeClass(), com::sun::star::uno::TypeClass_STRING);
        EXPECT_EQ(row[1].getValueTypeClass(), com::sun::star::uno::TypeClass_DOUBLE);
    }
}

TEST_F(Results, OfAnyKindLeaveNoMemoryBehind) {
    Any const name = text("DRYMASS");
    Cells const values = column({Any(500.0), Any(0.12)}), series = column({Any(1.0), text("x"), Any(3.0)});
    auto const call_all = [&] {
        for (int times = 0; times < 1000; ++times) {
            (void)number_of(stove.get(), "boilingPoint", Any(1240.0), text("900"), Any());
            (void)any_of(stove.get(), "version", Any());
            (void)any_of(stove.get(), "series", series, Any(), Any());
            (void)any_of(stove.get(), "series", values, Any(), text("all"));
            (void)any_of(stove.get(), "budget", name, values, values, Any(), Any());
            (void)number_of(stove.get(), "boilingPoint", Any(1240.0), Any(values), Any());
            double never = 0;
            (void)call(stove.get(), "noSuchMethod", cppu::UnoType<double>::get(), &never, {});
            (void)new_stove();
        }
    };
    call_all(); // what the libraries keep for ever they have by now
    std::size_t const before = bytes_in_use();
    call_all();
    EXPECT_LT(bytes_in_use(), before + 10000); // a byte lost a call would be more than this in what is handed out
}

} // namespace hearthcell::tests
