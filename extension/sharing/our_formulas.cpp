#include "extension/sharing/our_formulas.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>

#include <map>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::sharing {
namespace {

bool is_part_of_a_word(sal_Unicode c) {
    bool const letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    return letter || (c >= '0' && c <= '9') || c == '_' || c == '.' || c > 127;
}

/// The place after a text in quotes. A doubled quote inside reads as two texts side by side, which is as good here.
sal_Int32 after_quotes(OUString const& formula, sal_Int32 place) {
    sal_Int32 const end = formula.indexOf(formula[place], place + 1);
    return end < 0 ? formula.getLength() : end + 1;
}

bool is_followed_by_arguments(OUString const& formula, sal_Int32 place) {
    while (place < formula.getLength() && formula[place] == ' ')
        ++place;
    return place < formula.getLength() && formula[place] == '(';
}

/// The stored name, and the name in the cell, which is what is left of a call where the package is missing.
bool is_our_function(OUString const& word) {
    return word.startsWith("hearthcell.stove.") || word.startsWith("stove.");
}

bool is_multiple_operations(OUString const& word) {
    return word == "multiple.operations" || word == "table"; // TABLE is what getFormula calls it
}

/// A name that belongs to a sheet can stand behind the sheet's name and a dot.
bool is_one_of(Names const& names, OUString const& word) {
    return names.count(word) > 0 || names.count(word.copy(word.lastIndexOf('.') + 1)) > 0;
}

void read_definitions(css::uno::Any const& owner, std::map<OUString, OUString>& definitions) {
    Reference<css::beans::XPropertySet> const properties(owner, UNO_QUERY_THROW);
    Reference<css::sheet::XNamedRanges> const names(properties->getPropertyValue("NamedRanges"), UNO_QUERY_THROW);
    for (OUString const& name : names->getElementNames()) {
        Reference<css::sheet::XNamedRange> const defined(names->getByName(name), UNO_QUERY_THROW);
        // Two sheets may each have a name of their own that is spelled the same: one of ours is enough.
        definitions[name.toAsciiLowerCase()] += " " + defined->getContent();
    }
}

} // namespace

bool needs_us(OUString const& formula, Names const& names) {
    sal_Int32 place = 0;
    while (place < formula.getLength()) {
        if (formula[place] == '"' || formula[place] == '\'') {
            place = after_quotes(formula, place);
            continue;
        }
        sal_Int32 const start = place;
        while (place < formula.getLength() && is_part_of_a_word(formula[place]))
            ++place;
        if (place == start) {
            ++place;
            continue;
        }
        OUString const word = formula.copy(start, place - start).toAsciiLowerCase();
        if (is_one_of(names, word))
            return true;
        if ((is_our_function(word) || is_multiple_operations(word)) && is_followed_by_arguments(formula, place))
            return true;
    }
    return false;
}

Names names_that_need_us(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    std::map<OUString, OUString> definitions;
    read_definitions(css::uno::Any(document), definitions);
    Reference<css::container::XIndexAccess> const sheets(document->getSheets(), UNO_QUERY_THROW);
    for (sal_Int32 index = 0; index < sheets->getCount(); ++index)
        read_definitions(sheets->getByIndex(index), definitions);

    Names names;
    bool found = true;
    while (found) {
        found = false;
        for (auto const& [name, definition] : definitions)
            if (names.count(name) == 0 && needs_us(definition, names)) {
                names.insert(name);
                found = true;
            }
    }
    return names;
}

} // namespace hearthcell::sharing
