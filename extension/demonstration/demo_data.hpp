#pragma once
// Invented data, and how they get into a template.

#include "extension/office/document.hpp"

namespace hearthcell {

/// Types invented data into an open template, sheet by sheet in their order, so that one file serves all languages:
/// {"sheets": [{"cells": {"B9": 1690, "A18:C19": [["B1", 905, null], …], "B3": {"choice": 2}}}]}: a choice is the word
/// of a cell's list by its place, whatever the language. Throws where a cell is locked.
void fill(office::Document const& workbook, std::filesystem::path const& data);

} // namespace hearthcell
