#pragma once
// Writing CSV.

#include <string>
#include <string_view>
#include <vector>

namespace hearthcell::archive {

/// One record by RFC 4180: fields in quotes where they need them, CR LF at the end; no control characters but those of
/// lines and tabs, and nothing but UTF-8.
/// A text that a spreadsheet might take for a formula has a backslash before it, and so has one that begins with a
/// backslash: who reads the file takes one backslash off the front of a field. (CsvReader does.)
std::string csv_row(std::vector<std::string> const& fields);

/// Whether a field needs that backslash.
bool needs_backslash(std::string_view field);

} // namespace hearthcell::archive
