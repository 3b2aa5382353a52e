#pragma once
// How many results changed, of which functions and by how much.

#include "extension/archive/recalculation/change.hpp"

#include <nlohmann/json_fwd.hpp>

#include <array>
#include <cstdint>
#include <map>
#include <string>

namespace hearthcell::archive {

/// What changed, counted: of one workbook or of many.
struct Tally {
    /// The changes of the cells that call a function (or of those that call none of ours).
    struct Group {
        std::uint64_t cells = 0;
        std::uint64_t own = 0;           // of these, that read no changed cell
        std::optional<double> low, high; // relative changes of numbers
    };

    std::uint64_t formulas = 0;
    std::uint64_t ours = 0;           // of these, that call functions of ours
    std::uint64_t given = 0;          // besides, that this run put there
    std::uint64_t without_result = 0; // of which the file holds no result
    std::uint64_t stored_errors = 0;  // that the file holds as results
    std::uint64_t unchanged = 0;
    std::uint64_t links_not_followed = 0; // results lost, since the file holds no copy of what they are linked to
    std::uint64_t volatile_cells = 0;     // changed by themselves, not counted below
    std::uint64_t last_digits = 0;        // changed by rounding alone, not counted below
    std::map<std::string, std::uint64_t> kinds;
    std::map<std::string, Group> functions; // "" for formulas without any of ours
    std::array<std::uint64_t, 5> sizes{};   // see size_words

    void count(Change const& change);
    void add(Tally const& other);
    [[nodiscard]] std::uint64_t changed() const;
};

/// The classes of relative change in Tally::sizes.
extern std::array<std::string_view, 5> const size_words;
std::size_t size_class(double relative);

void to_json(nlohmann::json& json, Tally const& tally);
void from_json(nlohmann::json const& json, Tally& tally);

} // namespace hearthcell::archive
