#include "extension/archive/recalculation/meanings.hpp"

#include "extension/formulas/calls.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/office/text.hpp"

using hearthcell::formulas::Token;

namespace hearthcell::archive {

Meanings::Meanings(office::Document const& workbook)
    : Meanings(office::asking("reading the names of the workbook",
                              [&] { return sharing::read_defined(workbook.model()); })) {}

Meanings::Meanings(sharing::Defined defined)
    : sheets_(std::move(defined.sheets)), tables_(std::move(defined.tables)), names_(std::move(defined.names)),
      volatile_(names_,
                [](Token const& token) { return std::vector<bool>(formulas::is_volatile(token) ? 1 : 0, true); }),
      functions_(names_,
                 [](Token const& token) {
                     Function const* const function = formulas::function_called(token);
                     return std::vector<Function const*>(function == nullptr ? 0 : 1, function);
                 }),
      reads_(sheets_, names_, tables_) {}

std::string const& Meanings::sheet(formulas::Place const& cell) const {
    return sheets_.at(std::size_t(cell.sheet));
}

bool Meanings::is_volatile(std::string const& formula, formulas::Place const& cell) const {
    return !volatile_.in(formula, sheet(cell)).empty();
}

std::set<Function const*> Meanings::functions(std::string const& formula, formulas::Place const& cell) const {
    return functions_.in(formula, sheet(cell));
}

std::vector<formulas::Range> Meanings::reads(std::string const& formula, formulas::Place const& cell) const {
    return reads_.of(formula, cell);
}

} // namespace hearthcell::archive
