#pragma once
// What in a formula reaches out of its document, or depends on the cell that it stands in.

#include "extension/formulas/names.hpp"

#include <string_view>

namespace hearthcell::checking {

/// Whether working it out may open a file or ask a server: other files, WEBSERVICE, DDE; and INDIRECT, which makes any
/// address at all of a text. MULTIPLE.OPERATIONS counts, too: it needs the formulas of other cells.
bool leads_outside(std::string_view formula);

/// The same, through the names that a document defines.
class Outward {
public:
    explicit Outward(formulas::Names const& names);

    [[nodiscard]] bool leads_outside(std::string_view formula, std::string_view sheet) const;
    /// Whether it means something else in another cell of its sheet, with the same references in it.
    [[nodiscard]] bool looks_at_its_cell(std::string_view formula, std::string_view sheet) const;

private:
    enum class Fact { outside, cell };
    formulas::Names const& names_;
    formulas::Followed<Fact> facts_;
};

} // namespace hearthcell::checking
