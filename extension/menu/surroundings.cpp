#include "extension/menu/surroundings.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/configuration/theDefaultProvider.hpp>
#include <com/sun/star/container/XNameAccess.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using rtl::OUString;

namespace hearthcell::menu {

OUString wide(std::string_view utf8) {
    return {utf8.data(), sal_Int32(utf8.size()), RTL_TEXTENCODING_UTF8};
}

std::string bytes(OUString const& text) {
    rtl::OString const narrow = rtl::OUStringToOString(text, RTL_TEXTENCODING_UTF8);
    return {narrow.getStr(), std::size_t(narrow.getLength())};
}

OUString Surroundings::say(Text which) const {
    return wide(text(which, language));
}

OUString Surroundings::say(Text which, OUString const& first) const {
    return say(which).replaceAll("%1", first);
}

OUString Surroundings::say(Text which, OUString const& first, OUString const& second) const {
    // Not one replacement after the other: a file's name that is put in can hold a %1 itself.
    OUString const pattern = say(which);
    sal_Int32 const place = pattern.indexOf("%2");
    return pattern.copy(0, place).replaceAll("%1", first) + second + pattern.copy(place + 2).replaceAll("%1", first);
}

OUString Surroundings::title_of(Text label) const {
    return say(label).replaceAll("~", "").replaceAll(wide("…"), "");
}

Surroundings Surroundings::without_frame() const {
    Surroundings result = *this;
    result.frame.clear();
    return result;
}

Language language_of_office(Reference<css::uno::XComponentContext> const& context) {
    css::uno::Sequence<css::uno::Any> arguments(1);
    arguments.getArray()[0] <<= css::beans::PropertyValue(
        "nodepath", 0, css::uno::Any(OUString("/org.openoffice.Setup/L10N")), css::beans::PropertyState_DIRECT_VALUE);
    try {
        Reference<css::container::XNameAccess> const settings(
            css::configuration::theDefaultProvider::get(context)->createInstanceWithArguments(
                "com.sun.star.configuration.ConfigurationAccess", arguments),
            css::uno::UNO_QUERY_THROW);
        OUString locale;
        settings->getByName("ooLocale") >>= locale;
        return language_of(bytes(locale));
    } catch (css::uno::Exception const&) { // a text in English is better than none
        return Language::english;
    }
}

OUString with_cause(Surroundings const& surroundings, OUString const& words, OUString const& cause) {
    return cause.isEmpty() ? words : words + "\n\n" + surroundings.say(Text::office_says, cause);
}

} // namespace hearthcell::menu
