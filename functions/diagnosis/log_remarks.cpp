#include "functions/diagnosis/log_remarks.hpp"

#include "functions/kernels/log/answers.hpp"
#include "functions/number/in_words.hpp"

namespace hearthcell::diagnosis {

using namespace kernels;

namespace {

/// The log as the functions take it, and a sentence about the readings that they leave out.
struct Taken {
    std::vector<Reading> log;
    Sentences said;

    explicit Taken(Given const& given) : log(read_log(*given.columns[0], *given.columns[1]).log) {
        std::size_t const wild = tame(log);
        if (wild == 1)
            said.emplace_back("One wild reading was left out; STOVE.LOGCHECK shows it.");
        else if (wild > 1)
            said.push_back(std::to_string(wild) + " wild readings were left out; STOVE.LOGCHECK shows them.");
    }
    Sentences with(std::string sentence) && {
        said.push_back(std::move(sentence));
        return std::move(said);
    }
};

} // namespace

Sentences remark_on_time_at(Given const& given) {
    Taken taken(given);
    Crossing const crossing = time_at(taken.log, given.numbers[0]);
    if (taken.log.size() - crossing.next >= crossing::least_ahead)
        return taken.said;
    return std::move(taken).with("The log ends there: whether the temperature stayed beyond cannot be seen.");
}

Sentences remark_on_boil_time(Given const& given) {
    BoilQuery const query = boil_query(given);
    Taken taken(given);
    Boil const boil = find_boil(taken.log, query);
    if (is_absent(boil.level))
        return std::move(taken).with("The log holds no plateau; the boiling point given was taken.");
    double const low = query.boiling_point - boil.level;
    if (std::abs(low) <= query.tolerance)
        return taken.said;
    std::string const size = tenths(std::abs(low)) + " K ";
    if (low > 0)
        return std::move(taken).with("The readings settle at " + tenths(boil.level) + " °C, " + size +
                                     "below the boiling point: the probe reads low by that much, or altitude or "
                                     "weather differ, or the pot never boiled.");
    return std::move(taken).with("The readings settle at " + tenths(boil.level) + " °C, " + size +
                                 "above the boiling point: the probe reads high by that much, or altitude or weather "
                                 "differ.");
}

Sentences remark_on_heating_rate(Given const& given) {
    Readings const stretch = heating_stretch(given);
    Line const line = fit_line(stretch.log);
    Sentences result{"From " + std::to_string(stretch.log.size()) + " readings; they scatter about the line by " +
                     tenths(line.scatter) + " K."};
    if (line.scatter > 1)
        result.emplace_back("That is no straight line: give a stretch of steady heating.");
    return result;
}

Sentences remark_on_heat_gain(Given const& given) {
    Taken taken(given);
    HeatGain const gain = heat_gain(taken.log, heat_gain_query(given));
    return std::move(taken).with("From " + std::to_string(gain.readings) + " readings between " + tenths(gain.from) +
                                 " and " + tenths(gain.to) + " °C; they scatter about the line by " +
                                 tenths(gain.line.scatter) + " K.");
}

Sentences remark_on_heat_loss(Given const& given) {
    Taken taken(given);
    HeatLoss const loss = heat_loss(taken.log, heat_loss_query(given));
    Sentences& said = taken.said;
    said.push_back("A cooling from " + tenths(loss.first) + " to " + tenths(loss.last) + " °C.");
    if (taken.log.size() < 3)
        said.emplace_back("Two readings only: nothing checks them.");
    if (loss.scatter > 1)
        said.push_back("The readings scatter by " + tenths(loss.scatter) + " K: was it one quiet cooling?");
    if (loss.first > 85) // common practice, no source
        said.emplace_back("Without a lid, evaporation makes the loss far larger up there than below 80 °C.");
    return said;
}

Sentences remark_on_forecast(Given const& given) {
    Taken taken(given);
    double const boiling_point = given.numbers[0], air = given.numbers[1];
    Forecast const forecast = boil_forecast(taken.log, boiling_point);
    HeatingFit const& fit = forecast.fit;
    double const left = boiling_point - forecast.last;
    Sentences& said = taken.said;
    said.push_back("Forecast " + hundredths(forecast.beyond) + " min and " + tenths(left) +
                   " K beyond the last reading, from " + std::to_string(fit.readings) + " readings over " +
                   hundredths(2 * fit.half) + " min, which scatter by " + tenths(std::sqrt(fit.variance)) + " K.");
    if (left > 5) // the loss of an open pot grows steeply above 80 °C; common practice, no source
        said.emplace_back("More than 5 K are still to go: in an open pot evaporation slows the last degrees, so that "
                          "the boil may come later.");
    if (is_absent(air))
        return said;
    // By the model the heating slows by `decay` a kelvin; at the temperature of the air nothing would be lost.
    double const gain = fit.rate + fit.decay * (fit.level - air);
    double const lost = fit.decay * (boiling_point - air) / gain;
    if (fit.decay > 0)
        said.push_back("At the boil " + tenths(100 * lost) + " % of the heat would be lost to the air.");
    else
        said.emplace_back("The heating does not slow down, so that no loss to the air can be seen.");
    return said;
}

} // namespace hearthcell::diagnosis
