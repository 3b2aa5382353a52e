#pragma once
// One room whose air is always well mixed: what a stove emits into it, and what the air that changes carries off.

#include "functions/contract/kernel.hpp"
#include "functions/kernels/quotients.hpp"

namespace hearthcell::kernels {

template <class Real> struct Room {
    Real rate, volume, air_changes, minutes, background, share; ///< mg/min, m³, 1/h, min, mg/m³, fraction
};

inline constexpr double most_in_air = 1e9; // mg/m³, which no air holds

/// mg/m³: at the end, as a mean over the time, and in the long run.
template <class Real> struct RoomConcentrations { Real at_the_end, mean, in_the_long_run; };
template <class Real> RoomConcentrations<Real> room_concentrations(Room<Real> const& room) {
    Real const changed = room.air_changes * room.minutes / 60;             // so many times all of its air
    Real const kept = room.share * room.rate * room.minutes / room.volume; // if none of it were carried off
    Real settled = room.background + room.share * room.rate * 60 / (room.air_changes * room.volume);
    if (!(value_of(room.air_changes) > 0))
        settled = Real(failure(Reason::no_air_changes));
    else if (!(value_of(settled) <= most_in_air))
        settled = Real(failure(Reason::result_out_of_range));
    return {room.background + kept * growth_quotient(Real(-changed)),
            room.background + kept * second_growth_quotient(Real(-changed)), settled};
}

/// One of the three, by its place.
template <class Real> Real room_concentration(Room<Real> const& room, Choice part) {
    auto const [end, mean, settled] = room_concentrations(room);
    return part.index == 0 ? end : part.index == 1 ? mean : settled;
}

/// Numbers: as a room has them.
inline Outcome answer_room(Given const& given) {
    std::span<double const> const n = given.numbers;
    auto const [end, mean, settled] = room_concentrations(Room<double>{n[0], n[1], n[2], n[3], n[4], n[5]});
    return Block{1, 3, {end, mean, settled}, {}};
}

} // namespace hearthcell::kernels
