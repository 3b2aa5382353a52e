#pragma once
// Writing CSV.

#include <string>
#include <string_view>
#include <vector>

namespace hearthcell::archive {

/// One record by RFC 4180: fields in quotes where they need them, CR LF at the end; no control characters but those of
/// lines and tabs, and nothing but UTF-8; and with backslashes, as below.
std::string csv_row(std::vector<std::string> const& fields);

/// A field with a backslash before what a spreadsheet might take for a formula, and before a backslash, at its front
/// and behind each semicolon, tab, bar and line end: for who opens the file with one of these as separator, a field
/// begins there.
std::string with_backslashes(std::string_view field);

/// The field again: one backslash less at each of these places. (CsvReader does it.)
std::string without_backslashes(std::string_view field);

} // namespace hearthcell::archive
