#include "rules.hpp"

#include "extension/office/text.hpp"
#include "extension/sharing/conditional_formats.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/ConditionEntryType.hpp>
#include <com/sun/star/sheet/ConditionFormatOperator.hpp>
#include <com/sun/star/sheet/ConditionOperator.hpp>
#include <com/sun/star/sheet/ValidationType.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XConditionalFormat.hpp>
#include <com/sun/star/sheet/XSheetCellRangeContainer.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSheetCondition.hpp>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::beans::XPropertySet;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

Reference<css::sheet::XSpreadsheet> first_sheet(Document const& document) {
    Reference<css::container::XIndexAccess> const sheets(document.model()->getSheets(), UNO_QUERY_THROW);
    return {sheets->getByIndex(0), UNO_QUERY_THROW};
}

Reference<css::sheet::XConditionalFormats> formats(Document const& document) {
    sharing::Held held;
    auto const all = sharing::conditional_formats_of(first_sheet(document), held);
    document.hold(held);
    return all;
}

Reference<XPropertySet> cells(Document const& document, std::string const& range) {
    return {first_sheet(document)->getCellRangeByName(office::wide(range)), UNO_QUERY_THROW};
}

sal_Int32 operator_of(Comparison comparison) {
    using namespace css::sheet::ConditionFormatOperator;
    return comparison == Comparison::greater ? GREATER : EXPRESSION;
}

} // namespace

void add_conditional_format(Document const& document, std::string const& range, Comparison comparison,
                            std::string const& formula) {
    office::asking("making a conditional format", [&] {
        Reference<css::lang::XMultiServiceFactory> const factory(document.model(), UNO_QUERY_THROW);
        Reference<css::sheet::XSheetCellRangeContainer> const ranges(
            factory->createInstance("com.sun.star.sheet.SheetCellRanges"), UNO_QUERY_THROW);
        auto const cells = first_sheet(document)->getCellRangeByName(office::wide(range));
        ranges->addRangeAddress(Reference<css::sheet::XCellRangeAddressable>(cells, UNO_QUERY_THROW)->getRangeAddress(),
                                false);
        auto const all = formats(document);
        sal_Int32 const key = all->createByRange(Reference<css::sheet::XSheetCellRanges>(ranges, UNO_QUERY_THROW));
        for (auto const& format : all->getConditionalFormats())
            if (sal_Int32 its_key = 0;
                (Reference<XPropertySet>(format, UNO_QUERY_THROW)->getPropertyValue("ID") >>= its_key) &&
                its_key == key) {
                format->createEntry(css::sheet::ConditionEntryType::CONDITION, 0);
                Reference<XPropertySet> const rule(
                    Reference<css::container::XIndexAccess>(format, UNO_QUERY_THROW)->getByIndex(0), UNO_QUERY_THROW);
                rule->setPropertyValue("Operator", Any(operator_of(comparison)));
                rule->setPropertyValue("Formula1", Any(office::wide(formula)));
                rule->setPropertyValue("StyleName", Any(rtl::OUString("Error")));
            }
    });
}

std::vector<std::string> conditions(Document const& document) {
    return office::asking("reading conditional formats", [&] {
        std::vector<std::string> found;
        for (auto const& format : formats(document)->getConditionalFormats()) {
            rtl::OUString formula;
            Reference<XPropertySet>(Reference<css::container::XIndexAccess>(format, UNO_QUERY_THROW)->getByIndex(0),
                                    UNO_QUERY_THROW)
                ->getPropertyValue("Formula1") >>= formula;
            found.push_back(office::narrow(formula));
        }
        return found;
    });
}

void add_validity(Document const& document, std::string const& range, std::string const& least,
                  std::string const& most) {
    office::asking("making a validity rule", [&] {
        auto const properties = cells(document, range);
        Any const validity = properties->getPropertyValue("Validation");
        Reference<XPropertySet>(validity, UNO_QUERY_THROW)
            ->setPropertyValue("Type", Any(css::sheet::ValidationType_DECIMAL));
        Reference<css::sheet::XSheetCondition> const rule(validity, UNO_QUERY_THROW);
        rule->setOperator(css::sheet::ConditionOperator_BETWEEN);
        rule->setFormula1(office::wide(least));
        rule->setFormula2(office::wide(most));
        properties->setPropertyValue("Validation", validity);
    });
}

std::pair<std::string, std::string> validity(Document const& document, std::string const& cell) {
    return office::asking("reading a validity rule", [&] {
        Reference<css::sheet::XSheetCondition> const rule(cells(document, cell)->getPropertyValue("Validation"),
                                                          UNO_QUERY_THROW);
        return std::pair(office::narrow(rule->getFormula1()), office::narrow(rule->getFormula2()));
    });
}

} // namespace hearthcell::tests
