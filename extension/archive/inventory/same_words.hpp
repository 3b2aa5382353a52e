#pragma once
// Words that mean the same, as the user pairs them in a file.

#include "extension/archive/inventory/layouts.hpp"

#include <filesystem>

namespace hearthcell::archive {

/// Lines of `word = word`; what begins with # is none. Throws std::exception.
SameWords same_words_in(std::filesystem::path const& file);

/// Such a file, half filled: what stands in the same place in layouts that are much the same, for the user to confirm.
std::string proposed_same_words(std::vector<Layout> const& layouts);

} // namespace hearthcell::archive
