#pragma once
// Looks at a workbook's content, without an office: what its sheets are, and what is odd in them.

#include "extension/archive/files/contents.hpp"
#include "extension/archive/files/problem.hpp"
#include "extension/archive/inventory/sheet_facts.hpp"

namespace hearthcell::archive {

struct Looked {
    std::vector<SheetFacts> sheets;
    std::vector<Problem> problems; // results typed over, numbers that are texts, stored errors
};
Looked look_at(Contents& contents);

/// Of a file that is no larger than that. Throws Trouble.
Looked look_at(std::filesystem::path const& file, Format format, std::uint64_t largest);

/// What needs a look, a problem a kind.
std::vector<Problem> oddities_in(Contents const& contents);

} // namespace hearthcell::archive
