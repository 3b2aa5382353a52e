#pragma once
// Hand-written formulas that compute what a function of ours does.

#include "extension/checking/contents.hpp"
#include "extension/formulas/reads.hpp"
#include "extension/formulas/recognition/recognised.hpp"

namespace hearthcell::checking {

struct ByHand {
    Place first; // of the cells that it was filled into
    formulas::PublishedForm form;
};

/// What a formula of a document is, if it is one of them.
std::optional<ByHand> recognised_by_hand(Contents const& contents, formulas::Reads const& reads, Place const& cell,
                                         std::string const& formula);

} // namespace hearthcell::checking
