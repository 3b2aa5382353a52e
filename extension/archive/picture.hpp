#pragma once
// The workbook summary.ods, made of what the reports found, by a worker.

#include "extension/archive/report/reports.hpp"
#include "extension/archive/workers/pool.hpp"

namespace hearthcell::archive {

/// Makes summary.ods in the output folder. A workbook of the archive may have that name there; then it is
/// summary-of-archive.ods. What hinders it is listed in the reports. Gives the signal that stopped it, 0: none did.
int make_picture(Pool& pool, std::filesystem::path const& output, Reports& reports);

/// Takes it away again: of an earlier run, with other options.
void remove_picture(std::filesystem::path const& output);

} // namespace hearthcell::archive
