// Whatever a cell or a macro hands over, of whatever type it is declared.

#include "tests/addin/loaded.hpp"

#include "functions/call/call.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

/// What the same function gives when it is called without UNO.
Outcome kernel(char const* name, std::vector<Value> const& values) {
    return hearthcell::call(*find_function(name), values);
}

class Arguments : public testing::Test {
protected:
    double boiling_point(Any const& pressure) {
        return number_of(stove.get(), "boilingPoint", Any(1240.0), pressure, Any());
    }

    Held stove = new_stove();
    double const at_900 = std::get<double>(kernel("BOILINGPOINT", {1240.0, 900.0}));
    double const at_default = std::get<double>(kernel("BOILINGPOINT", {1240.0}));
};

} // namespace

TEST_F(Arguments, OfNumbersReachTheKernel) {
    EXPECT_EQ(boiling_point(Any(900.0)), at_900);
    EXPECT_NE(at_900, at_default);
}

TEST_F(Arguments, LeftOutTakeTheirDefaults) {
    EXPECT_EQ(boiling_point({}), at_default);
}

TEST_F(Arguments, OfAMacroMayBeAnyKindOfNumber) {
    sal_uInt16 const unsigned_short = 900;
    for (Any const& number :
         {Any(float(900)), Any(sal_Int16(900)), Any(&unsigned_short, cppu::UnoType<cppu::UnoUnsignedShortType>::get()),
          Any(sal_Int32(900)), Any(sal_uInt32(900))})
        EXPECT_EQ(boiling_point(number), at_900);
    auto const altitude = [&](Any const& given) { return number_of(stove.get(), "boilingPoint", given, Any(), Any()); };
    EXPECT_EQ(altitude(Any(true)), std::get<double>(kernel("BOILINGPOINT", {1.0})));
    EXPECT_EQ(altitude(Any(sal_Int8(-7))), std::get<double>(kernel("BOILINGPOINT", {-7.0})));
}

TEST_F(Arguments, OfTextAreNumbersOnlyWherePlain) {
    EXPECT_EQ(boiling_point(text("900")), at_900);
    EXPECT_EQ(error_code(boiling_point(text("900.0"))), not_a_value);
    EXPECT_EQ(error_code(boiling_point(text("a hill"))), not_a_value);
}

TEST_F(Arguments, OfASingleCellCountAsItsValueAndOfMoreAreRefused) {
    EXPECT_EQ(boiling_point(Any(column({Any(900.0)}))), at_900);
    EXPECT_EQ(error_code(boiling_point(Any(column({Any(900.0), Any(901.0)})))), not_a_value);
    EXPECT_EQ(error_code(boiling_point(Any(column({})))), not_a_value);
}

TEST_F(Arguments, ThatNoCellCanHoldAreRefused) {
    sal_Unicode const letter = '9';
    Any const strange[] = {Any(cppu::UnoType<double>::get()), Any(Sequence<double>(3)),
                           Any(Sequence<Sequence<double>>(3)), Any(sal_Int64(900)),
                           Any(&letter, cppu::UnoType<cppu::UnoCharType>::get())};
    for (Any const& given : strange)
        EXPECT_EQ(error_code(boiling_point(given)), not_a_value) << given.getValueTypeName();
    EXPECT_EQ(error_code(number_of(stove.get(), "boilingPoint", Sequence<double>(3), Any(), Any())), not_a_value);
}

TEST_F(Arguments, ThatAreObjectsAreRefusedAndLeftAlone) {
    uno_Interface* object = stove.get();
    uno_Any given{};
    Type const type(com::sun::star::uno::TypeClass_INTERFACE, "com.sun.star.uno.XInterface");
    uno_type_any_construct(&given, static_cast<void*>(&object), type.getTypeLibType(), nullptr);
    Cells const block = column({Any(10.0), Any(11.0), Any()});
    Any const altitude(1240.0), left_out;
    double result = 0;
    EXPECT_EQ(call(stove.get(), "boilingPoint", cppu::UnoType<double>::get(), &result,
                   {argument(altitude), {cppu::UnoType<Any>::get(), &given}, argument(left_out)}),
              "");
    EXPECT_EQ(error_code(result), not_a_value);
    uno_any_destruct(&given, nullptr);
    EXPECT_EQ(boiling_point({}), at_default); // whose references were neither taken nor given back too often
}

TEST_F(Arguments, OfBlocksKeepBlanksAndTextsApart) {
    Any const mean = any_of(stove.get(), "series", column({Any(10.0), text(""), Any(12.0), Any()}), Any(), text("all"));
    Cells parts;
    ASSERT_TRUE(mean >>= parts);
    EXPECT_EQ(parts[0][0], Any(11.0));
    EXPECT_EQ(parts[0][1], Any(2.0)); // two readings
    Any const refused = any_of(stove.get(), "series", column({Any(10.0), text("wet"), Any(12.0)}), Any(), Any());
    EXPECT_EQ(error_code(refused), not_a_value);
}

TEST_F(Arguments, OfAnyNumberComeOneByOne) {
    Any const name = text("BOILINGPOINT");
    Any const given[] = {Any(99999.0), Any()};
    Any const told = any_of(stove.get(), "explain", name, Sequence<Any>(given, 2));
    EXPECT_NE(told.get<OUString>().indexOf("altitude"), -1) << told.get<OUString>();
    std::vector<Value> const values{std::string("BOILINGPOINT"), 99999.0, {}};
    EXPECT_EQ(told.get<OUString>().toUtf8().getStr(), std::get<std::string>(kernel("EXPLAIN", values)));
}

TEST_F(Arguments, StayTheCallersAsTheyWere) {
    Cells const block = column({Any(10.0), text("Kénya"), Any()});
    Cells const same = block;
    (void)any_of(stove.get(), "series", block, Any(block), Any(block));
    EXPECT_EQ(block, same);
    EXPECT_EQ(block.get()->nRefCount, 2);
    EXPECT_EQ(block[1].get()->nRefCount, 1);
}

TEST_F(Arguments, OfAnotherNumberThanTheFunctionHasAreRefused) {
    EXPECT_EQ(error_code(number_of(stove.get(), "boilingPoint", Any(1240.0), Any(), Any(), Any())), parameter_list);
    EXPECT_EQ(error_code(number_of(stove.get(), "boilingPoint", Any(1240.0))), parameter_list);
    EXPECT_EQ(error_code(any_of(stove.get(), "version", Any(), Any())), parameter_list);
}

} // namespace hearthcell::tests
