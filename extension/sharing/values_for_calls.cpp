#include "extension/sharing/values_for_calls.hpp"

#include "extension/formulas/calls.hpp"
#include "extension/formulas/letters.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/table.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/names.hpp"

#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>
#include <array>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using hearthcell::formulas::Token;
using hearthcell::formulas::TokenKind;
using hearthcell::office::narrow;
using hearthcell::office::wide;
using rtl::OUString;

namespace hearthcell::sharing {
namespace {

/// Functions that may look at the cell which they stand in. INDIRECT reads references that nobody else sees.
bool may_look_at_its_cell(Token const& token) {
    constexpr std::array<std::string_view, 5> names{"ROW", "COLUMN", "SHEET", "CELL", "INDIRECT"};
    return token.kind == TokenKind::function && std::any_of(names.begin(), names.end(), [&](std::string_view name) {
               return formulas::is_same_name(name, token.text);
           });
}

std::vector<Varies> ways_of(formulas::Reference const& reference) {
    std::vector<Varies> ways;
    for (formulas::Corner const& corner : {reference.first, reference.last}) {
        if ((corner.column && !corner.column_fixed) || (corner.row && !corner.row_fixed))
            ways.push_back(Varies::from_cell_to_cell);
        if (reference.file.empty() && !reference.first.sheet_fixed)
            ways.push_back(Varies::from_sheet_to_sheet);
    }
    return ways;
}

std::vector<Varies> ways_of(Token const& token) {
    if (token.kind == TokenKind::reference)
        return ways_of(formulas::reference_of(token));
    bool const looks_at_cell =
        may_look_at_its_cell(token) || (token.kind == TokenKind::table && formulas::table_reference_of(token).this_row);
    return std::vector<Varies>(looks_at_cell ? 1 : 0, Varies::from_cell_to_cell);
}

std::size_t first_unprotected(std::vector<Reference<css::sheet::XSpreadsheet>> const& sheets) {
    auto const found = std::find_if(sheets.begin(), sheets.end(), [](auto const& sheet) {
        return !Reference<css::util::XProtectable>(sheet, UNO_QUERY_THROW)->isProtected();
    });
    return found == sheets.end() ? 0 : std::size_t(found - sheets.begin());
}

} // namespace

ValuesForCalls::ValuesForCalls(Reference<css::sheet::XSpreadsheetDocument> const& of_document)
    : document_(of_document), sheets_(sheets_of(document_)), first_writable_(first_unprotected(sheets_)),
      names_(definitions_in(document_)), varies_(names_, [](Token const& token) { return ways_of(token); }) {}

SpareCell& ValuesForCalls::spare_cell(std::size_t sheet) {
    if (!by_itself_)
        by_itself_.emplace(document_, true);
    return spare_cells_.try_emplace(sheet, sheets_.at(sheet)).first->second;
}

OUString ValuesForCalls::in_document(OUString const& formula, std::string const& seen_from) {
    return replace(formula, first_writable_, seen_from, {});
}

OUString ValuesForCalls::in_sheet(std::size_t sheet, OUString const& formula) {
    return replace(formula, sheet, name_of(sheets_.at(sheet)), {Varies::from_sheet_to_sheet});
}

OUString ValuesForCalls::replace(OUString const& formula, std::size_t sheet, std::string const& seen_from,
                                 std::set<Varies> const& may_vary) {
    std::string const before = narrow(formula);
    std::vector<Token> const tokens = formulas::tokens_of(before);
    std::string result;
    std::size_t done = 0;
    for (std::size_t at = 0; at < tokens.size(); ++at) {
        std::size_t const end = formulas::is_ours(tokens[at]) ? formulas::end_of_call(tokens, at) : tokens.size();
        if (end == tokens.size())
            continue;
        std::string const call = before.substr(tokens[at].start, tokens[end].end() - tokens[at].start);
        std::set<Varies> const ways = varies_.in(call, seen_from);
        if (!std::includes(may_vary.begin(), may_vary.end(), ways.begin(), ways.end()))
            continue;
        if (auto const value = spare_cell(sheet).value_of(wide(call))) {
            result += before.substr(done, tokens[at].start - done) + narrow(*value);
            done = tokens[end].end();
            at = end;
        }
    }
    return wide(result + before.substr(done));
}

} // namespace hearthcell::sharing
