#include "functions/diagnosis/log_remarks.hpp"

#include "functions/diagnosis/boil_limits.hpp"
#include "functions/diagnosis/ceiling.hpp"
#include "functions/kernels/log/answers.hpp"
#include "functions/words/sentences.hpp"
#include "functions/words/speaker.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace hearthcell::diagnosis {

using namespace kernels;

namespace {

constexpr double air_step = 2; // K

/// The log as the functions take it, and a sentence about the readings that they leave out.
struct Taken {
    std::vector<Reading> log;
    Sentences said;

    Taken(Speaker const& say, Given const& given) : log(read_log(*given.columns[0], *given.columns[1]).log) {
        std::size_t const wild = tame(log);
        if (wild == 1)
            said.push_back(say(sentences::one_wild_reading));
        else if (wild > 1)
            said.push_back(say(sentences::wild_readings, {{"count", std::to_string(wild)}}));
    }
    /// What was left out, and what there is to say besides.
    Remarks with(std::string sentence) && {
        said.push_back(std::move(sentence));
        return {{}, std::move(said)};
    }
};

} // namespace

Remarks remark_on_time_at(Given const& given, Language language) {
    Speaker const say(language);
    Taken taken(say, given);
    Crossing const crossing = time_at(taken.log, given.numbers[0]);
    if (taken.log.size() - crossing.next >= crossing::least_ahead)
        return {{}, std::move(taken.said)};
    return std::move(taken).with(say(sentences::log_ends_there));
}

namespace {

/// What makes a boil time one that nobody should take as it is; a sentence each.
Sentences odd_about_boil(Speaker const& say, Boil const& boil, BoilQuery const& query) {
    Sentences odd;
    if (boil.minutes < boil_limits::shortest || boil.minutes > boil_limits::longest)
        odd.push_back(say(sentences::no_usual_boil_time, {{"minutes", say.hundredths(boil.minutes)}}));
    double const low = query.boiling_point - boil.level.read;
    if (boil.level.settled && std::abs(low) > boil_limits::far_level)
        odd.push_back(say(low > 0 ? sentences::boil_settles_far_below : sentences::boil_settles_far_above,
                          {{"degrees", say.tenths(boil.level.read)},
                           {"kelvins", say.tenths(std::abs(low))},
                           {"boiling", say.tenths(query.boiling_point)}}));
    return odd;
}

void add_level(Speaker const& say, Boil const& boil, BoilQuery const& query, Sentences& said) {
    double const low = query.boiling_point - boil.level.read;
    if (!boil.level.settled)
        said.push_back(say(sentences::boil_not_held));
    else if (std::abs(low) > query.tolerance && std::abs(low) <= boil_limits::far_level)
        said.push_back(say(low > 0 ? sentences::boil_settles_below : sentences::boil_settles_above,
                           {{"degrees", say.tenths(boil.level.read)}, {"kelvins", say.tenths(std::abs(low))}}));
}

} // namespace

Remarks remark_on_boil_time(Given const& given, Language language) {
    Speaker const say(language);
    BoilQuery const query = boil_query(given);
    Taken taken(say, given);
    Boil const boil = find_boil(taken.log, query);
    Sentences said;
    said.push_back(say(boil.foretold ? sentences::boil_foretold : sentences::boil_not_foretold,
                       {{"earliest", say.hundredths(boil.earliest)},
                        {"latest", say.hundredths(boil.latest)},
                        {"minutes", say.hundredths(boil.minutes)},
                        {"uncertainty", say.hundredths(boil.uncertainty)}}));
    add_level(say, boil, query, said);
    said.push_back(say(sentences::boiling_point_first_reached,
                       {{"minutes", say.hundredths(boil.minutes + query.tolerance / boil.rate)}}));
    if (boil.boils > 1)
        said.push_back(say(sentences::several_boils, {{"count", std::to_string(boil.boils)}}));
    said.push_back(say(sentences::lag_not_counted));
    std::ranges::move(taken.said, std::back_inserter(said));
    return {odd_about_boil(say, boil, query), std::move(said)};
}

Remarks remark_on_heating_rate(Given const& given, Language language) {
    Speaker const say(language);
    Sentences said = Taken(say, given).said;
    Readings const stretch = heating_stretch(given);
    Line const line = fit_line(stretch.log);
    said.push_back(say(sentences::line_scatter,
                       {{"count", std::to_string(stretch.log.size())}, {"kelvins", say.tenths(line.scatter)}}));
    if (line.scatter > 1)
        said.push_back(say(sentences::no_straight_line));
    return {{}, std::move(said)};
}

Remarks remark_on_heat_gain(Given const& given, Language language) {
    Speaker const say(language);
    Taken taken(say, given);
    HeatGain const gain = heat_gain(taken.log, heat_gain_query(given));
    return std::move(taken).with(say(sentences::stretch_scatter, {{"count", std::to_string(gain.readings)},
                                                                  {"from", say.tenths(gain.from)},
                                                                  {"to", say.tenths(gain.to)},
                                                                  {"kelvins", say.tenths(gain.line.scatter)}}));
}

Remarks remark_on_time_mean(Given const& given, Language language) {
    Speaker const say(language);
    Readings const readings = read_log(*given.columns[0], *given.columns[1]);
    TimeMean const mean = time_mean(readings.log, given.numbers[0], given.numbers[1]);
    Sentences said{say(sentences::mean_of_readings,
                       {{"count", std::to_string(mean.readings)}, {"minutes", say.hundredths(mean.longest_gap)}})};
    if (Ceiling const ceiling = ceiling_of(readings.log); ceiling.count > 0)
        said.push_back(say(sentences::log_at_ceiling,
                           {{"reading", say.number(ceiling.reading)}, {"minutes", say.hundredths(ceiling.minutes)}}));
    return {{}, std::move(said)};
}

Remarks remark_on_heat_loss(Given const& given, Language language) {
    Speaker const say(language);
    Taken taken(say, given);
    HeatLossQuery query = heat_loss_query(given);
    HeatLoss const loss = heat_loss(taken.log, query);
    Sentences& said = taken.said;
    said.push_back(say(sentences::a_cooling, {{"from", say.tenths(loss.first)}, {"to", say.tenths(loss.last)}}));
    if (taken.log.size() < 3)
        said.push_back(say(sentences::two_readings_only));
    if (loss.scatter > 1)
        said.push_back(say(sentences::cooling_scatters, {{"kelvins", say.tenths(loss.scatter)}}));
    if (loss.first > 85) // common practice, no source
        said.push_back(say(sentences::loss_without_lid));
    query.air += air_step;
    if (HeatLoss const other = heat_loss(taken.log, query); other.reason == Reason::none)
        said.push_back(say(sentences::air_counts_as_exact, {{"loss", say.hundredths(other.loss)}}));
    return {{}, std::move(said)};
}

Remarks remark_on_forecast(Given const& given, Language language) {
    Speaker const say(language);
    Taken taken(say, given);
    double const boiling_point = given.numbers[0];
    Forecast const forecast = boil_forecast(taken.log, boiling_point, given.numbers[1]);
    double const left = boiling_point - forecast_rules::mark - forecast.last;
    Sentences& said = taken.said;
    said.push_back(say(sentences::forecast_from, {{"minutes", say.hundredths(forecast.beyond)},
                                                  {"kelvins", say.tenths(left)},
                                                  {"count", std::to_string(forecast.readings)},
                                                  {"span", say.hundredths(forecast.span)},
                                                  {"rate", say.tenths(forecast.rate)}}));
    said.push_back(say(sentences::forecast_holds_for));
    if (left > 5) // the loss of an open pot grows steeply above 80 °C; common practice, no source
        said.push_back(say(sentences::forecast_is_far));
    return {{}, std::move(said)};
}

} // namespace hearthcell::diagnosis
