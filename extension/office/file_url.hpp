#pragma once
// Addresses of files, as the office wants them.

#include <rtl/ustring.hxx>

#include <filesystem>

namespace hearthcell::office {

/// file:///… of a path; a relative path is taken from the current folder.
rtl::OUString file_url(std::filesystem::path const& path);

} // namespace hearthcell::office
