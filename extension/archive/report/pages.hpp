#pragma once
// The pages of the summary, made of counts and findings.

#include "extension/archive/report/findings.hpp"
#include "extension/archive/report/page.hpp"
#include "extension/archive/report/summary.hpp"

namespace hearthcell::archive {

/// What stands on the pages of the summary, each of which fits on one sheet of paper.
std::vector<Page> pages_of(Summary const& summary, Findings const& findings, Agreement const& agreement);

// One by one:
Page page_by_function(Summary const& summary);
Page page_by_folder(Summary const& summary, Findings const& findings);
Page page_of_largest(Findings const& findings);
Page page_of_sizes(Summary const& summary, Findings const& findings);
Page page_of_problems(Summary const& summary, Findings const& findings);
Page page_of_remarks(Summary const& summary, Findings const& findings);
Page page_of_old_and_new(Summary const& summary, Agreement const& agreement);
Page page_of_collected(Summary const& summary, Findings const& findings);

// Their parts:
PageCell text_cell(std::string const& text);
PageCell count_cell(std::uint64_t number);
PageCell number_cell(std::optional<double> const& number);
PageCell linked_cell(Origin const& origin);

/// "and 12 more in changes.csv"; nothing when all is shown.
void add_more(Page& page, std::uint64_t all, std::uint64_t shown, std::string const& of, std::string const& where);

} // namespace hearthcell::archive
