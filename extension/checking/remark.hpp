#pragma once
// A remark of a check: where, what, and on which values it rests.

#include "extension/checking/contents.hpp"

#include <cstdint>

namespace hearthcell::checking {

struct Remark {
    enum class Weight { odd = 1, wrong } weight = Weight::odd;
    Place cell = {};
    int last_row = 0;          // of equal ones down a column
    std::string place = {};    // in words, where it is no cell: a name, a rule
    std::string function = {}; // STOVE.DRYMASS; empty where it is about none
    std::string value = {};    // as it is shown
    std::string sentence = {}, effect = {};
    std::uint64_t mark = 0; // of the values that it rests on

    /// D2, or D2:D9
    [[nodiscard]] std::string cells() const;
};

} // namespace hearthcell::checking
