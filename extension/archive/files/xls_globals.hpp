#pragma once
// What an .xls file says before its sheets: which there are, names, and the texts that cells share.

#include "extension/archive/files/room.hpp"
#include "extension/archive/files/xls_formula.hpp"
#include "extension/formulas/names.hpp"

#include <optional>

namespace hearthcell::archive::xls {

struct Globals {
    struct Sheet {
        std::size_t start = 0; // in the stream
        bool holds_cells = false;
    };
    bool with_width = true; // each text says its own; not so before 1997
    std::vector<Sheet> sheets;
    Book book;
    std::vector<std::string> texts;
    std::vector<formulas::Definition> names;
};

/// Nothing when it is encrypted. all: else only where the sheets are.
std::optional<Globals> read_globals(std::string_view stream, bool with_width, bool all, Room& room);

} // namespace hearthcell::archive::xls
