#pragma once
// What UNCERTAINTY and BUDGET have to say to EXPLAIN; and why they, and MONTECARLO, have no result.

#include "functions/about/uncertain_call.hpp"
#include "functions/words/speaker.hpp"

namespace hearthcell {

/// The result that the uncertainty belongs to, whether first order is enough, and what counts as exactly known.
Remarks remark_on_uncertainty(std::span<Value const> given, Language language);

/// Adds a sentence that lists what counts as exactly known because it was not typed as a number: defaults and typical
/// values, each with the interval that its source gives, where the catalogue knows one. None where there is nothing.
void add_assumed(Speaker const& say, Sentences& said, UncertainCall const& asked, Block const& values);

/// Why the function asked about failed with these values; empty where it is not that which failed.
std::string why_no_uncertainty(std::span<Value const> given, Language language);

} // namespace hearthcell
