#include "good_workbooks.hpp"

#include "names.hpp"

#include "functions/call/call.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <stdexcept>

namespace hearthcell::tests::archive {
namespace {

constexpr CellError not_a_result{503};

enum class Flavour {
    as_saved,        ///< nothing has changed since
    older_rule,      ///< the boiling point by the rule 'a degree every 300 m'
    older_constants, ///< the energy of the wood without its moisture
    other_words,     ///< a text that depends on a number
    error_gone,
    with_chance, ///< RAND and NOW
    three_runs,  ///< more sheets
    with_chart,
};
constexpr int flavours = 8;

double number(Held const& held) {
    return std::get<double>(held);
}

Cell typed(Held const& value) {
    return {.stored = value};
}

Cell worked_out(std::string const& formula, Held const& now, std::string const& shown = {}) {
    return {.stored = now, .formula = formula, .now = now, .shown = shown};
}

std::string verdict(double efficiency) {
    return efficiency > 0.2 ? "more than a fifth & <more>" : "less than a fifth";
}

Sheet readings_sheet(Readings const& typed_in) {
    auto const row = [](char const* label, double value) {
        return std::vector{typed(std::string(label)), typed(value)};
    };
    return {.name = "Readings",
            .rows = {row("altitude in m", typed_in.altitude), row("water in g", typed_in.water),
                     row("start in °C", typed_in.start), row("end in °C", typed_in.end),
                     row("wood in g", typed_in.wood), row("moisture, wet basis", typed_in.moisture),
                     row("calorific value in MJ/kg", typed_in.calorific_value), row("minutes", typed_in.minutes)}};
}

Sheet results_sheet(Readings const& in) {
    Results const out = results(in);
    auto const row = [](char const* label, Cell const& cell) { return std::vector{typed(std::string(label)), cell}; };
    Sheet sheet{.name = "Results", .rows = {}};
    sheet.rows = {
        row("boiling point",
            worked_out("=HEARTHCELL.STOVE.BOILINGPOINT([$Readings.B1])", out.boiling_point, "=STOVE.BOILINGPOINT(")),
        row("heat in the water",
            worked_out("=HEARTHCELL.STOVE.WATERHEAT([$Readings.B2];[$Readings.B3];[$Readings.B4])", out.water_heat)),
        row("energy of the wood",
            worked_out("=HEARTHCELL.STOVE.WOODENERGY([$Readings.B5];[$Readings.B6];[$Readings.B7])", out.wood_energy,
                       "=STOVE.WOODENERGY(")),
        row("efficiency", worked_out("=HEARTHCELL.STOVE.EFFICIENCY([.B2];[.B3])", out.efficiency)),
        row("firepower", worked_out("=HEARTHCELL.STOVE.FIREPOWER([.B3];[$Readings.B8])", out.firepower)),
        row("wood for a litre", worked_out("=1000*[$Readings.B5]/[$Readings.B2]", 1000 * in.wood / in.water)),
        row("below the boil", worked_out("=[.B1]-[$Readings.B4]", out.boiling_point - in.end)),
        row("verdict",
            worked_out("=IF([.B4]>0.2;\"more than a fifth & <more>\";\"less than a fifth\")", verdict(out.efficiency))),
    };
    sheet.rows[3][1].result = true;
    return sheet;
}

Cell& result(Workbook& workbook, std::size_t row) {
    return workbook.sheets[1].rows.at(row)[1];
}

void add_row(Workbook& workbook, char const* label, Cell const& cell) {
    workbook.sheets[1].rows.push_back({typed(std::string(label)), cell});
}

void as_by_the_older_rule(Workbook& workbook, Readings const& in) {
    result(workbook, 0).stored = 100 - in.altitude / 300;
    result(workbook, 6).stored = 100 - in.altitude / 300 - in.end;
}

void as_by_older_constants(Workbook& workbook, Readings const& in) {
    double const energy = in.wood * in.calorific_value;
    Results const out = results(in);
    result(workbook, 2).stored = energy;
    result(workbook, 3).stored = out.water_heat / energy;
    result(workbook, 4).stored = energy / (60 * in.minutes);
    result(workbook, 7).stored = verdict(out.water_heat / energy);
}

void add_runs(Workbook& workbook, Readings const& in) {
    for (char const* name : {"Run 2", "it's \"run\", three"}) {
        double const altitude = in.altitude + static_cast<double>(workbook.sheets.size()) * 100;
        Cell cell = worked_out("=HEARTHCELL.STOVE.BOILINGPOINT([.A1])", today("BOILINGPOINT", {altitude}));
        cell.stored = 100 - altitude / 300;
        workbook.sheets.push_back({.name = name, .rows = {{typed(altitude), cell}}});
    }
}

void season(Workbook& workbook, Flavour flavour, Readings const& in) {
    // The binary format is patched by us, and we patch numbers only.
    bool const any_kind = workbook.path.extension() != ".xls";
    switch (flavour) {
    case Flavour::as_saved:
        break;
    case Flavour::older_rule:
        as_by_the_older_rule(workbook, in);
        break;
    case Flavour::older_constants:
        as_by_older_constants(workbook, in);
        if (!any_kind)
            result(workbook, 7).stored = result(workbook, 7).now;
        break;
    case Flavour::other_words:
        if (any_kind)
            result(workbook, 7).stored = std::string("to be worked out");
        break;
    case Flavour::error_gone:
        add_row(workbook, "at the sea", worked_out("=HEARTHCELL.STOVE.BOILINGPOINT(0)", today("BOILINGPOINT", {0.0})));
        if (any_kind)
            result(workbook, 8).stored = not_a_result;
        break;
    case Flavour::with_chance:
        add_row(workbook, "chance", {.stored = 0.25, .formula = "=RAND()", .now = {}, .is_volatile = true});
        add_row(workbook, "now", {.stored = 43000.5, .formula = "=NOW()", .now = {}, .is_volatile = true});
        break;
    case Flavour::three_runs:
        add_runs(workbook, in);
        break;
    case Flavour::with_chart:
        workbook.sheets[1].chart = true;
        as_by_the_older_rule(workbook, in);
        break;
    }
}

} // namespace

Held today(std::string const& name, std::vector<std::variant<double, std::string>> const& arguments) {
    Function const* const function = find_function(name);
    if (function == nullptr)
        throw std::invalid_argument("no function " + name);
    std::vector<Value> values;
    for (auto const& argument : arguments)
        std::visit([&](auto const& given) { values.emplace_back(given); }, argument);
    Outcome const outcome = call(*function, values);
    if (double const* const found = std::get_if<double>(&outcome))
        return *found;
    if (std::string const* const text = std::get_if<std::string>(&outcome))
        return *text;
    return not_a_result; // the only error that this archive provokes
}

Readings readings(int number) {
    auto const n = [&](int modulus) { return static_cast<double>(number % modulus); };
    return {.altitude = 130 + 50 * n(37),
            .water = 3000 + 10 * n(101),
            .start = 14 + 0.5 * n(19),
            .end = 80 + 0.25 * n(31),
            .wood = 420 + 3 * n(71),
            .moisture = 0.08 + 0.002 * n(23),
            .calorific_value = 18 + 0.05 * n(17),
            .minutes = 21 + 0.5 * n(29)};
}

Results results(Readings const& in) {
    Results out{};
    out.boiling_point = number(today("BOILINGPOINT", {in.altitude}));
    out.water_heat = number(today("WATERHEAT", {in.water, in.start, in.end}));
    out.wood_energy = number(today("WOODENERGY", {in.wood, in.moisture, in.calorific_value}));
    out.efficiency = number(today("EFFICIENCY", {out.water_heat, out.wood_energy}));
    out.firepower = number(today("FIREPOWER", {out.wood_energy, in.minutes}));
    return out;
}

Workbook good_workbook(int number) {
    Readings const in = readings(number);
    Workbook workbook{.path = path_of(number), .sheets = {readings_sheet(in), results_sheet(in)}, .names = {}};
    workbook.names = {{"altitude", "$Readings.$B$1"},
                      {"calorific_value", "$Readings.$B$7"},
                      {"boiling_point", "$Results.$B$1"},
                      {"efficiency", "$Results.$B$4"},
                      {"verdict", "$Results.$B$8"}};
    season(workbook, static_cast<Flavour>(number / 10 % flavours), in);
    if (number % 25 == 24) { // a sheet from the days when a moisture could be typed in per cent
        Cell cell = worked_out("=HEARTHCELL.STOVE.DRYMASS(1000;12)", today("DRYMASS", {1000.0, 12.0}));
        cell.stored = 880.0;
        add_row(workbook, "dry mass", cell);
    }
    return workbook;
}

std::vector<Workbook> good_workbooks(int count) {
    std::vector<Workbook> workbooks;
    for (int number = 0; number < count; ++number)
        workbooks.push_back(good_workbook(number));
    return workbooks;
}

} // namespace hearthcell::tests::archive
