#pragma once
// Addresses of files, as the office wants them.

#include "extension/office/text.hpp"

#include <osl/file.hxx>

#include <filesystem>
#include <stdexcept>

namespace hearthcell::office {

/// file:///… of a path; a relative path is taken from the current folder.
inline rtl::OUString file_url(std::filesystem::path const& path) {
    std::string const whole = std::filesystem::absolute(path).lexically_normal().string();
    rtl::OUString url;
    if (osl::FileBase::getFileURLFromSystemPath(wide(whole), url) != osl::FileBase::E_None)
        throw std::runtime_error("not a path: " + path.string());
    return url;
}

} // namespace hearthcell::office
