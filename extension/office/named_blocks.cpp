#include "extension/office/document.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>

#include <map>
#include <tuple>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::office {
namespace {

/// From Calc's own way to write it, "$Runs.$A$1:$C$20": taking that apart is easier than to spell numbers as letters.
std::string range_of(Reference<css::table::XCellRange> const& cells) {
    rtl::OUString absolute;
    Reference<css::beans::XPropertySet>(cells, UNO_QUERY_THROW)->getPropertyValue("AbsoluteName") >>= absolute;
    std::string range = narrow(absolute);
    range.erase(0, range.rfind('.') + 1);
    std::erase(range, '$');
    return range;
}

std::string sheet_of(Reference<css::table::XCellRange> const& cells) {
    auto const sheet = Reference<css::sheet::XSheetCellRange>(cells, UNO_QUERY_THROW)->getSpreadsheet();
    return narrow(Reference<css::container::XNamed>(sheet, UNO_QUERY_THROW)->getName());
}

} // namespace

std::vector<NamedBlock> Document::named_blocks() const {
    return asking("reading the defined names", [&] {
        Reference<css::beans::XPropertySet> const properties(model_, UNO_QUERY_THROW);
        Reference<css::sheet::XNamedRanges> const names(properties->getPropertyValue("NamedRanges"), UNO_QUERY_THROW);
        std::map<std::tuple<int, int, int, std::string>, NamedBlock> by_place;
        for (rtl::OUString const& name : names->getElementNames()) {
            Reference<css::sheet::XCellRangeReferrer> const named(names->getByName(name), UNO_QUERY_THROW);
            auto const cells = named->getReferredCells();
            if (!cells.is())
                continue;
            auto const place = Reference<css::sheet::XCellRangeAddressable>(cells, UNO_QUERY_THROW)->getRangeAddress();
            by_place[{place.Sheet, place.StartRow, place.StartColumn, narrow(name)}] = {narrow(name), sheet_of(cells),
                                                                                        range_of(cells)};
        }
        std::vector<NamedBlock> blocks;
        blocks.reserve(by_place.size());
        for (auto const& [place, block] : by_place)
            blocks.push_back(block);
        return blocks;
    });
}

} // namespace hearthcell::office
