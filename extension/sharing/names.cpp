#include "extension/sharing/names.hpp"

#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::narrow;
using rtl::OUString;

namespace hearthcell::sharing {

std::vector<Reference<css::sheet::XSpreadsheet>>
sheets_of(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    Reference<css::container::XIndexAccess> const all(document->getSheets(), UNO_QUERY_THROW);
    std::vector<Reference<css::sheet::XSpreadsheet>> sheets;
    for (sal_Int32 index = 0; index < all->getCount(); ++index)
        sheets.emplace_back(all->getByIndex(index), UNO_QUERY_THROW);
    return sheets;
}

std::string name_of(Reference<css::sheet::XSpreadsheet> const& sheet) {
    return narrow(Reference<css::container::XNamed>(sheet, UNO_QUERY_THROW)->getName());
}

std::vector<Reference<css::sheet::XNamedRange>> names_of(Reference<css::uno::XInterface> const& document_or_sheet) {
    Reference<css::beans::XPropertySet> const properties(document_or_sheet, UNO_QUERY_THROW);
    Reference<css::sheet::XNamedRanges> const all(properties->getPropertyValue("NamedRanges"), UNO_QUERY_THROW);
    std::vector<Reference<css::sheet::XNamedRange>> names;
    for (OUString const& name : all->getElementNames())
        names.emplace_back(all->getByName(name), UNO_QUERY_THROW);
    return names;
}

std::vector<formulas::Definition> definitions_in(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    std::vector<formulas::Definition> definitions;
    auto const add = [&](auto const& document_or_sheet, std::string const& sheet) {
        for (auto const& name : names_of(document_or_sheet)) {
            auto const seen_from = name->getReferencePosition();
            definitions.push_back({narrow(name->getName()),
                                   sheet,
                                   narrow(name->getContent()),
                                   {seen_from.Sheet, seen_from.Row, seen_from.Column}});
        }
    };
    add(document, {});
    for (auto const& sheet : sheets_of(document))
        add(sheet, name_of(sheet));
    return definitions;
}

} // namespace hearthcell::sharing
