#pragma once
// The log functions as the catalogue calls them: columns and numbers in the order of its arguments.

#include "functions/contract/kernel.hpp"
#include "functions/kernels/log/boil.hpp"
#include "functions/kernels/log/forecast.hpp"
#include "functions/kernels/log/heat_gain.hpp"
#include "functions/kernels/log/heat_loss.hpp"
#include "functions/kernels/log/slope.hpp"
#include "functions/kernels/log/wild.hpp"

namespace hearthcell::kernels {

inline Outcome answer(Reason reason, double result) {
    return reason == Reason::none ? Outcome(result) : Outcome(Failure{reason});
}

inline Readings tame_log(Given const& given) {
    Readings readings = read_log(*given.columns[0], *given.columns[1]);
    tame(readings.log);
    return readings;
}

/// Reads the log and hands it on, without wild readings, unless it is none.
template <class Work> Outcome with_log(Given const& given, Work work) {
    Readings const readings = tame_log(given);
    return readings.failure.reason != Reason::none ? Outcome(readings.failure) : work(Log(readings.log));
}

inline Outcome answer_time_at(Given const& given) {
    return with_log(given, [&](Log log) {
        Crossing const crossing = time_at(log, given.numbers[0]);
        bool const found = crossing.kind == CrossingKind::found;
        return answer(found ? Reason::none : Reason::never_crosses, crossing.minute);
    });
}

inline BoilQuery boil_query(Given const& given) {
    return {given.numbers[0], given.numbers[1], given.numbers[2], given.numbers[3]};
}
inline Outcome answer_boil_time(Given const& given) {
    return with_log(given, [&](Log log) {
        Boil const boil = find_boil(log, boil_query(given));
        return answer(boil.reason, boil.minutes);
    });
}

inline Readings heating_stretch(Given const& given) {
    return readings_of_stretch(read_log(*given.columns[0], *given.columns[1]), given.numbers[0], given.numbers[1]);
}
inline Outcome answer_heating_rate(Given const& given) {
    Readings const stretch = heating_stretch(given);
    return stretch.failure.reason != Reason::none ? Outcome(stretch.failure) : Outcome(fit_line(stretch.log).slope);
}

inline HeatGainQuery heat_gain_query(Given const& given) {
    return {given.numbers[0], given.numbers[1], given.numbers[2], given.numbers[3]};
}
inline Outcome answer_heat_gain(Given const& given) {
    return with_log(given, [&](Log log) {
        HeatGain const gain = heat_gain(log, heat_gain_query(given));
        return answer(gain.reason, gain.power);
    });
}

inline HeatLossQuery heat_loss_query(Given const& given) {
    return {given.numbers[0], given.numbers[1], given.numbers[2]};
}
inline Outcome answer_heat_loss(Given const& given) {
    return with_log(given, [&](Log log) {
        HeatLoss const loss = heat_loss(log, heat_loss_query(given));
        return answer(loss.reason, loss.loss);
    });
}

inline Outcome answer_forecast(Given const& given) {
    return with_log(given, [&](Log log) -> Outcome {
        Forecast const forecast = boil_forecast(log, given.numbers[0]);
        if (forecast.reason != Reason::none)
            return Failure{forecast.reason};
        return Block{1, 2, {forecast.minutes, forecast.uncertainty}, {}};
    });
}

} // namespace hearthcell::kernels
