#pragma once
// Addresses come back into what an office has saved.

#include "extension/archive/links/outside.hpp"
#include "extension/archive/links/rewritten_xml.hpp"

namespace hearthcell::archive {

/// Puts the addresses back that HideLinks hid.
class PutLinksBack : public Changes {
public:
    explicit PutLinksBack(Outside const& outside) : outside_(outside) {}
    bool change(Tag& tag) override;
    bool change_text(std::string& text) override;

private:
    Outside const& outside_;
    std::string kept_; // the address of the workbook of which the table around is a part
};

} // namespace hearthcell::archive
