#pragma once
// What all tests inside LibreOffice share: an office with the package, blank sheets, error codes.

#include "extension/office/document.hpp"

#include <gtest/gtest.h>

#include <filesystem>
#include <ostream>
#include <string>
#include <vector>

namespace hearthcell::office {

void PrintTo(CellError const& error, std::ostream* out); // GoogleTest finds it by this name

} // namespace hearthcell::office

namespace hearthcell::tests {

using office::CellError;
using office::CellValue;
using office::Document;
using office::Office;
using office::Sheet;

/// Calc's codes for the errors that cells show.
inline constexpr CellError not_a_result{503};    // #NUM!
inline constexpr CellError parameter_list{504};  // Err:504
inline constexpr CellError not_a_value{519};     // #VALUE!
inline constexpr CellError unknown_name{525};    // #NAME?
inline constexpr CellError not_available{32767}; // #N/A

/// The package under test: HEARTHCELL_PACKAGE of the environment, else the one of this build.
std::filesystem::path package();

/// One running office for all tests, with the package; started when first asked for, and anew after a crash.
Office& office_with_package();
Office& office_without_package();

/// The folder that an office's package was unpacked into.
std::filesystem::path package_of(Office const& office);

/// A folder for the files of a test.
std::filesystem::path scratch_folder();

std::vector<CellValue> evaluate(Office& office, std::vector<std::string> const& formulas);

double number(CellValue const& value); // fails the test when it is none

/// Every test has a blank sheet of its own.
class Calc : public testing::Test {
protected:
    /// Writes the formulas into a column of the sheet in one go and reads what they give.
    std::vector<CellValue> evaluate(std::vector<std::string> const& formulas);
    CellValue evaluate(std::string const& formula);

    Document document = Document::blank(office_with_package());
    Sheet sheet = document.sheet(0);
};

} // namespace hearthcell::tests
