#pragma once
// The archive that the tests work on, in the build tree.

#include "bad_files.hpp"
#include "workbook.hpp"

namespace hearthcell::tests::archive {

/// Values of the workbook that others link to: as they have seen it, and as it is.
inline constexpr double link_as_saved = 41, link_today = 73;

struct TestArchive {
    std::filesystem::path folder;

    [[nodiscard]] std::filesystem::path good() const { return folder / "good"; }        ///< the mixed workbooks
    [[nodiscard]] std::filesystem::path odd() const { return folder / "odd"; }          ///< bad files and special ones
    [[nodiscard]] std::filesystem::path slow() const { return folder / "slow"; }        ///< a formula without end
    [[nodiscard]] std::filesystem::path marker() const { return folder / "macro ran"; } ///< must never be there

    /// All workbooks that can be recalculated, with their paths from this folder.
    [[nodiscard]] std::vector<Workbook> recalculable() const;

    void make(int count) const;
};

} // namespace hearthcell::tests::archive
