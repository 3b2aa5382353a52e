#pragma once
// Which attributes of OpenDocument, of OOXML and of SVG hold an address that a reader would fetch by itself.

#include "extension/archive/links/outside.hpp"
#include "extension/archive/links/rewritten_xml.hpp"

namespace hearthcell::archive {

/// Hides them, and the files that formulas of OpenDocument name. Hyperlinks stay, since they wait for a click.
class HideLinks : public Changes {
public:
    /// part: its name in the package. depth: see leads_outside.
    HideLinks(Outside& outside, std::string part, int depth);

    bool change(Tag& tag) override;
    bool leave_out(Tag const& tag) override;
    void closed(std::string_view name) override;
    void outside_entity(std::string_view address) override;

private:
    bool change_relation(Tag& tag);
    bool change_kept_table(Tag& tag);
    bool hide_in_formula(std::string& formula);
    [[nodiscard]] std::string const& where() const { return sheet_.empty() ? part_ : sheet_; }

    Outside& outside_;
    std::string part_, sheet_;
    std::string kept_; // the name for the file of which the table around is a part
    int depth_;
    int tables_ = 0; // open ones
};

} // namespace hearthcell::archive
