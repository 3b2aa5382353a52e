#include "extension/archive/recalculation/named_cells.hpp"

#include "extension/archive/files/problem.hpp"
#include "extension/archive/recalculation/formula_cells.hpp"
#include "extension/archive/recalculation/when.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/lang/IndexOutOfBoundsException.hpp>
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/text/XTextRange.hpp>
#include <com/sun/star/util/NumberFormat.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::narrow;
using hearthcell::office::wide;

namespace hearthcell::archive {
namespace {

/// A name stands for a cell, or for a constant or formula of its own.
struct Target {
    Reference<css::table::XCell> cell;
    Reference<css::sheet::XNamedRange> constant;
};

Reference<css::table::XCell> only_cell(Reference<css::table::XCellRange> const& range, std::string const& name) {
    auto const size = Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY_THROW)->getRangeAddress();
    if (size.StartRow != size.EndRow || size.StartColumn != size.EndColumn)
        throw Trouble(Reason::not_set, name + " is a block of cells");
    return range->getCellByPosition(0, 0);
}

/// The names of the whole workbook or of one sheet.
std::optional<Target> in_names(css::uno::Any const& owner, std::string const& name) {
    Reference<css::beans::XPropertySet> const properties(owner, UNO_QUERY_THROW);
    Reference<css::container::XNameAccess> const names(properties->getPropertyValue("NamedRanges"), UNO_QUERY_THROW);
    for (rtl::OUString const& known : names->getElementNames()) {
        if (!known.equalsIgnoreAsciiCase(wide(name)))
            continue;
        Reference<css::sheet::XNamedRange> const found(names->getByName(known), UNO_QUERY_THROW);
        auto const range = Reference<css::sheet::XCellRangeReferrer>(found, UNO_QUERY_THROW)->getReferredCells();
        if (range.is())
            return Target{only_cell(range, name), {}};
        return Target{{}, found};
    }
    return std::nullopt;
}

std::optional<Target> in_sheet(office::Document const& workbook, std::string const& name) {
    auto const address = formulas::address_in(name);
    Reference<css::container::XNameAccess> const sheets(workbook.model()->getSheets(), UNO_QUERY_THROW);
    if (!address || !sheets->hasByName(wide(address->sheet)))
        return std::nullopt;
    Reference<css::table::XCellRange> const sheet(sheets->getByName(wide(address->sheet)), UNO_QUERY_THROW);
    auto const [top, left, bottom, right] = address->block;
    try {
        return Target{only_cell(sheet->getCellRangeByPosition(left, top, right, bottom), name), {}};
    } catch (css::lang::IndexOutOfBoundsException const&) { // this office knows no sheets of that size
        return std::nullopt;
    }
}

std::optional<Target> find(office::Document const& workbook, std::string const& name) {
    if (auto const found = in_names(css::uno::Any(workbook.model()), name))
        return found;
    Reference<css::container::XIndexAccess> const sheets(workbook.model()->getSheets(), UNO_QUERY_THROW);
    for (sal_Int32 sheet = 0; sheet < sheets->getCount(); ++sheet)
        if (auto const found = in_names(sheets->getByIndex(sheet), name))
            return found;
    return in_sheet(workbook, name);
}

bool shows_a_day(office::Document const& workbook, Reference<css::table::XCell> const& cell) {
    sal_Int32 key = 0;
    Reference<css::beans::XPropertySet>(cell, UNO_QUERY_THROW)->getPropertyValue("NumberFormat") >>= key;
    sal_Int16 type = 0;
    Reference<css::util::XNumberFormatsSupplier>(workbook.model(), UNO_QUERY_THROW)
        ->getNumberFormats()
        ->getByKey(key)
        ->getPropertyValue("Type") >>= type;
    return (type & css::util::NumberFormat::DATE) != 0;
}

void put(Target const& target, Assignment const& assignment) {
    auto const* const number = std::get_if<double>(&assignment.value);
    if (target.constant.is()) {
        std::string const& text = number != nullptr ? written(*number) : std::get<std::string>(assignment.value);
        target.constant->setContent(wide(number != nullptr ? text : '"' + text + '"'));
        return;
    }
    if (number != nullptr)
        target.cell->setValue(*number);
    else
        Reference<css::text::XTextRange>(target.cell, UNO_QUERY_THROW)
            ->setString(wide(std::get<std::string>(assignment.value)));
    // A protected cell keeps what it has and says nothing.
    Value const now = value_in(target.cell);
    Value const wanted = number != nullptr ? Value(*number) : Value(std::get<std::string>(assignment.value));
    if (now.index() != wanted.index() || written(now) != written(wanted))
        throw Trouble(Reason::not_set, assignment.name + " is protected");
}

} // namespace

std::optional<Place> assign(office::Document const& workbook, Assignment const& assignment) {
    return office::asking("setting " + assignment.name, [&]() -> std::optional<Place> {
        auto const target = find(workbook, assignment.name);
        if (!target)
            throw Trouble(Reason::not_set, "there is no " + assignment.name);
        put(*target, assignment);
        if (target->constant.is())
            return std::nullopt;
        auto const at = Reference<css::sheet::XCellAddressable>(target->cell, UNO_QUERY_THROW)->getCellAddress();
        return Place{at.Sheet, at.Row, at.Column};
    });
}

Collected collect(office::Document const& workbook, std::string const& name) {
    return office::asking("collecting " + name, [&]() -> Collected {
        std::optional<Target> target;
        try {
            target = find(workbook, name);
        } catch (Trouble const&) { // a block is not one result
        }
        if (!target)
            return {};
        if (target->constant.is())
            return {narrow(target->constant->getContent()), {}, true};
        Function const* const function = formulas::only_call(narrow(target->cell->getFormula()));
        std::string unit;
        if (function != nullptr)
            unit =
                unit_of(function->result.parts.empty() ? function->result.measure : function->result.parts[0].measure);
        Value const value = value_in(target->cell);
        auto const* const number = std::get_if<double>(&value);
        return {number != nullptr && shows_a_day(workbook, target->cell) ? written_day(*number) : written(value), unit,
                true};
    });
}

} // namespace hearthcell::archive
