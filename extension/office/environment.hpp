#pragma once
// What the environment says: settings, and where a program is. Needs nothing of the office.

#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <string>
#include <string_view>

namespace hearthcell::office {

/// The value of a variable; empty where it is not set.
inline std::string setting(char const* variable) {
    char const* const value = std::getenv(variable);
    return value == nullptr ? std::string() : value;
}

/// The program of that name in the first of a path's folders that has it; empty where none has. A folder that is not
/// absolute would be another one wherever somebody happens to be: it is passed over.
inline std::string program_in(std::string_view path, std::string_view name) {
    while (!path.empty()) {
        std::string_view const folder = path.substr(0, path.find(':'));
        std::string file = std::string(folder).append("/").append(name);
        if (folder.starts_with('/') && ::access(file.c_str(), X_OK) == 0)
            return file;
        path.remove_prefix(std::min(path.size(), folder.size() + 1));
    }
    return {};
}

} // namespace hearthcell::office
