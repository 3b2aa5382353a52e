#pragma once
// A number for all that a remark rests on: another one as soon as any of it changes.

#include "extension/checking/questions.hpp"

#include <cstdint>
#include <set>

namespace hearthcell::checking {

/// which: a word for the kind of remark, the same in all languages.
std::uint64_t mark_of(Contents const& contents, formulas::Reads const& reads, Place const& cell,
                      std::string const& formula, std::string_view which);

/// As it is kept, sixteen digits; and a text of such, with blanks between them, read back.
std::string written(std::uint64_t mark);
std::set<std::uint64_t> marks_in(std::string_view text);

} // namespace hearthcell::checking
