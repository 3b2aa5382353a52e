#include "extension/office/sheet.hpp"

#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/FillDirection.hpp>
#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XCellSeries.hpp>
#include <com/sun/star/sheet/XSheetCondition.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/text/XTextRange.hpp>
#include <com/sun/star/util/CellProtection.hpp>
#include <com/sun/star/util/XProtectable.hpp>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;

namespace hearthcell::office {
namespace {

template <class Interface, class From> Reference<Interface> as(Reference<From> const& object) {
    return Reference<Interface>(object, css::uno::UNO_QUERY_THROW);
}

std::string shown_in(Reference<css::table::XCell> const& cell) {
    return narrow(as<css::text::XTextRange>(cell)->getString());
}

bool is_locked(Reference<css::table::XCell> const& cell) {
    css::util::CellProtection protection;
    as<css::beans::XPropertySet>(cell)->getPropertyValue("CellProtection") >>= protection;
    return protection.IsLocked;
}

void type_one(Reference<css::table::XCell> const& cell, CellValue const& value, bool is_protected) {
    auto const* const words = std::get_if<std::string>(&value);
    if (words != nullptr && words->empty())
        return;
    if (is_protected && is_locked(cell))
        throw std::runtime_error("a locked cell cannot be typed into");
    if (words != nullptr)
        as<css::text::XTextRange>(cell)->setString(wide(*words));
    else
        cell->setValue(std::get<double>(value));
}

} // namespace

Sheet::Sheet(Reference<css::sheet::XSpreadsheet> const& sheet) : sheet_(sheet) {}

Reference<css::table::XCellRange> Sheet::range(std::string const& address) const {
    return sheet_->getCellRangeByName(wide(address));
}

Reference<css::table::XCell> Sheet::cell(std::string const& address) const {
    return range(address)->getCellByPosition(0, 0);
}

void Sheet::number(std::string const& address, double value) {
    asking("writing " + address, [&] { cell(address)->setValue(value); });
}

void Sheet::text(std::string const& address, std::string const& value) {
    asking("writing " + address, [&] { as<css::text::XTextRange>(cell(address))->setString(wide(value)); });
}

void Sheet::formula(std::string const& address, std::string const& text) {
    asking("writing " + address, [&] { cell(address)->setFormula(wide(text)); });
}

void Sheet::array_formula(std::string const& address, std::string const& text) {
    asking("writing " + address,
           [&] { as<css::sheet::XArrayFormulaRange>(range(address))->setArrayFormula(wide(text)); });
}

void Sheet::formulas(std::string const& top_left, TextRows const& rows) {
    if (rows.empty() || rows.front().empty())
        return;
    auto const width = static_cast<sal_Int32>(rows.front().size());
    Sequence<Sequence<rtl::OUString>> block(static_cast<sal_Int32>(rows.size()));
    Sequence<rtl::OUString>* to = block.getArray();
    for (auto const& row : rows) {
        Sequence<rtl::OUString> cells(width);
        rtl::OUString* next = cells.getArray();
        for (std::string const& text : row)
            *next++ = wide(text);
        *to++ = cells;
    }
    asking("writing a block at " + top_left, [&] {
        auto const corner = as<css::sheet::XCellRangeAddressable>(range(top_left))->getRangeAddress();
        auto const target =
            sheet_->getCellRangeByPosition(corner.StartColumn, corner.StartRow, corner.StartColumn + width - 1,
                                           corner.StartRow + block.getLength() - 1);
        as<css::sheet::XCellRangeFormula>(target)->setFormulaArray(block);
    });
}

void Sheet::type(std::string const& address, ValueRows const& rows) {
    asking("typing into " + address, [&] {
        auto const cells = range(address);
        bool const is_protected = as<css::util::XProtectable>(sheet_)->isProtected();
        for (std::size_t row = 0; row < rows.size(); ++row)
            for (std::size_t column = 0; column < rows[row].size(); ++column)
                type_one(cells->getCellByPosition(sal_Int32(column), sal_Int32(row)), rows[row][column], is_protected);
    });
}

void Sheet::fill_down(std::string const& address) {
    asking("filling " + address,
           [&] { as<css::sheet::XCellSeries>(range(address))->fillAuto(css::sheet::FillDirection_TO_BOTTOM, 1); });
}

CellValue Sheet::value(std::string const& address) const {
    return values(address).at(0).at(0);
}

ValueRows Sheet::values(std::string const& address) const {
    return asking("reading " + address, [&] {
        auto const cells = range(address);
        auto const block = as<css::sheet::XCellRangeData>(cells)->getDataArray();
        ValueRows rows;
        for (sal_Int32 row = 0; row < block.getLength(); ++row) {
            rows.emplace_back();
            for (sal_Int32 column = 0; column < block[row].getLength(); ++column) {
                Any const& content = block[row][column];
                double number = 0;
                rtl::OUString text;
                if (content >>= number)
                    rows.back().emplace_back(number);
                else if (content >>= text)
                    rows.back().emplace_back(narrow(text));
                else // a void stands for an error and does not say which
                    rows.back().emplace_back(CellError{cells->getCellByPosition(column, row)->getError()});
            }
        }
        return rows;
    });
}

std::string Sheet::formula(std::string const& address) const {
    return asking("reading " + address, [&] { return narrow(cell(address)->getFormula()); });
}

std::string Sheet::shown(std::string const& address) const {
    return asking("reading " + address, [&] { return shown_in(cell(address)); });
}

TextRows Sheet::shown_rows(std::string const& address) const {
    return asking("reading " + address, [&] {
        auto const cells = range(address);
        auto const size = as<css::sheet::XCellRangeAddressable>(cells)->getRangeAddress();
        TextRows rows;
        for (sal_Int32 row = 0; row <= size.EndRow - size.StartRow; ++row) {
            rows.emplace_back();
            for (sal_Int32 column = 0; column <= size.EndColumn - size.StartColumn; ++column)
                rows.back().push_back(shown_in(cells->getCellByPosition(column, row)));
        }
        return rows;
    });
}

int Sheet::error(std::string const& address) const {
    return asking("reading " + address, [&] { return static_cast<int>(cell(address)->getError()); });
}

std::vector<std::string> Sheet::choices(std::string const& address) const {
    return asking("reading the choices of " + address, [&] {
        Reference<css::beans::XPropertySet> validation;
        as<css::beans::XPropertySet>(range(address))->getPropertyValue("Validation") >>= validation;
        std::string const list = narrow(as<css::sheet::XSheetCondition>(validation)->getFormula1());
        std::vector<std::string> words; // "one";"two"
        for (std::size_t from = list.find('"'); from != std::string::npos; from = list.find('"', from)) {
            std::size_t const to = list.find('"', from + 1);
            if (to == std::string::npos)
                break;
            words.push_back(list.substr(from + 1, to - from - 1));
            from = to + 1;
        }
        return words;
    });
}

std::string Sheet::name() const {
    return asking("reading a sheet's name", [&] { return narrow(as<css::container::XNamed>(sheet_)->getName()); });
}

} // namespace hearthcell::office
