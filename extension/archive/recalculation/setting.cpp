#include "extension/archive/recalculation/setting.hpp"

#include "extension/archive/files/problem.hpp"
#include "extension/archive/recalculation/formula_cells.hpp"
#include "extension/archive/recalculation/named_cells.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/tokens.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/FormulaLanguage.hpp>
#include <com/sun/star/sheet/FormulaMapGroup.hpp>
#include <com/sun/star/sheet/FormulaMapGroupSpecialOffset.hpp>
#include <com/sun/star/sheet/XFormulaOpCodeMapper.hpp>
#include <com/sun/star/sheet/XFormulaParser.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/text/XTextRange.hpp>

#include <algorithm>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::narrow;
using hearthcell::office::wide;

namespace hearthcell::archive {
namespace {

std::string without_blanks(std::string_view formula) {
    std::string text;
    for (formulas::Token const& token : formulas::tokens_without_blanks(formula))
        text += token.text;
    return text;
}

bool holds(Reference<css::table::XCell> const& cell, std::string const& formula) {
    return without_blanks(formulas::as_shown(narrow(cell->getFormula()))) ==
           without_blanks(formulas::as_shown(formula));
}

void put_back(Reference<css::table::XCell> const& cell, css::table::CellContentType type, double number,
              rtl::OUString const& content) {
    if (type == css::table::CellContentType_VALUE)
        cell->setValue(number);
    else if (type == css::table::CellContentType_TEXT)
        Reference<css::text::XTextRange>(cell, UNO_QUERY_THROW)->setString(content);
    else
        cell->setFormula(content); // an empty one, too
}

/// Whether there is a word in a formula that the office knows neither as a function nor as a name.
bool has_unknown_word(office::Document const& workbook, std::string const& formula) {
    Reference<css::lang::XMultiServiceFactory> const factory(workbook.model(), UNO_QUERY_THROW);
    Reference<css::sheet::XFormulaOpCodeMapper> const codes(
        factory->createInstance("com.sun.star.sheet.FormulaOpCodeMapper"), UNO_QUERY_THROW);
    auto const special =
        codes->getAvailableMappings(css::sheet::FormulaLanguage::ENGLISH, css::sheet::FormulaMapGroup::SPECIAL);
    auto const unknown = special[css::sheet::FormulaMapGroupSpecialOffset::BAD].Token.OpCode;
    Reference<css::sheet::XFormulaParser> const parser(factory->createInstance("com.sun.star.sheet.FormulaParser"),
                                                       UNO_QUERY_THROW);
    Reference<css::beans::XPropertySet>(parser, UNO_QUERY_THROW)
        ->setPropertyValue("CompileEnglish", css::uno::Any(true));
    auto const words = parser->parseFormula(wide(formula.substr(1)), {});
    return std::any_of(words.begin(), words.end(),
                       [&](css::sheet::FormulaToken const& word) { return word.OpCode == unknown; });
}

/// Whether the office can read a formula whose result is an error: where it cannot, a cell shows the error even when it
/// never comes to it. Tried in the cell itself. 0: it can.
int error_of_reading(office::Document const& workbook, Reference<css::table::XCell> const& cell,
                     std::string const& formula) {
    int const error = cell->getError();
    if (has_unknown_word(workbook, formula))
        return error;
    cell->setFormula(wide("=IF(TRUE();0;(" + formula.substr(1) + "))"));
    return cell->getError();
}

void put_formula(office::Document const& workbook, Reference<css::table::XCell> const& cell,
                 Assignment const& assignment, std::string const& formula) {
    auto const type = cell->getType();
    double const number = cell->getValue();
    auto const content = type == css::table::CellContentType_TEXT
                             ? Reference<css::text::XTextRange>(cell, UNO_QUERY_THROW)->getString()
                             : cell->getFormula();
    cell->setFormula(wide(formula));
    if (cell->getFormula() == content && !holds(cell, formula)) // a protected cell keeps what it has and says nothing
        throw Trouble(Reason::not_set, assignment.name + " is protected");
    if (cell->getError() == 0)
        return;
    int const error = error_of_reading(workbook, cell, formula);
    if (error == 0) {
        cell->setFormula(wide(formula));
        return;
    }
    put_back(cell, type, number, content);
    throw Trouble(Reason::not_set, assignment.name + " keeps what it has: " + formula +
                                       " is no formula that LibreOffice knows (" + error_text(error) + ")");
}

void put_constant(Target const& target, Assignment const& assignment) {
    if (std::holds_alternative<TypedFormula>(assignment.value))
        throw Trouble(Reason::not_set, assignment.name + " is a constant and takes no formula");
    auto const* const number = std::get_if<double>(&assignment.value);
    target.constant->setContent(
        wide(number != nullptr ? written(*number) : '"' + std::get<std::string>(assignment.value) + '"'));
}

void put(office::Document const& workbook, Reference<css::table::XCell> const& cell, Assignment const& assignment) {
    if (auto const* const formula = std::get_if<TypedFormula>(&assignment.value))
        return put_formula(workbook, cell, assignment, formula->text);
    auto const* const number = std::get_if<double>(&assignment.value);
    if (number != nullptr)
        cell->setValue(*number);
    else
        Reference<css::text::XTextRange>(cell, UNO_QUERY_THROW)
            ->setString(wide(std::get<std::string>(assignment.value)));
    // A protected cell keeps what it has and says nothing.
    Value const now = value_in(cell);
    Value const wanted = number != nullptr ? Value(*number) : Value(std::get<std::string>(assignment.value));
    if (now.index() != wanted.index() || written(now) != written(wanted))
        throw Trouble(Reason::not_set, assignment.name + " is protected");
}

} // namespace

std::optional<Place> assign(office::Document const& workbook, Assignment const& assignment) {
    return office::asking("setting " + assignment.name, [&]() -> std::optional<Place> {
        auto const target = target_of(workbook, assignment.name);
        if (!target)
            throw Trouble(Reason::not_set, "there is no " + assignment.name);
        if (target->constant.is()) {
            put_constant(*target, assignment);
            return std::nullopt;
        }
        if (!target->is_one_cell())
            throw Trouble(Reason::not_set, assignment.name + " is a block of cells");
        put(workbook, target->cells->getCellByPosition(0, 0), assignment);
        return target->place.first;
    });
}

} // namespace hearthcell::archive
