#include "extension/checking/kept.hpp"

#include <com/sun/star/beans/PropertyAttribute.hpp>
#include <com/sun/star/beans/XPropertyContainer.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::checking {
namespace {

Reference<css::beans::XPropertyContainer> properties_of(KeepingDocument const& document) {
    return Reference<css::document::XDocumentPropertiesSupplier>(document, UNO_QUERY_THROW)
        ->getDocumentProperties()
        ->getUserDefinedProperties();
}

bool has(Reference<css::beans::XPropertyContainer> const& properties, OUString const& name) {
    return Reference<css::beans::XPropertySet>(properties, UNO_QUERY_THROW)
        ->getPropertySetInfo()
        ->hasPropertyByName(name);
}

} // namespace

OUString kept_text(KeepingDocument const& document, OUString const& name) {
    auto const properties = properties_of(document);
    OUString text;
    if (has(properties, name))
        Reference<css::beans::XPropertySet>(properties, UNO_QUERY_THROW)->getPropertyValue(name) >>= text;
    return text;
}

void keep_text(KeepingDocument const& document, OUString const& name, OUString const& text) {
    forget_text(document, name); // what somebody gave another type, too
    properties_of(document)->addProperty(name, css::beans::PropertyAttribute::REMOVABLE, Any(text));
}

void forget_text(KeepingDocument const& document, OUString const& name) {
    if (auto const properties = properties_of(document); has(properties, name))
        properties->removeProperty(name);
}

} // namespace hearthcell::checking
