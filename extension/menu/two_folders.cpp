#include "extension/menu/two_folders.hpp"

#include "extension/menu/package_files.hpp"

#include <cstdlib>
#include <memory>

using rtl::OUString;

namespace hearthcell::menu {
namespace {

/// A path without links, dots and doubled slashes, as far as there is something; what is yet to be made stays.
std::string resolved(std::string const& path) {
    std::size_t const last = path.find_last_not_of('/');
    if (last == std::string::npos)
        return "/";
    std::unique_ptr<char, void (*)(void*)> const real(::realpath(path.c_str(), nullptr), std::free);
    if (real)
        return real.get();
    std::size_t const slash = path.rfind('/', last);
    std::string const above = slash == std::string::npos ? std::string("/") : resolved(path.substr(0, slash));
    return (above == "/" ? above : above + "/") + path.substr(slash + 1, last - slash);
}

bool lies_in(std::string const& path, std::string const& folder) {
    return folder == "/" || path == folder || path.compare(0, folder.size() + 1, folder + "/") == 0;
}

} // namespace

OUString trouble_with_folders(Surroundings const& surroundings, OUString const& source, OUString const& results) {
    if (!is_there(source))
        return surroundings.say(Text::folder_missing, source);
    std::string const from = resolved(bytes(source)), to = resolved(bytes(results));
    if (!results.startsWith("/") || lies_in(to, from) || lies_in(from, to))
        return surroundings.say(Text::results_elsewhere, results);
    return {};
}

} // namespace hearthcell::menu
