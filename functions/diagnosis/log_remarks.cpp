#include "functions/diagnosis/log_remarks.hpp"

#include "functions/diagnosis/boil_limits.hpp"
#include "functions/kernels/log/answers.hpp"
#include "functions/number/in_words.hpp"

#include <algorithm>
#include <iterator>

namespace hearthcell::diagnosis {

using namespace kernels;

namespace {

constexpr double air_step = 2; // K

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

namespace {

std::string with_uncertainty(double minutes, double uncertainty) {
    return hundredths(minutes) + " ± " + hundredths(uncertainty) + " min";
}

/// What makes a boil time one that nobody should take as it is; a sentence each.
Sentences odd_about_boil(Boil const& boil, BoilQuery const& query) {
    Sentences said;
    if (boil.minutes < boil_limits::shortest || boil.minutes > boil_limits::longest)
        said.push_back(hundredths(boil.minutes) +
                       " min is no usual boil time: are the times in seconds or hours, or the start of another run?");
    double const low = query.boiling_point - boil.level.read;
    if (boil.level.settled && std::abs(low) > boil_limits::far_level) {
        std::string const size = tenths(std::abs(low)) + " K " + (low > 0 ? "below" : "above");
        said.push_back("The readings settle at " + tenths(boil.level.read) + " °C, " + size + " the boiling point of " +
                       tenths(query.boiling_point) + " °C: " +
                       (low > 0 ? "the pot never boiled, or the probe reads low, or altitude or weather differ."
                                : "the probe reads high, or altitude or weather differ."));
    }
    if (!said.empty())
        said.front().insert(0, "Odd: ");
    return said;
}

std::string about_level(Boil const& boil, BoilQuery const& query) {
    double const low = query.boiling_point - boil.level.read;
    if (!boil.level.settled)
        return "The boiling point was reached, not held: nothing but the boiling point given tells the level.";
    if (std::abs(low) <= query.tolerance || std::abs(low) > boil_limits::far_level)
        return "";
    return "The readings settle at " + tenths(boil.level.read) + " °C, " + tenths(std::abs(low)) + " K " +
           (low > 0 ? "below" : "above") + " the boiling point: the probe reads " + (low > 0 ? "low" : "high") +
           " by that much, or altitude or weather differ" + (low > 0 ? ", or the pot never boiled." : ".");
}

} // namespace

Sentences remark_on_boil_time(Given const& given) {
    BoilQuery const query = boil_query(given);
    Taken taken(given);
    Boil const boil = find_boil(taken.log, query);
    Sentences said = odd_about_boil(boil, query);
    said.push_back(
        "Between the readings at " + hundredths(boil.earliest) + " and " + hundredths(boil.latest) + " min; " +
        (boil.foretold ? "carried on from the heating: " : "too few readings before them to carry on from: ") +
        with_uncertainty(boil.minutes, boil.uncertainty) + ".");
    if (std::string level = about_level(boil, query); !level.empty())
        said.push_back(std::move(level));
    said.push_back("The boiling point itself is first reached at about " +
                   hundredths(boil.minutes + query.tolerance / boil.rate) +
                   " min, which is what the protocols call the boil (from memory).");
    if (boil.boils > 1)
        said.push_back("The log boils " + std::to_string(boil.boils) +
                       " times; the first boil after the start counts.");
    said.emplace_back("A probe that lags is not in the uncertainty.");
    std::ranges::move(taken.said, std::back_inserter(said));
    return said;
}

Sentences remark_on_heating_rate(Given const& given) {
    Sentences result = Taken(given).said;
    Readings const stretch = heating_stretch(given);
    Line const line = fit_line(stretch.log);
    result.push_back("From " + std::to_string(stretch.log.size()) + " readings; they scatter about the line by " +
                     tenths(line.scatter) + " K.");
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

Sentences remark_on_time_mean(Given const& given) {
    Readings const readings = read_log(*given.columns[0], *given.columns[1]);
    TimeMean const mean = time_mean(readings.log, given.numbers[0], given.numbers[1]);
    return {"From " + std::to_string(mean.readings) + " readings, at most " + hundredths(mean.longest_gap) +
            " min apart; what the value did between two of them is not seen."};
}

Sentences remark_on_heat_loss(Given const& given) {
    Taken taken(given);
    HeatLossQuery query = heat_loss_query(given);
    HeatLoss const loss = heat_loss(taken.log, query);
    Sentences& said = taken.said;
    said.push_back("A cooling from " + tenths(loss.first) + " to " + tenths(loss.last) + " °C.");
    if (taken.log.size() < 3)
        said.emplace_back("Two readings only: nothing checks them.");
    if (loss.scatter > 1)
        said.push_back("The readings scatter by " + tenths(loss.scatter) + " K: was it one quiet cooling?");
    if (loss.first > 85) // common practice, no source
        said.emplace_back("Without a lid, evaporation makes the loss far larger up there than below 80 °C.");
    query.air += air_step;
    if (HeatLoss const other = heat_loss(taken.log, query); other.reason == Reason::none)
        said.push_back("The air counts as exactly known: 2 K more of it would give " + hundredths(other.loss) +
                       " W/K.");
    return said;
}

Sentences remark_on_forecast(Given const& given) {
    Taken taken(given);
    double const boiling_point = given.numbers[0];
    Forecast const forecast = boil_forecast(taken.log, boiling_point, given.numbers[1]);
    double const left = boiling_point - forecast_rules::mark - forecast.last;
    Sentences& said = taken.said;
    said.push_back("To within 0.5 K of the boiling point: " + hundredths(forecast.beyond) + " min and " + tenths(left) +
                   " K beyond the last reading, from " + std::to_string(forecast.readings) + " readings over " +
                   hundredths(forecast.span) + " min, at " + tenths(forecast.rate) + " K/min there.");
    said.emplace_back(
        "The uncertainty holds for a fire that goes on wandering as it did and a probe that is out by 0.4 K; "
        "not for a probe that lags, wood laid on or a lid lifted after the last reading.");
    if (left > 5) // the loss of an open pot grows steeply above 80 °C; common practice, no source
        said.emplace_back("More than 5 K are still to go: in an open pot evaporation slows the last degrees, so that "
                          "the boil may come later.");
    return said;
}

} // namespace hearthcell::diagnosis
