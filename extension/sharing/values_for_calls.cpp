#include "extension/sharing/values_for_calls.hpp"

#include "extension/sharing/our_formulas.hpp"

#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/ComplexReference.hpp>
#include <com/sun/star/sheet/FormulaToken.hpp>
#include <com/sun/star/sheet/ReferenceFlags.hpp>
#include <com/sun/star/sheet/SingleReference.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>

namespace css = com::sun::star;
namespace flags = css::sheet::ReferenceFlags;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::sharing {
namespace {

constexpr sal_Int32 varies_in_sheet = flags::COLUMN_RELATIVE | flags::ROW_RELATIVE;
constexpr sal_Int32 varies_in_document = varies_in_sheet | flags::SHEET_RELATIVE;

/// Functions that may look at the cell which they stand in. INDIRECT reads references that nobody else sees.
bool may_look_at_its_cell(Word const& word) {
    constexpr char const* names[] = {"row", "column", "sheet", "cell", "indirect"};
    return word.called && std::any_of(std::begin(names), std::end(names),
                                      [&](char const* name) { return word.lower.equalsAscii(name); });
}

bool has_flag(css::sheet::FormulaToken const& token, sal_Int32 wanted) {
    css::sheet::SingleReference cell;
    if (token.Data >>= cell)
        return (cell.Flags & wanted) != 0;
    css::sheet::ComplexReference range;
    return (token.Data >>= range) && ((range.Reference1.Flags | range.Reference2.Flags) & wanted) != 0;
}

std::size_t first_unprotected(std::vector<Reference<css::sheet::XSpreadsheet>> const& sheets) {
    auto const found = std::find_if(sheets.begin(), sheets.end(), [](auto const& sheet) {
        return !Reference<css::util::XProtectable>(sheet, UNO_QUERY_THROW)->isProtected();
    });
    return found == sheets.end() ? 0 : std::size_t(found - sheets.begin());
}

} // namespace

ValuesForCalls::ValuesForCalls(Reference<css::sheet::XSpreadsheetDocument> const& document)
    : sheets(sheets_of(document)), first_writable(first_unprotected(sheets)),
      parser(Reference<css::lang::XMultiServiceFactory>(document, UNO_QUERY_THROW)
                 ->createInstance("com.sun.star.sheet.FormulaParser"),
             UNO_QUERY_THROW) {
    Reference<css::beans::XPropertySet>(parser, UNO_QUERY_THROW)
        ->setPropertyValue("CompileEnglish", css::uno::Any(true));
    varying_names = names_that(definitions_in(document), [&](OUString const& definition, Names const& known) {
        return varies(definition, varies_in_document, known);
    });
}

SpareCell& ValuesForCalls::spare_cell(std::size_t sheet) {
    return spare_cells.try_emplace(sheet, sheets.at(sheet)).first->second;
}

OUString ValuesForCalls::in_document(OUString const& formula) {
    return replace(formula, first_writable, varies_in_document);
}

OUString ValuesForCalls::in_sheet(std::size_t sheet, OUString const& formula) {
    return replace(formula, sheet, varies_in_sheet);
}

OUString ValuesForCalls::replace(OUString const& formula, std::size_t sheet, sal_Int32 varying_references) {
    OUString result;
    sal_Int32 done = 0;
    for (Word const& word : words_of(formula)) {
        if (word.start < done || !calls_us(word))
            continue;
        sal_Int32 const end = end_of_call(formula, word);
        OUString const call = formula.copy(word.start, end - word.start);
        if (varies(call, varying_references, varying_names))
            continue;
        if (auto const value = spare_cell(sheet).value_of(call)) {
            result += formula.copy(done, word.start - done) + *value;
            done = end;
        }
    }
    return result + formula.copy(done);
}

bool ValuesForCalls::varies(OUString const& formula, sal_Int32 varying_references, Names const& varying) {
    auto const words = words_of(formula);
    if (std::any_of(words.begin(), words.end(),
                    [&](Word const& word) { return may_look_at_its_cell(word) || is_one_of(varying, word.lower); }))
        return true;
    auto const tokens = parser->parseFormula(formula, {0, 0, 0});
    return std::any_of(tokens.begin(), tokens.end(),
                       [&](auto const& token) { return has_flag(token, varying_references); });
}

} // namespace hearthcell::sharing
