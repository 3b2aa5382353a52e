#include "simulated_runs.hpp"

#include <array>
#include <cmath>
#include <cstdio>
#include <random>

namespace hearthcell::tests {
namespace {

/// The same on every machine: the library's own distributions are not.
class Chance {
public:
    explicit Chance(unsigned seed) : engine_(seed) {}

    double between(double low, double high) {
        return low + (high - low) * double(engine_()) / double(std::mt19937::max());
    }
    /// About a middle, as a sum of twelve.
    double about(double middle, double deviation) {
        double sum = -6;
        for (int draw = 0; draw < 12; ++draw)
            sum += between(0, 1);
        return middle + deviation * sum;
    }

private:
    std::mt19937 engine_;
};

double rounded(double number, double to) {
    return std::round(number / to) * to;
}

std::string cell(char column, int row) {
    return column + std::to_string(row);
}

/// Puts a number into the row's cell of a column.
Slip number(std::string what, char column, double SimulatedRun::*reading, double scale, double shift = 0) {
    return {std::move(what), [=](office::Sheet& sheet, SimulatedRun const& run, int row) {
                sheet.number(cell(column, row), run.*reading * scale + shift);
            }};
}

Slip swapped(std::string what, char one, char other, double SimulatedRun::*first, double SimulatedRun::*second) {
    return {std::move(what), [=](office::Sheet& sheet, SimulatedRun const& run, int row) {
                sheet.number(cell(one, row), run.*second);
                sheet.number(cell(other, row), run.*first);
            }};
}

} // namespace

std::vector<SimulatedRun> simulated_runs(std::size_t count, unsigned seed) {
    Chance chance(seed);
    std::vector<SimulatedRun> runs(count);
    for (SimulatedRun& run : runs) {
        double const water = rounded(chance.about(5000, 40), 5);
        run.start = rounded(chance.about(19, 2.5), 0.1);
        run.end = rounded(chance.about(95.8, 0.15), 0.1);
        double const evaporated = rounded(chance.between(60, 350), 5);
        run.pot_and_water = run.pot + water;
        run.pot_and_water_end = run.pot_and_water - evaporated;
        run.moisture = rounded(chance.about(0.13, 0.015), 0.001);
        double const heat = water * 4.18e-3 * (run.end - run.start) + evaporated * 2.26; // kJ
        double const burned = heat / chance.about(0.22, 0.02) / (18.7 * (1 - run.moisture) - 2.44 * run.moisture);
        run.left = rounded(chance.between(80, 400), 5);
        run.laid_out = run.left + rounded(burned, 5);
        run.net_char = rounded(chance.between(5, 30), 1);
        run.minutes = rounded(chance.about(31, 3), 0.1);
    }
    return runs;
}

void write_record(office::Sheet& sheet, std::vector<SimulatedRun> const& runs) {
    sheet.text("A1", "A record of runs, made up for a test");
    office::TextRows rows{{"run",
                           "pot",
                           "pot and water",
                           "start",
                           "wood",
                           "end",
                           "pot and water at end",
                           "wood left",
                           "moisture",
                           "calorific value",
                           "char",
                           "minutes",
                           "altitude",
                           "method",
                           "boiling point",
                           "efficiency",
                           "wood energy",
                           "firepower",
                           "useful heat",
                           "dry wood"}};
    auto const text = [](double number) {
        std::array<char, 32> digits{};
        std::snprintf(digits.data(), digits.size(), "%.10g", number);
        return std::string(digits.data());
    };
    int row = first_row_of_record;
    for (SimulatedRun const& run : runs) {
        std::string const at = std::to_string(row);
        rows.push_back(
            {std::to_string(row - first_row_of_record + 1),
             text(run.pot),
             text(run.pot_and_water),
             text(run.start),
             text(run.laid_out),
             text(run.end),
             text(run.pot_and_water_end),
             text(run.left),
             text(run.moisture),
             text(run.calorific_value),
             text(run.net_char),
             text(run.minutes),
             text(run.altitude),
             run.method,
             "=STOVE.BOILINGPOINT(M" + at + ";1010)",
             "=STOVE.BENCHEFFICIENCY(B" + at + ";C" + at + ";D" + at + ";E" + at + ";F" + at + ";G" + at + ";H" + at +
                 ";I" + at + ";J" + at + ";N" + at + ";K" + at + ";;O" + at + ")",
             "=STOVE.WOODENERGY(E" + at + "-H" + at + ";I" + at + ";J" + at + ")",
             "=STOVE.FIREPOWER(Q" + at + ";L" + at + ")",
             "=STOVE.USEFULHEAT(C" + at + "-B" + at + ";D" + at + ";F" + at + ";N" + at + ";C" + at + "-G" + at + ")",
             "=STOVE.DRYMASS(E" + at + "-H" + at + ";I" + at + ")"});
        ++row;
    }
    sheet.formulas("A2", rows);
}

std::vector<Slip> const& slips() {
    using Run = SimulatedRun;
    static std::vector<Slip> const all{
        number("moisture in per cent", 'I', &Run::moisture, 100),
        number("moisture on dry basis, of green wood", 'I', &Run::moisture, 0, 0.52),
        number("pot and water in kilograms", 'C', &Run::pot_and_water, 0.001),
        number("wood in kilograms", 'E', &Run::laid_out, 0.001),
        number("start in °F", 'D', &Run::start, 1.8, 32),
        number("end in °F", 'F', &Run::end, 1.8, 32),
        swapped("temperatures swapped", 'D', 'F', &Run::start, &Run::end),
        swapped("weighings of the wood swapped", 'E', 'H', &Run::laid_out, &Run::left),
        swapped("weighings of the pot swapped", 'C', 'G', &Run::pot_and_water, &Run::pot_and_water_end),
        number("gross calorific value", 'J', &Run::calorific_value, 0, 20.4),
        number("calorific value in kWh/kg", 'J', &Run::calorific_value, 1 / 3.6),
        number("minutes as a part of a day", 'L', &Run::minutes, 1 / 1440.0),
        number("altitude in kilometres", 'M', &Run::altitude, 0.001),
        number("altitude in feet", 'M', &Run::altitude, 3.2808),
        number("another tare", 'B', &Run::pot, 1, -54),
        {"another method", [](office::Sheet& sheet, Run const&, int row) { sheet.text(cell('N', row), "WBT 3"); }},
        {"a number as a text", [](office::Sheet& sheet, Run const&, int row) { sheet.text(cell('I', row), "12 %?"); }},
        {"an empty cell", [](office::Sheet& sheet, Run const&, int row) { sheet.formula(cell('I', row), ""); }},
        {"a result typed over", [](office::Sheet& sheet, Run const&, int row) { sheet.number(cell('P', row), 0.25); }},
        {"a formula that reads the row above",
         [](office::Sheet& sheet, Run const&, int row) {
             std::string const above = std::to_string(row - 1);
             sheet.formula(cell('T', row), "=STOVE.DRYMASS(E" + above + "-H" + above + ";I" + above + ")");
         }},
    };
    return all;
}

} // namespace hearthcell::tests
