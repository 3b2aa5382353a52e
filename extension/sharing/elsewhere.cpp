#include "extension/sharing/elsewhere.hpp"

#include "extension/sharing/names.hpp"
#include "extension/sharing/our_formulas.hpp"
#include "extension/sharing/values_for_calls.hpp"

#include <com/sun/star/sheet/ConditionEntryType.hpp>
#include <com/sun/star/sheet/XCellFormatRangesSupplier.hpp>
#include <com/sun/star/sheet/XConditionEntry.hpp>
#include <com/sun/star/sheet/XSheetCondition.hpp>
#include <com/sun/star/sheet/XUniqueCellFormatRangesSupplier.hpp>

#include <memory>
#include <utility>

namespace css = com::sun::star;
using css::beans::XPropertySet;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::sharing {
namespace {

class Replacer {
public:
    explicit Replacer(Reference<css::sheet::XSpreadsheetDocument> const& of_document)
        : document_(of_document), sheets_(sheets_of(document_)), ours_(std::make_unique<OurFormulas>(document_)),
          values_(document_) {
        for (auto const& sheet : sheets_)
            sheet_names_.push_back(name_of(sheet));
    }

    Elsewhere replace() {
        replace_in_names();
        for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet) {
            replace_in_conditional_formats(sheet);
            replace_in_validity(sheet);
        }
        return result_;
    }

private:
    void replace_in_names() {
        std::vector<std::pair<Reference<css::sheet::XNamedRange>, std::string>> replaced;
        auto const visit = [&](auto const& document_or_sheet, std::string const& sheet) {
            for (auto const& name : names_of(document_or_sheet))
                if (OUString const before = name->getContent(); ours_->need_us(before, sheet)) {
                    replaced.emplace_back(name, sheet);
                    if (OUString const after = values_.in_document(before, sheet); after != before)
                        name->setContent(after);
                }
        };
        visit(document_, {});
        for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet)
            visit(sheets_[sheet], sheet_names_[sheet]);
        ours_ = std::make_unique<OurFormulas>(document_);
        for (auto const& [name, sheet] : replaced)
            count(ours_->need_us(name->getContent(), sheet));
    }

    void replace_in_conditional_formats(std::size_t sheet) {
        for (auto const& format : conditional_formats_of(sheets_[sheet], result_.held)->getConditionalFormats()) {
            Reference<css::container::XIndexAccess> const rules(format, UNO_QUERY_THROW);
            for (sal_Int32 index = 0; index < rules->getCount(); ++index) {
                Reference<css::sheet::XConditionEntry> const rule(rules->getByIndex(index), UNO_QUERY_THROW);
                if (rule->getType() == css::sheet::ConditionEntryType::CONDITION)
                    replace_in_rule(sheet, Reference<XPropertySet>(rule, UNO_QUERY_THROW));
            }
        }
    }

    void replace_in_rule(std::size_t sheet, Reference<XPropertySet> const& rule) {
        bool needed = false, still_needed = false;
        for (char const* const which : {"Formula1", "Formula2"}) {
            OUString const property = OUString::createFromAscii(which);
            OUString formula; // read as the user sees it, but written in English
            rule->getPropertyValue(property) >>= formula;
            if (!ours_->need_us(formula, sheet_names_[sheet]))
                continue;
            needed = true;
            auto const before = values_.spare_cell(sheet).in_english(formula);
            OUString const after = before ? values_.in_sheet(sheet, *before) : formula;
            if (before && after != *before)
                rule->setPropertyValue(property, Any(after));
            still_needed = still_needed || ours_->need_us(after, sheet_names_[sheet]);
        }
        if (needed)
            count(still_needed);
    }

    void replace_in_validity(std::size_t sheet) {
        Reference<css::container::XIndexAccess> const formats(
            Reference<css::sheet::XUniqueCellFormatRangesSupplier>(sheets_[sheet], UNO_QUERY_THROW)
                ->getUniqueCellFormatRanges());
        std::vector<Reference<XPropertySet>> all; // before any is changed, and with it which formats there are
        for (sal_Int32 index = 0; index < formats->getCount(); ++index)
            all.emplace_back(formats->getByIndex(index), UNO_QUERY_THROW);
        for (auto const& cells : all) {
            Any const validity = cells->getPropertyValue("Validation");
            Reference<css::sheet::XSheetCondition> const rule(validity, UNO_QUERY_THROW);
            OUString const first = rule->getFormula1(), second = rule->getFormula2();
            auto const need_us = [&](OUString const& formula) { return ours_->need_us(formula, sheet_names_[sheet]); };
            if (!need_us(first) && !need_us(second))
                continue;
            OUString const first_now = values_.in_sheet(sheet, first), second_now = values_.in_sheet(sheet, second);
            if (first_now != first || second_now != second) {
                rule->setFormula1(first_now);
                rule->setFormula2(second_now);
                cells->setPropertyValue("Validation", validity);
            }
            count(need_us(first_now) || need_us(second_now));
        }
    }

    void count(bool still_needs_us) { ++(still_needs_us ? result_.left : result_.replaced); }

    Reference<css::sheet::XSpreadsheetDocument> const document_;
    std::vector<Reference<css::sheet::XSpreadsheet>> const sheets_;
    std::vector<std::string> sheet_names_;
    std::unique_ptr<OurFormulas> ours_;
    ValuesForCalls values_;
    Elsewhere result_;
};

} // namespace

Elsewhere replace_elsewhere(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    return Replacer(document).replace();
}

} // namespace hearthcell::sharing
