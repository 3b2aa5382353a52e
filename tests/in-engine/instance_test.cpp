// The add-in as a macro may ask for it: from the office itself, by the name of its service.

#include "calc.hpp"

#include <com/sun/star/lang/IllegalArgumentException.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/lang/XServiceInfo.hpp>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::Sequence;

TEST(AnInstanceOfTheAddIn, IsMadeWithoutArguments) {
    auto const context = office_with_package().context();
    Reference<css::lang::XServiceInfo> const made(
        context->getServiceManager()->createInstanceWithContext("hearthcell.Stove", context), css::uno::UNO_QUERY);
    ASSERT_TRUE(made.is());
    EXPECT_TRUE(made->supportsService("com.sun.star.sheet.AddIn"));
}

TEST(AnInstanceOfTheAddIn, WithArgumentsIsRefusedAndTheOfficeLivesOn) {
    Office& office = office_with_package();
    auto const factory = office.context()->getServiceManager();
    css::uno::Any const numbers[] = {css::uno::Any(1.0), css::uno::Any(2.0)};
    Sequence<css::uno::Any> const two(numbers, 2);
    EXPECT_THROW(factory->createInstanceWithArgumentsAndContext("hearthcell.Stove", two, office.context()),
                 css::lang::IllegalArgumentException);
    EXPECT_TRUE(office.alive());
    EXPECT_GT(number(evaluate(office, {"=STOVE.BOILINGPOINT(0)"}).at(0)), 99);
}

} // namespace hearthcell::tests
