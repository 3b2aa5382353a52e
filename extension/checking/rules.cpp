#include "extension/checking/rules.hpp"

#include "extension/formulas/calls.hpp"
#include "extension/formulas/tokens.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/names.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/ConditionEntryType.hpp>
#include <com/sun/star/sheet/XCellFormatRangesSupplier.hpp>
#include <com/sun/star/sheet/XConditionEntry.hpp>
#include <com/sun/star/sheet/XConditionalFormat.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSheetCondition.hpp>
#include <com/sun/star/sheet/XUniqueCellFormatRangesSupplier.hpp>

#include <algorithm>

namespace css = com::sun::star;
using css::beans::XPropertySet;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::checking {
namespace {

bool calls_us(std::string_view formula) {
    auto const tokens = formulas::tokens_of(formula);
    return std::ranges::any_of(tokens, [](formulas::Token const& token) { return formulas::is_ours(token); });
}

void add(std::vector<Rule>& rules, Rule rule) {
    if (calls_us(rule.formula))
        rules.push_back(std::move(rule));
}

Place first_of(css::uno::Sequence<css::table::CellRangeAddress> const& ranges) {
    return ranges.hasElements() ? Place{ranges[0].Sheet, ranges[0].StartRow, ranges[0].StartColumn} : Place{};
}

void add_conditional_formats(std::vector<Rule>& rules, Reference<css::sheet::XSpreadsheet> const& sheet,
                             sharing::Held& held) {
    for (auto const& format : sharing::conditional_formats_of(sheet, held)->getConditionalFormats()) {
        Reference<css::sheet::XSheetCellRanges> const covered(
            Reference<XPropertySet>(format, UNO_QUERY_THROW)->getPropertyValue("Range"), UNO_QUERY_THROW);
        auto const ranges = covered->getRangeAddresses();
        Reference<css::container::XIndexAccess> const entries(format, UNO_QUERY_THROW);
        for (sal_Int32 index = 0; index < entries->getCount() && ranges.hasElements(); ++index) {
            Reference<css::sheet::XConditionEntry> const entry(entries->getByIndex(index), UNO_QUERY_THROW);
            if (entry->getType() != css::sheet::ConditionEntryType::CONDITION)
                continue;
            for (char const* const which : {"Formula1", "Formula2"}) {
                OUString formula;
                Reference<XPropertySet>(entry, UNO_QUERY_THROW)->getPropertyValue(OUString::createFromAscii(which)) >>=
                    formula;
                Place const first = first_of(ranges);
                add(rules, {Rule::Kind::conditional_format, {}, first, first, office::narrow(formula), true});
            }
        }
    }
}

void add_validity(std::vector<Rule>& rules, Reference<css::sheet::XSpreadsheet> const& sheet) {
    Reference<css::container::XIndexAccess> const formats(
        Reference<css::sheet::XUniqueCellFormatRangesSupplier>(sheet, UNO_QUERY_THROW)->getUniqueCellFormatRanges());
    for (sal_Int32 index = 0; index < formats->getCount(); ++index) {
        Reference<XPropertySet> const cells(formats->getByIndex(index), UNO_QUERY_THROW);
        Reference<css::sheet::XSheetCondition> const rule(cells->getPropertyValue("Validation"), UNO_QUERY_THROW);
        auto const from = rule->getSourcePosition();
        auto const ranges = Reference<css::sheet::XSheetCellRanges>(cells, UNO_QUERY_THROW)->getRangeAddresses();
        for (OUString const& formula : {rule->getFormula1(), rule->getFormula2()})
            add(rules, {Rule::Kind::validity,
                        {},
                        {from.Sheet, from.Row, from.Column},
                        first_of(ranges),
                        office::narrow(formula)});
    }
}

} // namespace

std::vector<Rule> read_rules(Reference<css::sheet::XSpreadsheetDocument> const& document,
                             sharing::Defined const& defined, sharing::Held& held) {
    std::vector<Rule> rules;
    for (formulas::Definition const& name : defined.names)
        add(rules, {Rule::Kind::name, name.name, name.seen_from, name.seen_from, name.content});
    for (auto const& sheet : sharing::sheets_of(document)) {
        add_conditional_formats(rules, sheet, held);
        add_validity(rules, sheet);
    }
    return rules;
}

} // namespace hearthcell::checking
