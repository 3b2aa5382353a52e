#pragma once
// All functions, subject by subject, and how one is found. The list itself is put together above all subjects, in
// functions/subjects/subjects.cpp: some of them are functions about functions.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

struct Group {
    Wording title;
    std::span<Function const> functions;
};

std::array<Group, 11> catalogue();

/// By the name after "STOVE.", with or without it, in any letter case; or by the name that it once had.
Function const* find_function(std::string_view name);

/// "BOILINGPOINT" of " stove.boilingpoint", in the letters that were typed: blanks around it and "STOVE." are left out.
std::string_view without_prefix(std::string_view name);

} // namespace hearthcell
