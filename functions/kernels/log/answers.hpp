#pragma once
// The log functions as the catalogue calls them: columns and numbers in the order of its arguments.

#include "functions/contract/kernel.hpp"
#include "functions/kernels/log/boil.hpp"
#include "functions/kernels/log/forecast.hpp"
#include "functions/kernels/log/heat_gain.hpp"
#include "functions/kernels/log/heat_loss.hpp"
#include "functions/kernels/log/slope.hpp"
#include "functions/kernels/log/time_mean.hpp"
#include "functions/kernels/log/wild.hpp"

namespace hearthcell::kernels {

inline Outcome answer(Reason reason, double result) {
    return reason == Reason::none ? Outcome(result) : Outcome(Failure{reason});
}

/// Several results side by side.
inline Outcome answer(Reason reason, std::vector<double> results) {
    std::size_t const count = results.size();
    return reason == Reason::none ? Outcome(Block{1, count, std::move(results), {}}) : Outcome(Failure{reason});
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
        return answer(boil.reason, std::vector{boil.minutes, boil.uncertainty, boil.earliest, boil.latest});
    });
}

inline Readings heating_stretch(Given const& given) {
    return readings_of_stretch(tame_log(given), given.numbers[0], given.numbers[1]);
}
inline Outcome answer_heating_rate(Given const& given) {
    Readings const stretch = heating_stretch(given);
    return stretch.failure.reason != Reason::none ? Outcome(stretch.failure) : Outcome(fit_line(stretch.log).slope);
}

/// Of any values, which no water has to make.
inline Outcome answer_time_mean(Given const& given) {
    Readings const readings = read_log(*given.columns[0], *given.columns[1]);
    if (readings.failure.reason != Reason::none)
        return readings.failure;
    TimeMean const mean = time_mean(readings.log, given.numbers[0], given.numbers[1]);
    return answer(mean.reason, mean.mean);
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
        return answer(loss.reason, std::vector{loss.loss, loss.uncertainty});
    });
}

inline Outcome answer_forecast(Given const& given) {
    return with_log(given, [&](Log log) {
        Forecast const forecast = boil_forecast(log, given.numbers[0], given.numbers[1]);
        return answer(forecast.reason, std::vector{forecast.minutes, forecast.uncertainty});
    });
}

} // namespace hearthcell::kernels
