#pragma once
// The share of carbon in fuels, for those of fuels.hpp of which a value can be cited. They answer to the same names.

#include "functions/catalogue/fuels.hpp"

namespace hearthcell {

namespace carbon_state {
inline constexpr Wording dry{"carbon in the dry fuel, with its ash", "carbone du combustible sec, cendres comprises",
                             "carbono del combustible seco, con su ceniza", "kaboni ya fueli kavu, pamoja na majivu"};
inline constexpr Wording dry_maybe_without_ash{
    "carbon in the dry fuel; perhaps without ash: to be checked",
    "carbone du combustible sec\u00a0; peut-être sans cendres\u00a0: à vérifier",
    "carbono del combustible seco; quizá sin ceniza: por verificar",
    "kaboni ya fueli kavu; labda bila majivu: ihakikiwe"};
inline constexpr Wording as_burned{"carbon in the fuel as it is burned", "carbone du combustible tel que brûlé",
                                   "carbono del combustible tal como se quema", "kaboni ya fueli kama inavyochomwa"};
} // namespace carbon_state

/// That fuel's names with another value. What is no fuel does not compile.
consteval Named carbon_in(std::string_view fuel, double share, Source const& source, Wording const& what) {
    for (Named const& row : fuel_rows)
        if (row.name.english == fuel)
            return {.name = row.name, .value = share, .source = source, .what = what, .also = row.also};
    throw "no such fuel";
}

inline constexpr Named carbon_rows[] = {
    carbon_in("coniferous wood", 0.51, sources::iso_17225, carbon_state::dry_maybe_without_ash),
    carbon_in("broad-leaf wood", 0.49, sources::iso_17225, carbon_state::dry_maybe_without_ash),
    carbon_in("leucaena", 0.482, sources::composition_in_fuel, carbon_state::dry),
    carbon_in("corn cobs", 0.476, sources::composition_in_fuel, carbon_state::dry),
    carbon_in("rice husk", 0.389, sources::composition_in_fuel, carbon_state::dry),
    carbon_in("coconut shell", 0.502, sources::composition_in_fuel, carbon_state::dry),
    carbon_in("groundnut shell", 0.483, sources::composition_in_fuel, carbon_state::dry),
    carbon_in("charcoal", 0.9, sources::ipcc_2006_carbon, carbon_state::dry),
    carbon_in("kerosene", 0.858, sources::ipcc_2006_carbon, carbon_state::as_burned),
    carbon_in("liquefied petroleum gas", 0.814, sources::ipcc_2006_carbon, carbon_state::as_burned),
    carbon_in("ethanol", 0.5214, sources::atomic_weights, carbon_state::as_burned),
};
inline constexpr auto carbon_fingerprints = fingerprints_of<carbon_rows>();
inline constexpr NameTable carbon_table{"FUELCARBON", Measure::mass_fraction, carbon_rows, carbon_fingerprints};

} // namespace hearthcell
