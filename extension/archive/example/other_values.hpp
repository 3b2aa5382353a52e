#pragma once
// Other values of the constants of an example for some folders, years or workbooks: --values-by-folder.

#include <filesystem>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// Another value of a constant for some workbooks: a line of --values-by-folder.
struct OtherValue {
    std::string where; // a folder, a year or a workbook
    std::string argument, value;
};
/// Lines of folder,argument,value. Throws std::exception.
std::vector<OtherValue> other_values_in(std::filesystem::path const& file);

bool holds_for(OtherValue const& value, std::string const& relative);

/// Of several that hold for a workbook the one that says most exactly where; none: the constant stays.
OtherValue const* other_value_of(std::string const& argument, std::vector<OtherValue> const& values,
                                 std::string const& relative);

/// The formula with the values for a workbook.
std::string with_other_values(std::string_view formula, std::vector<OtherValue> const& values,
                              std::string const& relative);

} // namespace hearthcell::archive
