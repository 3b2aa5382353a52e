// Linear in the readings: eight times as many take about eight times as long, where a quadratic function would take 64
// times as long. Both logs stay in the processor's cache and the best of many runs counts, so that neither memory nor a
// busy machine decides. What a whole column takes is printed and not judged.

#include "logs.hpp"

#include "functions/catalogue/subjects.hpp"

#include <chrono>

namespace hearthcell::tests {
namespace {

/// A heating, a boil, in 40 minutes of so many readings, with some noise.
std::vector<Value> long_log(std::size_t readings, double stop_at) {
    Random random(1);
    Pot const pot;
    LogColumns log = log_of(pot, stop_at / double(readings), stop_at, 95);
    log.minutes.resize(readings);
    log.temperatures.resize(readings);
    add_noise(log, 0.2, random);
    return {column(log.minutes), column(log.temperatures)};
}

std::vector<Value> long_cooling(std::size_t readings) {
    LogColumns log;
    for (std::size_t i = 0; i < readings; ++i) {
        log.minutes.push_back(40 * double(i) / double(readings));
        log.temperatures.push_back(90 - 0.3 * log.minutes.back());
    }
    return {column(log.minutes), column(log.temperatures)};
}

double best_seconds(Function const& function, std::vector<Value> const& values, int runs) {
    double best = 1e9;
    for (int run = 0; run < runs; ++run) {
        auto const start = std::chrono::steady_clock::now();
        Outcome const outcome = call(function, values);
        std::chrono::duration<double> const taken = std::chrono::steady_clock::now() - start;
        EXPECT_EQ(reason_of(outcome), Reason::none) << function.name;
        best = std::min(best, taken.count());
    }
    return best;
}

std::vector<Value> long_call(std::string_view name, std::size_t readings) {
    std::vector<Value> values = name == "HEATLOSS"       ? long_cooling(readings)
                                : name == "BOILFORECAST" ? long_log(readings, 17)
                                                         : long_log(readings, 40);
    if (name == "TIMEAT")
        values.insert(values.end(), 80.0);
    else if (name == "BOILTIME" || name == "BOILFORECAST")
        values.insert(values.end(), 95.0);
    else if (name == "HEATGAIN")
        values.insert(values.end(), 5000.0);
    else if (name == "HEATLOSS")
        values.insert(values.end(), {5000.0, 20.0});
    return values;
}

} // namespace

TEST(MillionReadings, TakeATimeThatGrowsWithTheirNumber) {
    for (Function const& function : temperature_log()) {
        double const few = best_seconds(function, long_call(function.name, 512), 300);
        double const many = best_seconds(function, long_call(function.name, 4096), 100);
        constexpr std::size_t whole_column = 1048576;
        double const all = best_seconds(function, long_call(function.name, whole_column), 1);
        std::printf("%-13s 4096 readings take %.1f times as long as 512; %zu readings %.0f ms\n", function.name.data(),
                    many / few, whole_column, 1000 * all);
        EXPECT_LT(many / few, 24) << function.name;
    }
}

TEST(MillionReadings, TakeNoLongerEachWhereEveryOneIsAMinuteOfBoiling) {
    auto const boil = [](std::size_t readings) -> std::vector<Value> {
        LogColumns log;
        for (std::size_t i = 0; i < readings; ++i) {
            log.minutes.push_back(double(i));
            log.temperatures.push_back(std::min(20 + 5.0 * double(i), 95.0));
        }
        return {column(log.minutes), column(log.temperatures), 95.0};
    };
    Function const& function = *find_function("BOILTIME");
    double const few = best_seconds(function, boil(1024), 100), many = best_seconds(function, boil(8192), 30);
    std::printf("BOILTIME      8192 minutes take %.1f times as long as 1024\n", many / few);
    EXPECT_LT(many / few, 24);
}

} // namespace hearthcell::tests
