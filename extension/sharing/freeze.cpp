#include "extension/sharing/freeze.hpp"

#include "extension/sharing/elsewhere.hpp"
#include "extension/sharing/names.hpp"
#include "extension/sharing/runs.hpp"
#include "extension/sharing/sheet_formulas.hpp"
#include "extension/sharing/writable.hpp"

#include <com/sun/star/container/XNamed.hpp>

#include <algorithm>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::sharing {

Frozen freeze(Reference<css::sheet::XSpreadsheetDocument> const& document, rtl::OUString const& edition) {
    // Everything is read before anything is written, so that no value is worked out from cells that have changed.
    OurFormulas const ours(document);
    std::vector<SheetFormulas> all;
    for (auto const& sheet : sheets_of(document))
        all.push_back(read_formulas(sheet, ours));

    Frozen frozen;
    for (SheetFormulas const& formulas : all)
        frozen.formulas += sal_Int32(formulas.cells.size());
    if (frozen.formulas > most_comments_of_their_own)
        std::for_each(all.begin(), all.end(), share_comments);

    NoUndo const no_undo(document);
    std::vector<std::unique_ptr<UnprotectedSheet>> unprotected;
    for (SheetFormulas const& formulas : all) {
        unprotected.push_back(std::make_unique<UnprotectedSheet>(formulas.sheet));
        if (!formulas.cells.empty() && !unprotected.back()->is_writable())
            return {0, 0, Reference<css::container::XNamed>(formulas.sheet, UNO_QUERY_THROW)->getName()};
    }
    {
        Calculation const by_itself(document, true);
        frozen.left = replace_elsewhere(document).left;
    }
    Calculation const not_at_each_change(document, false);
    for (SheetFormulas const& formulas : all)
        replace_formulas(formulas, edition);
    return frozen;
}

} // namespace hearthcell::sharing
