#pragma once
// The part of hearthcell-archive that talks to an office: a library of its own, loaded when the office's are.

#include "extension/archive/recalculation/options.hpp"

/// Does what the command line says. Gives the exit status.
extern "C" [[gnu::visibility("default")]] int hearthcell_archive(hearthcell::archive::Options const& options);

inline constexpr char const* program_library = "libhearthcell-archive.so";
inline constexpr char const* program_function = "hearthcell_archive";
