#include "extension/archive/recalculation/comparison.hpp"

#include "extension/archive/recalculation/causes.hpp"
#include "extension/archive/recalculation/formula_cells.hpp"
#include "extension/archive/recalculation/meanings.hpp"
#include "extension/formulas/calls.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/tokens.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

/// Calc does not keep a saved result whose link it must not follow, unless the file holds a copy of what was linked.
bool lost_its_link(Stored const& before, Value const& after) {
    auto const* const fault = std::get_if<Fault>(&after);
    return fault != nullptr && fault->code == link_not_followed && !std::holds_alternative<Fault>(before.value);
}

bool calls_ours(std::string const& formula) {
    return formula.find("STOVE.") != std::string::npos &&
           std::ranges::any_of(formulas::tokens_of(formula), formulas::is_ours);
}

} // namespace

Comparison compare(office::Document const& workbook, StoredResults const& stored, std::set<Place> const& set,
                   Places const& places, Numbers* numbers) {
    Comparison all;
    visit_formulas(workbook, [&](Place const& place, Value const& after, Formula const& formula) {
        ++all.tally.formulas;
        if (auto const* const number = std::get_if<double>(&after); number != nullptr && numbers != nullptr)
            (*numbers)[place] = *number;
        if (calls_ours(formula()))
            ++(set.contains(place) ? all.tally.given : all.tally.ours);
        Stored const* const found = stored.find(place);
        Stored before = found != nullptr ? *found : Stored{place, {}, false};
        if (before.perhaps_text && std::holds_alternative<std::string>(after))
            before.value = {};
        if (lost_its_link(before, after)) {
            ++all.tally.links_not_followed;
            return;
        }
        all.tally.stored_errors += std::holds_alternative<Fault>(before.value) ? 1 : 0;
        auto const kind = kind_of_change(before, after);
        if (std::holds_alternative<std::monostate>(before.value))
            all.tally.without_result += set.contains(place) ? 0 : 1; // a formula that --set put there has none
        else if (!kind)
            ++all.tally.unchanged;
        if (!kind)
            return;
        Change change;
        change.place = place;
        change.formula = with_original_links(formulas::as_shown(formula()), places);
        change.before = before.value;
        change.after = after;
        change.relative = relative_change(before.value, after);
        change.kind = *kind;
        all.changes.push_back(std::move(change));
    });
    if (all.changes.empty())
        return all;
    std::sort(all.changes.begin(), all.changes.end(),
              [](Change const& a, Change const& b) { return a.place < b.place; });
    Meanings const meanings(workbook);
    Read read;
    for (Change& change : all.changes) {
        change.sheet = meanings.sheet(change.place);
        change.functions = meanings.functions(change.formula, change.place);
        if (meanings.is_volatile(change.formula, change.place))
            change.volatility = Volatility::itself;
        read.push_back(meanings.reads(change.formula, change.place));
    }
    mark_what_follows(all.changes, read);
    mark_own(all.changes, set, read);
    for (Change const& change : all.changes)
        all.tally.count(change);
    return all;
}

} // namespace hearthcell::archive
