#pragma once
// How fast a log heats (or cools, negative): the least-squares line over its readings, or over those of a stretch.

#include "functions/kernels/log/line.hpp"

namespace hearthcell::kernels {

/// The readings of a stretch given in minutes, either end of which may be absent; or why there is no line.
inline Readings readings_of_stretch(Readings all, double from, double to) {
    if (all.failure.reason != Reason::none)
        return all;
    if (!is_absent(from) && !is_absent(to) && to <= from) {
        all.failure = {Reason::to_not_above_from};
        return all;
    }
    Log const stretch =
        between(all.log, is_absent(from) ? all.log.front().minute : from, is_absent(to) ? all.log.back().minute : to);
    if (stretch.size() < 2)
        all.failure = {Reason::too_few_readings};
    else if (stretch.size() != all.log.size())
        all.log = std::vector<Reading>(stretch.begin(), stretch.end());
    return all;
}

} // namespace hearthcell::kernels
