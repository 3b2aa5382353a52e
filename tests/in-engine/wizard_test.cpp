// What the function wizard shows, read back from a running Calc, must be what the catalogue says.

#include "calls.hpp"

#include "manifest/generator/output.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/sheet/FunctionArgument.hpp>
#include <com/sun/star/sheet/XFunctionDescriptions.hpp>

#include <map>

namespace hearthcell::tests {
namespace {

namespace uno = com::sun::star::uno;
using com::sun::star::beans::PropertyValue;
using com::sun::star::sheet::FunctionArgument;

std::string utf8(rtl::OUString const& text) {
    return rtl::OUStringToOString(text, RTL_TEXTENCODING_UTF8).getStr();
}

struct Description {
    std::string text;
    std::vector<FunctionArgument> arguments;
};

Description description_of(uno::Sequence<PropertyValue> const& properties) {
    Description result;
    for (PropertyValue const& property : properties) {
        if (property.Name == "Description") {
            rtl::OUString text;
            property.Value >>= text;
            result.text = utf8(text);
        } else if (property.Name == "Arguments") {
            uno::Sequence<FunctionArgument> arguments;
            property.Value >>= arguments;
            result.arguments.assign(arguments.begin(), arguments.end());
        }
    }
    return result;
}

std::map<std::string, Description> descriptions_in(Office& office) {
    auto const& context = office.context();
    uno::Reference<com::sun::star::sheet::XFunctionDescriptions> const functions(
        context->getServiceManager()->createInstanceWithContext("com.sun.star.sheet.FunctionDescriptions", context),
        uno::UNO_QUERY_THROW);
    std::map<std::string, Description> result;
    for (sal_Int32 i = 0; i < functions->getCount(); ++i) {
        uno::Sequence<PropertyValue> properties;
        functions->getByIndex(i) >>= properties;
        for (PropertyValue const& property : properties)
            if (rtl::OUString name; property.Name == "Name" && (property.Value >>= name))
                result[utf8(name)] = description_of(properties);
    }
    return result;
}

/// Whether every function and argument is shown with the catalogue's text in that language.
void expect_shown(Office& office, Language language) {
    std::map<std::string, Description> const shown = descriptions_in(office);
    for (Group const& group : catalogue()) {
        for (Function const& function : group.functions) {
            std::string const name = "STOVE." + std::string(function.name);
            ASSERT_TRUE(shown.contains(name)) << name;
            Description const& description = shown.at(name);
            EXPECT_EQ(description.text, generator::full_summary(function, language));
            std::vector<generator::Declared> const declared = generator::declared_arguments(function);
            ASSERT_EQ(description.arguments.size(), declared.size()) << name;
            for (std::size_t i = 0; i < declared.size(); ++i) {
                Argument const& argument = *declared[i].argument;
                std::string const which = declared[i].number > 0 ? " " + std::to_string(declared[i].number) : "";
                EXPECT_EQ(utf8(description.arguments[i].Name), generator::shown_name(argument, language, which))
                    << name;
                EXPECT_EQ(utf8(description.arguments[i].Description),
                          generator::full_help(function, argument, language))
                    << name;
            }
        }
    }
}

TEST(Wizard, ShowsWhatTheCatalogueSaysOfEveryFunctionAndArgument) {
    expect_shown(office_with_package(), Language::english);
}

TEST(Wizard, SpeaksTheLanguageOfTheMenus) {
    for (Language const language : languages) {
        SCOPED_TRACE(tag_of(language));
        Office office({.package = package(), .menus = std::string(tag_of(language))});
        expect_shown(office, language);
    }
}

TEST(Wizard, SpeaksItInEveryCountryAndEnglishWhereWeKnowNoBetter) {
    for (std::string const menus : {"sw-TZ", "de"}) {
        SCOPED_TRACE(menus);
        Office office({.package = package(), .menus = menus});
        expect_shown(office, language_of(menus));
    }
}

TEST(Wizard, OffersNothingThatTheCatalogueDoesNotKnow) {
    for (std::string const& name : office_with_package().functions("STOVE."))
        EXPECT_NE(find_function(name), nullptr) << name;
}

} // namespace
} // namespace hearthcell::tests
