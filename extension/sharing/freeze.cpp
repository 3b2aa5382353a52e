#include "extension/sharing/freeze.hpp"

#include "extension/sharing/sheet_formulas.hpp"
#include "extension/sharing/writable.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::sharing {

Frozen freeze(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    Names const names = names_that_need_us(document);
    Reference<css::container::XIndexAccess> const sheets(document->getSheets(), UNO_QUERY_THROW);

    // Everything is read before anything is written, so that no value is worked out from cells that have changed.
    Frozen frozen;
    std::vector<SheetFormulas> all;
    for (sal_Int32 index = 0; index < sheets->getCount(); ++index) {
        Reference<css::sheet::XSpreadsheet> const sheet(sheets->getByIndex(index), UNO_QUERY_THROW);
        SheetFormulas found = read_formulas(sheet, names);
        frozen.formulas += sal_Int32(found.cells.size());
        if (!found.cells.empty())
            all.push_back(std::move(found));
    }

    QuietDocument const quiet(document);
    std::vector<std::unique_ptr<UnprotectedSheet>> unprotected;
    for (SheetFormulas const& formulas : all) {
        unprotected.push_back(std::make_unique<UnprotectedSheet>(formulas.sheet));
        if (!unprotected.back()->is_writable())
            return {0, Reference<css::container::XNamed>(formulas.sheet, UNO_QUERY_THROW)->getName()};
    }
    for (SheetFormulas const& formulas : all)
        replace_formulas(formulas);
    return frozen;
}

} // namespace hearthcell::sharing
