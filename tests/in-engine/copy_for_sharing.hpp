#pragma once
// What the tests of copies for sharing have in common.

#include "commands.hpp"
#include "comments.hpp"

namespace hearthcell::tests {

/// Numbers to the 15 digits that Calc writes into a file.
void expect_same(office::ValueRows const& after, office::ValueRows const& before);

/// Gives an expression a name in the whole document.
void define(Document const& document, std::string const& name, std::string const& means);

/// What an entry of a zipped file holds, as text.
std::string entry_of(std::filesystem::path const& file, std::string const& entry);

/// Every test has a blank sheet of its own and may make a copy of it.
class CopyForSharing : public Calc {
protected:
    CopyForSharing();

    /// Gives the command and expects it to be carried out.
    void share(Document const& original);

    /// The copy as somebody opens it who does not have Hearthcell.
    [[nodiscard]] Document received() const;

    std::filesystem::path const copy = scratch_folder() / "stove, 2 runs for sharing.ods";
};

} // namespace hearthcell::tests
