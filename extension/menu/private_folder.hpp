#pragma once
// A folder for files of ours that nobody else is to see. No UNO here.

#include <string>

namespace hearthcell::menu {

/// Made with this object, and gone with it, with all that is in it.
class PrivateFolder {
public:
    PrivateFolder(); ///< throws std::system_error
    ~PrivateFolder();
    PrivateFolder(PrivateFolder const&) = delete;
    PrivateFolder& operator=(PrivateFolder const&) = delete;

    [[nodiscard]] std::string const& path() const { return path_; }

private:
    std::string path_;
};

} // namespace hearthcell::menu
