#pragma once
// Old sheets that never heard of our functions, and copies of them that were started by the menu's command.

#include "commands.hpp"

namespace hearthcell::tests {

/// An old sheet with a hand-written boiling point, stored in the format that its name ends with.
void make_old_sheet(Office& office, std::filesystem::path const& file, double altitude);

/// What a document remembers: a property of its own that the user can see, too.
std::string remembered_original(com::sun::star::uno::Reference<com::sun::star::uno::XInterface> const& document);

/// Stores a document, which has the file from then on, in the format that its name ends with.
void save_as(com::sun::star::uno::Reference<com::sun::star::frame::XModel> const& document,
             std::filesystem::path const& file);

/// A folder with old sheets of some years, and the office that they are to be worked on in.
class OldSheets : public testing::Test {
protected:
    OldSheets();
    ~OldSheets() override;

    /// Gives the command that starts from one of them, and takes the document that it opens.
    com::sun::star::uno::Reference<com::sun::star::frame::XModel> start_from(Office& office,
                                                                             std::filesystem::path const& old_sheet);

    std::filesystem::path const folder = scratch_folder() / "old sheets and new", sheets = folder / "old sheets",
                                original = sheets / "2014" / "first.ods", results = folder / "results";
    Said said;
};

} // namespace hearthcell::tests
