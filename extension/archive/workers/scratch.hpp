#pragma once
// The folder of a run for what nobody shall find afterwards: profiles of offices, private copies.

#include <filesystem>

namespace hearthcell::archive {

/// It is made in the folder for temporary files, and deleted with this object. A lock in it is held as long as the
/// process lives, however that ends: so each run first clears away the folders of those that were killed.
class Scratch {
public:
    Scratch();
    ~Scratch();
    Scratch(Scratch const&) = delete;
    Scratch& operator=(Scratch const&) = delete;

    std::filesystem::path folder;

private:
    int lock_ = -1;
};

/// Deletes a worker's part of it, with the sockets of its offices. An office that is dying may still write there: then
/// it is tried again, for a second at the most.
void clear_away(std::filesystem::path const& part);

/// By a worker, when its scheduler is gone and its own part is cleared away: the last one deletes the whole folder.
void clear_away_if_last(std::filesystem::path const& folder);

} // namespace hearthcell::archive
