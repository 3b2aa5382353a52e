#include "extension/checking/by_hand.hpp"

namespace hearthcell::checking {

std::optional<ByHand> recognised_by_hand(Contents const& contents, formulas::Reads const& reads, Place const& cell,
                                         std::string const& formula) {
    formulas::Surroundings const surroundings{
        reads,
        [&](Place const& place) {
            Content const* const content = contents.at(place);
            bool const is_typed = content != nullptr && content->formula.empty();
            double const* const number = is_typed ? std::get_if<double>(&content->value) : nullptr;
            return number == nullptr ? std::nullopt : std::optional(*number);
        },
        [&](Place const& place) {
            Content const* const content = contents.at(place);
            return content == nullptr ? std::string_view() : std::string_view(content->formula);
        }};
    auto form = formulas::recognised(formula, cell, surroundings);
    return form ? std::optional(ByHand{cell, std::move(*form)}) : std::nullopt;
}

} // namespace hearthcell::checking
