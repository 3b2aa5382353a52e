#include "extension/sharing/conditional_formats.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::sharing {

Reference<css::sheet::XConditionalFormats> conditional_formats_of(Reference<css::sheet::XSpreadsheet> const& sheet,
                                                                  Held& held) {
    Reference<css::sheet::XConditionalFormats> const formats(
        Reference<css::beans::XPropertySet>(sheet, UNO_QUERY_THROW)->getPropertyValue("ConditionalFormats"),
        UNO_QUERY_THROW);
    held.emplace_back(formats);
    return formats;
}

} // namespace hearthcell::sharing
