#include "comments.hpp"

#include "extension/office/text.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/sheet/XSheetAnnotation.hpp>
#include <com/sun/star/sheet/XSheetAnnotationsSupplier.hpp>
#include <com/sun/star/text/XSimpleText.hpp>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

Reference<css::sheet::XSpreadsheet> sheet_of(office::Document const& document, int index) {
    Reference<css::container::XIndexAccess> const sheets(document.model()->getSheets(), UNO_QUERY_THROW);
    return {sheets->getByIndex(index), UNO_QUERY_THROW};
}

Reference<css::sheet::XSheetAnnotations> annotations_of(Reference<css::sheet::XSpreadsheet> const& sheet) {
    return Reference<css::sheet::XSheetAnnotationsSupplier>(sheet, UNO_QUERY_THROW)->getAnnotations();
}

} // namespace

std::map<std::string, std::string> comments(office::Document const& document, int sheet) {
    return office::asking("reading comments", [&] {
        std::map<std::string, std::string> found;
        auto const all = annotations_of(sheet_of(document, sheet));
        for (sal_Int32 index = 0; index < all->getCount(); ++index) {
            Reference<css::sheet::XSheetAnnotation> const comment(all->getByIndex(index), UNO_QUERY_THROW);
            auto const at = comment->getPosition();
            found[std::string(1, char('A' + at.Column)) + std::to_string(at.Row + 1)] =
                office::narrow(Reference<css::text::XSimpleText>(comment, UNO_QUERY_THROW)->getString());
        }
        return found;
    });
}

void comment_on(office::Document const& document, int sheet, std::string const& cell, std::string const& words) {
    office::asking("commenting on " + cell, [&] {
        auto const sheet_itself = sheet_of(document, sheet);
        Reference<css::sheet::XCellAddressable> const place(
            sheet_itself->getCellRangeByName(office::wide(cell))->getCellByPosition(0, 0), UNO_QUERY_THROW);
        annotations_of(sheet_itself)->insertNew(place->getCellAddress(), office::wide(words));
    });
}

} // namespace hearthcell::tests
