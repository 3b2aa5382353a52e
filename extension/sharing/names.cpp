#include "extension/sharing/names.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
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

std::vector<Reference<css::sheet::XNamedRange>> names_of(Reference<css::uno::XInterface> const& document_or_sheet) {
    Reference<css::beans::XPropertySet> const properties(document_or_sheet, UNO_QUERY_THROW);
    Reference<css::sheet::XNamedRanges> const all(properties->getPropertyValue("NamedRanges"), UNO_QUERY_THROW);
    std::vector<Reference<css::sheet::XNamedRange>> names;
    for (OUString const& name : all->getElementNames())
        names.emplace_back(all->getByName(name), UNO_QUERY_THROW);
    return names;
}

Definitions definitions_in(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    Definitions definitions;
    auto const add = [&](auto const& document_or_sheet) {
        for (auto const& name : names_of(document_or_sheet))
            definitions[name->getName().toAsciiLowerCase()] += " " + name->getContent();
    };
    add(document);
    for (auto const& sheet : sheets_of(document))
        add(sheet);
    return definitions;
}

Names names_that(Definitions const& definitions,
                 std::function<bool(OUString const& definition, Names const& known)> const& have_it) {
    Names names;
    bool found = true;
    while (found) {
        found = false;
        for (auto const& [name, definition] : definitions)
            if (names.count(name) == 0 && have_it(definition, names)) {
                names.insert(name);
                found = true;
            }
    }
    return names;
}

bool is_one_of(Names const& names, OUString const& word) {
    return names.count(word) > 0 || names.count(word.copy(word.lastIndexOf('.') + 1)) > 0;
}

} // namespace hearthcell::sharing
