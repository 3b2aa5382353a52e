#include "extension/archive/example/correspondence.hpp"

#include "extension/archive/example/seen_workbook.hpp"

namespace hearthcell::archive {
namespace {

using Where = Correspondence::Where;

std::string word_of(std::optional<LabelledSheet::Named> const& label) {
    return label ? "'" + label->text + "'" : std::string("no label");
}

} // namespace

/// A label that stands in several places stands for itself only where it does so on both sheets alike.
std::variant<Where, Refused> Correspondence::place_of(LabelledSheet::Named const& label) const {
    auto const &before = old_.places(label.key), &now = target_.places(label.key);
    if (before == now) {
        // Of a word in several sections the heading above says which one it is.
        if (before.size() > 1 && !is_same_word(old_.above(label.where), target_.above(label.where)))
            return Refused{"'" + label.text + "' stands more than once, and under another heading"};
        return label.where;
    }
    if (now.empty())
        return Refused{"'" + label.text + "' is not on this sheet"};
    if (before.size() != 1 || now.size() != 1)
        return Refused{"'" + label.text + "' stands more than once, and not in the same places"};
    return *now.begin();
}

std::variant<Where, Refused> Correspondence::of(Where const& cell) const {
    Named const left = old_.to_the_left(cell), above = old_.above(cell);
    if (!left && !above)
        return Refused{name_of(cell) + ": no label names it"};
    Where there = cell;
    for (bool const is_left : {false, true}) { // of the row the label to the left says more
        Named const& label = is_left ? left : above;
        if (!label)
            continue;
        auto const place = place_of(*label);
        if (auto const* const refused = std::get_if<Refused>(&place))
            return Refused{name_of(cell) + ": " + refused->why};
        Where const to = std::get<Where>(place);
        there.first = to.first + cell.first - label->where.first;
        if (!is_left || !above)
            there.second = to.second + cell.second - label->where.second;
    }
    if (std::string const difference = difference_at(cell, there, left, above); !difference.empty())
        return Refused{name_of(cell) + ": " + difference};
    return there;
}

/// Between what names a cell and what names the one that was found for it; empty where there is none.
std::string Correspondence::difference_at(Where const& cell, Where const& there, Named const& left,
                                          Named const& above) const {
    if (there.first < 0 || there.second < 0)
        return "it would lie outside the sheet";
    if (Named const now = target_.to_the_left(there); !is_same_word(left, now))
        return name_of(there) + " has " + word_of(now) + " to its left, not " + word_of(left);
    // Where the row is known, a label above that only an inserted row brought does not count.
    Named const above_there = target_.above(there, left ? &old_ : nullptr);
    if (!is_same_word(above, above_there))
        return name_of(there) + " has " + word_of(above_there) + " above it, not " + word_of(above);
    if (!left && old_.between(*above, cell) != target_.between(*above_there, there))
        return "what stands between it and " + word_of(above) + " is something else";
    if (left && old_.units_after({cell.first, left->where.second}, cell) !=
                    target_.units_after({there.first, target_.to_the_left(there)->where.second}, there))
        return "the unit between it and " + word_of(left) + " is another one";
    if (above && old_.units_after({above->where.first, cell.second}, cell) !=
                     target_.units_after({above_there->where.first, there.second}, there))
        return "the unit below " + word_of(above) + " is another one";
    if (Named const before = old_.unit_of(cell), now = target_.unit_of(there); !is_same_word(before, now))
        return "its unit is " + (now ? word_of(now) : "not given") + ", not " + (before ? word_of(before) : "left out");
    return {};
}

} // namespace hearthcell::archive
