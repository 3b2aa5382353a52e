#pragma once
// Which cell of one sheet is that of another, by their labels. Where that is not certain it is refused, with the
// reason.

#include "extension/archive/example/labelled_sheet.hpp"

#include <string>
#include <string_view>
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

    /// A formula of a cell of the old sheet as it is to stand in a cell of the other one: each cell that it reads is
    /// replaced by the one that corresponds. Refused where there is none, and for other sheets and names.
    [[nodiscard]] std::variant<std::string, Refused> of(std::string_view formula) const;

private:
    using Named = std::optional<LabelledSheet::Named>;

    [[nodiscard]] std::variant<Where, Refused> place_of(LabelledSheet::Named const& label) const;
    [[nodiscard]] std::string difference_at(Where const& cell, Where const& there, Named const& left,
                                            Named const& above) const;

    LabelledSheet const& old_;
    LabelledSheet const& target_;
};

} // namespace hearthcell::archive
