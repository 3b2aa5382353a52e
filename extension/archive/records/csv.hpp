#pragma once
// Writing CSV.

#include <span>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// One record by RFC 4180: fields in quotes where they need them, CR LF at the end. What is not UTF-8 is replaced.
std::string csv_row(std::vector<std::string> const& fields);

/// The same text with U+FFFD where it is not UTF-8 (file names may be anything).
std::string as_utf8(std::string const& bytes);

} // namespace hearthcell::archive
