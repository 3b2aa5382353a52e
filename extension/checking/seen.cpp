#include "extension/checking/seen.hpp"

#include "extension/checking/marks.hpp"
#include "extension/office/text.hpp"

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

constexpr char property[] = "Hearthcell remarks seen";
constexpr std::size_t most_kept = 10'000;

Reference<css::beans::XPropertyContainer> properties_of(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    return Reference<css::document::XDocumentPropertiesSupplier>(document, UNO_QUERY_THROW)
        ->getDocumentProperties()
        ->getUserDefinedProperties();
}

} // namespace

Seen seen_in(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    Reference<css::beans::XPropertySet> const values(properties_of(document), UNO_QUERY_THROW);
    OUString text;
    if (values->getPropertySetInfo()->hasPropertyByName(property))
        values->getPropertyValue(property) >>= text;
    return marks_in(office::narrow(text));
}

void keep_seen(Reference<css::sheet::XSpreadsheetDocument> const& document, Seen const& more) {
    Seen all = seen_in(document);
    for (std::uint64_t const mark : more)
        if (all.size() < most_kept)
            all.insert(mark);
    std::string text;
    for (std::uint64_t const mark : all)
        text += (text.empty() ? "" : " ") + written(mark);
    auto const container = properties_of(document);
    Reference<css::beans::XPropertySet> const values(container, UNO_QUERY_THROW);
    Any const value(office::wide(text));
    if (values->getPropertySetInfo()->hasPropertyByName(property))
        values->setPropertyValue(property, value);
    else
        container->addProperty(property, css::beans::PropertyAttribute::REMOVABLE, value);
}

} // namespace hearthcell::checking
