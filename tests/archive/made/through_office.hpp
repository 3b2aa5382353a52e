#pragma once
// Workbooks that a real office writes, with older results put into the files afterwards.

#include "extension/office/document.hpp"
#include "workbook.hpp"

namespace hearthcell::tests::archive {

/// .xlsx or .xls. The office has to have the package.
void write_through_office(Workbook const& workbook, office::Office& office, std::filesystem::path const& file);

/// A copy of a flat workbook in any format, under a password.
void write_with_password(office::Office& office, std::filesystem::path const& flat, std::filesystem::path const& file);

} // namespace hearthcell::tests::archive
