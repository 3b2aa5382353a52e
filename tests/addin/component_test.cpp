// What LibreOffice asks of a component, before any cell calls it.

#include "tests/addin/loaded.hpp"

#include <com/sun/star/lang/IllegalArgumentException.hpp>
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <com/sun/star/lang/XServiceName.hpp>
#include <com/sun/star/lang/XTypeProvider.hpp>
#include <com/sun/star/uno/XWeak.hpp>
#include <gtest/gtest.h>

#include <set>

namespace hearthcell::tests {
namespace {

namespace css = com::sun::star;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using css::uno::XInterface;

/// Sequences of the SDK cannot be written out in braces.
template <class Element> Sequence<Element> sequence(std::initializer_list<Element> elements) {
    return {elements.begin(), sal_Int32(elements.size())};
}

Reference<XInterface> bridged_stove() {
    return bridged(new_stove().release());
}

/// The interface asked for, which is the object itself, or null.
Held queried(uno_Interface* object, char const* interface) {
    Type const wanted(css::uno::TypeClass_INTERFACE, interface);
    uno_Any found{};
    auto* const type = wanted.getTypeLibType();
    EXPECT_EQ(call(object, "queryInterface", cppu::UnoType<Any>::get(), &found, {{cppu::UnoType<Type>::get(), &type}}),
              "");
    if (found.pType->eTypeClass == typelib_TypeClass_VOID)
        return nullptr;
    EXPECT_EQ(OUString(found.pType->pTypeName).toUtf8(), interface);
    return Held(static_cast<uno_Interface*>(found.pReserved)); // an Any holds an interface in itself
}

std::set<std::string> types_of(Reference<XInterface> const& object) {
    std::set<std::string> names;
    auto const types = Reference<css::lang::XTypeProvider>(object, UNO_QUERY_THROW)->getTypes();
    for (Type const& type : types) {
        EXPECT_EQ(type.getTypeClass(), css::uno::TypeClass_INTERFACE);
        names.insert(type.getTypeName().toUtf8().getStr());
    }
    return names;
}

std::set<std::string> const of_stove{"com.sun.star.uno.XInterface", "com.sun.star.lang.XTypeProvider",
                                     "com.sun.star.lang.XServiceInfo", "com.sun.star.lang.XServiceName",
                                     "hearthcell.XStove"};
std::set<std::string> const of_factory{"com.sun.star.uno.XInterface", "com.sun.star.lang.XTypeProvider",
                                       "com.sun.star.lang.XSingleComponentFactory"};

} // namespace

TEST(TheEntryPoint, KnowsNoImplementationButItsOwn) {
    EXPECT_EQ(factory_of("hearthcell.Menu"), nullptr);
    EXPECT_EQ(factory_of(""), nullptr);
}

TEST(TheFactory, MakesANewObjectEachTime) {
    auto const made = factory();
    auto const one = made->createInstanceWithContext({}), other = made->createInstanceWithContext({});
    EXPECT_TRUE(one.is());
    EXPECT_NE(one, other);
    EXPECT_TRUE(made->createInstanceWithArgumentsAndContext({}, {}).is());
}

TEST(TheFactory, RefusesArgumentsWithAnOrdinaryException) {
    auto const made = factory();
    EXPECT_THROW(made->createInstanceWithArgumentsAndContext(sequence({Any(1.0), text("x")}), {}),
                 css::lang::IllegalArgumentException);
    try {
        made->createInstanceWithArgumentsAndContext(sequence({Any(made)}), {});
        FAIL() << "nothing was thrown";
    } catch (css::uno::Exception const& refused) {
        EXPECT_TRUE(refused.Message.startsWith("Hearthcell"));
        EXPECT_FALSE(refused.Context.is());
    }
    EXPECT_TRUE(made->createInstanceWithContext({}).is()); // and lives on
}

TEST(TheObject, HasTheInterfacesThatItNamesAndNoOthers) {
    EXPECT_EQ(types_of(bridged_stove()), of_stove);
    EXPECT_EQ(types_of(factory()), of_factory);
    Held const stove = new_stove(), made(factory_of("hearthcell.Stove"));
    std::set<std::string> asked = of_stove;
    asked.insert(of_factory.begin(), of_factory.end());
    asked.insert({"com.sun.star.sheet.XAddIn", "com.sun.star.uno.XWeak", ""});
    for (std::string const& name : asked) {
        EXPECT_EQ(queried(stove.get(), name.c_str()).get(), of_stove.contains(name) ? stove.get() : nullptr) << name;
        EXPECT_EQ(queried(made.get(), name.c_str()).get(), of_factory.contains(name) ? made.get() : nullptr) << name;
    }
}

TEST(TheObject, IsTheSameByWhateverInterfaceItIsHeld) {
    Reference<XInterface> const stove = bridged_stove();
    Reference<css::lang::XServiceInfo> const told(stove, UNO_QUERY_THROW);
    Reference<css::lang::XServiceName> const named(told, UNO_QUERY_THROW);
    EXPECT_EQ(Reference<XInterface>(named, UNO_QUERY), stove);
}

TEST(TheObject, LivesAsLongAsAnyInterfaceIsHeld) {
    Held stove = new_stove();
    Held const named = queried(stove.get(), "com.sun.star.lang.XServiceName");
    stove.reset();
    EXPECT_GT(number_of(named.get(), "boilingPoint", Any(0.0), Any(), Any()), 99);
    EXPECT_EQ(call(named.get(), "acquire", cppu::UnoType<void>::get(), nullptr, {}), "");
    EXPECT_EQ(call(named.get(), "release", cppu::UnoType<void>::get(), nullptr, {}), "");
    EXPECT_GT(number_of(named.get(), "boilingPoint", Any(0.0), Any(), Any()), 99);
}

TEST(TheObject, TellsCalcWhatItIs) {
    Reference<css::lang::XServiceInfo> const told(bridged_stove(), UNO_QUERY_THROW);
    EXPECT_EQ(told->getImplementationName(), "hearthcell.Stove");
    EXPECT_EQ(told->getSupportedServiceNames(), sequence<OUString>({"com.sun.star.sheet.AddIn", "hearthcell.Stove"}));
    for (OUString const& service : told->getSupportedServiceNames())
        EXPECT_TRUE(told->supportsService(service));
    EXPECT_FALSE(told->supportsService("hearthcell.Menu"));
    EXPECT_FALSE(told->supportsService(""));
    EXPECT_EQ((Reference<css::lang::XServiceName>(told, UNO_QUERY_THROW)->getServiceName()), "hearthcell.Stove");
}

TEST(TheObject, HasNoIdentifierOfItsTypesAsNobodyHasAnyMore) {
    uno_Sequence* identifier = nullptr;
    Type const type = cppu::UnoType<Sequence<sal_Int8>>::get();
    EXPECT_EQ(call(new_stove().get(), "getImplementationId", type, &identifier, {}), "");
    EXPECT_EQ(identifier->nElements, 0);
    uno_type_destructData(&identifier, type.getTypeLibType(), nullptr);
}

TEST(TheObject, RefusesAMethodThatItDoesNotHave) {
    Held const made(factory_of("hearthcell.Stove")), stove = new_stove();
    double result = 0;
    for (char const* const method : {"", "boilingpoint", "createInstanceWithContext"})
        EXPECT_EQ(call(stove.get(), method, cppu::UnoType<double>::get(), &result, {}),
                  "com.sun.star.uno.RuntimeException")
            << method;
    for (char const* const method : {"", "boilingPoint", "getServiceName"})
        EXPECT_EQ(call(made.get(), method, cppu::UnoType<double>::get(), &result, {}),
                  "com.sun.star.uno.RuntimeException")
            << method;
}

TEST(TheObject, RefusesWhatIsNoCallOfAMethod) {
    Held const stove = new_stove();
    OUString const name("boilingPoint");
    typelib_InterfaceAttributeTypeDescription attribute{};
    attribute.aBase.aBase.eTypeClass = typelib_TypeClass_INTERFACE_ATTRIBUTE;
    attribute.aBase.pMemberName = name.pData;
    double result = 0;
    uno_Any place{};
    uno_Any* thrown = &place;
    stove->pDispatcher(stove.get(), &attribute.aBase.aBase, &result, nullptr, &thrown);
    ASSERT_EQ(thrown, &place);
    EXPECT_EQ(OUString(place.pType->pTypeName), "com.sun.star.uno.RuntimeException");
    uno_any_destruct(&place, nullptr);
}

} // namespace hearthcell::tests
