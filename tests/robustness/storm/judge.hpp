#pragma once
// Whether what a cell shows may be, and is what the call must give.

#include "calc_rules.hpp"

#include <map>
#include <set>

namespace hearthcell::storm {

/// Counts of what was called and what came of it.
struct Tally {
    struct Results {
        long calls = 0, numbers = 0, texts = 0, errors = 0;
    };
    std::map<std::string_view, Results> functions; // every function of the catalogue
    std::array<long, std::size_t(Written::count)> written{};
    std::map<int, long> errors; // by their codes
    long compared = 0;

    Tally();
    void count(Call const& call, CellValue const& value);
    void print() const;
    /// Functions and ways of writing that never occurred, and functions that never gave anything but errors.
    [[nodiscard]] std::vector<std::string> gaps() const;
};

std::string in_words(Content const& value);

/// What is wrong with the value that the call's cell shows; empty when nothing is.
std::string fault(Call const& call, Ground const& ground, CellValue const& value);

} // namespace hearthcell::storm
