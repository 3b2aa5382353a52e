#pragma once
// Which cell of one sheet is that of another, by their labels. Where that is not certain it is refused, with the
// reason.

#include "extension/archive/example/labelled_sheet.hpp"

#include <string>
#include <variant>

namespace hearthcell::archive {

struct Refused {
    std::string why; // "B7: 'Wood' is not on this sheet"
};

class Correspondence {
public:
    using Where = LabelledSheet::Where;

    /// Both must live as long.
    Correspondence(LabelledSheet const& old, LabelledSheet const& target) : old_(old), target_(target) {}

    /// A cell corresponds when the labels that name it are the same in the same places; where they stand elsewhere,
    /// when each of them stands exactly once on both sheets. Its unit must be the same.
    [[nodiscard]] std::variant<Where, Refused> of(Where const& cell) const;

private:
    using Named = std::optional<LabelledSheet::Named>;

    [[nodiscard]] std::variant<Where, Refused> place_of(LabelledSheet::Named const& label) const;
    [[nodiscard]] std::string difference_at(Where const& cell, Where const& there, Named const& left,
                                            Named const& above) const;

    LabelledSheet const& old_;
    LabelledSheet const& target_;
};

} // namespace hearthcell::archive
