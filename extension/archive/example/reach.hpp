#pragma once
// How far a formula goes on a sheet: exactly where the old result stands.

#include "extension/archive/example/placing.hpp"

namespace hearthcell::archive {

/// A cell that keeps what it holds.
struct LeftCell {
    Place place;
    std::string why;
};

class Reach {
public:
    /// All must live as long.
    Reach(FitWish const& wish, SeenWorkbook const& target, int sheet);

    /// Notes the steps of a formula, and cells in its way that keep what they hold. Refused where the old result that
    /// it goes along is not known as it reads on this sheet.
    [[nodiscard]] std::optional<Refused> find_steps(Placed& one, std::vector<LeftCell>& left) const;

private:
    using Where = LabelledSheet::Where;

    [[nodiscard]] bool goes_down(Placed const& one) const;
    [[nodiscard]] std::vector<Step> possible_steps(Placed const& one, bool goes_down) const;
    [[nodiscard]] bool is_old_result(Placed const& one, Step const& step) const;
    [[nodiscard]] bool may_go_to(Placed const& one, Step const& step) const;
    void look_at_other(Placed& one, Step const& step, std::vector<LeftCell>& left) const;

    SeenWorkbook const& old_;
    SeenWorkbook const& target_;
    int const old_sheet_, sheet_;
};

/// Whether a formula stands already where it is to go.
bool stands_there(SeenWorkbook const& target, int sheet, Placed const& one, Step const& step);

} // namespace hearthcell::archive
