#include "logs.hpp"

#include "functions/call/part.hpp"
#include "functions/explain/explain.hpp"

#include <cmath>
#include <limits>
#include <numbers>

namespace hearthcell::tests {

std::uint64_t Random::next() {
    std::uint64_t z = state += 0x9E37'79B9'7F4A'7C15;
    z = (z ^ z >> 30) * 0xBF58'476D'1CE4'E5B9;
    z = (z ^ z >> 27) * 0x94D0'49BB'1331'11EB;
    return z ^ z >> 31;
}
double Random::uniform(double low, double high) {
    return low + (high - low) * double(next() >> 11) * 0x1p-53;
}
double Random::normal() { // Box and Muller
    double const radius = std::sqrt(-2 * std::log(1 - uniform(0, 1)));
    return radius * std::cos(2 * std::numbers::pi * uniform(0, 1));
}
std::size_t Random::below(std::size_t count) {
    return std::size_t(uniform(0, double(count)));
}

double Pot::at(double minute) const {
    double const seconds = minute * 60;
    if (loss == 0)
        return start + power / capacity * seconds;
    double const settled = air + power / loss;
    return settled + (start - settled) * std::exp(-loss * seconds / capacity);
}
double Pot::minutes_to(double temperature) const {
    if (loss == 0)
        return capacity * (temperature - start) / power / 60;
    return -capacity / loss * std::log((power - loss * (temperature - air)) / (power - loss * (start - air))) / 60;
}
Pot Pot::any(Random& random) {
    Pot pot;
    double const kilograms = random.uniform(2, 6);
    pot.capacity = kilograms * 4190 + random.uniform(200, 900);
    pot.power = kilograms * random.uniform(250, 450);
    pot.loss = random.uniform(0, 0.6) * kilograms;
    pot.air = random.uniform(10, 32);
    pot.start = pot.air + random.uniform(-6, 2);
    return pot;
}

LogColumns log_of(Pot const& pot, double step, double until, double boiling_point) {
    LogColumns log;
    for (std::size_t i = 0; double(i) * step <= until; ++i) {
        log.minutes.push_back(double(i) * step);
        log.temperatures.push_back(std::min(pot.at(double(i) * step), boiling_point));
    }
    return log;
}
void add_noise(LogColumns& log, double deviation, Random& random) {
    for (double& temperature : log.temperatures)
        temperature += deviation * random.normal();
}
void round_to(LogColumns& log, double display_step) {
    for (double& temperature : log.temperatures)
        temperature = std::round(temperature / display_step) * display_step;
}

Readings every(double step, int count) {
    Readings minutes;
    for (int i = 0; i < count; ++i)
        minutes.push_back(i * step);
    return minutes;
}

Readings with(Readings readings, Readings const& more) {
    readings.insert(readings.end(), more.begin(), more.end());
    return readings;
}

LogColumns half_empty(int rows) {
    LogColumns log{every(1, rows), Readings(std::size_t(rows), 20)};
    for (std::size_t i = 1; i < log.temperatures.size(); i += 2)
        log.temperatures[i] = nothing;
    return log;
}

Block column(Readings const& readings) {
    return {readings.size(), 1, readings, {}};
}
Block row(Readings const& readings) {
    return {1, readings.size(), readings, {}};
}

namespace {
std::vector<Value> values_of(LogColumns const& log, std::vector<Value> more) {
    std::vector<Value> values{column(log.minutes), column(log.temperatures)};
    for (Value& value : more)
        values.push_back(std::move(value));
    return values;
}
} // namespace

Outcome call_log(std::string_view function, LogColumns const& log, std::vector<Value> more) {
    Function const& asked = *find_function(function);
    std::vector<Value> const values = values_of(log, std::move(more));
    return call(asked, asking_for_all(asked, values));
}
double number_of(Outcome const& outcome) {
    if (Block const* block = std::get_if<Block>(&outcome))
        return block->numbers.at(0);
    if (double const* number = std::get_if<double>(&outcome))
        return *number;
    ADD_FAILURE() << "no number, but reason " << int(reason_of(outcome)) << " in row " << row_of(outcome);
    return std::numeric_limits<double>::quiet_NaN();
}
Reason reason_of(Outcome const& outcome) {
    Failure const* why = std::get_if<Failure>(&outcome);
    return why != nullptr ? why->reason : Reason::none;
}
unsigned row_of(Outcome const& outcome) {
    Failure const* why = std::get_if<Failure>(&outcome);
    return why != nullptr ? why->row : 0;
}
std::string explained(std::string_view function, LogColumns const& log, std::vector<Value> more) {
    return explain(*find_function(function), values_of(log, std::move(more)));
}

} // namespace hearthcell::tests
