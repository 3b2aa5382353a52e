#include "kernels/autodiff_kernels.hpp"

#include "functions/kernels/boil_time.hpp"
#include "functions/kernels/carbon_balance.hpp"
#include "functions/kernels/gas.hpp"
#include "functions/kernels/household.hpp"
#include "functions/kernels/performance.hpp"
#include "functions/kernels/room.hpp"
#include "functions/kernels/saturation.hpp"

namespace hearthcell::tests {

std::map<std::string_view, AutodiffKernel> const& autodiff_kernels() {
    static std::map<std::string_view, AutodiffKernel> const kernels{
        {"AIRPRESSURE", [](Autodiff const* x, Choice const*) { return kernels::air_pressure(x[0], x[1], x[2]); }},
        {"BOILINGPOINT", [](Autodiff const* x, Choice const*) { return kernels::boiling_point(x[0], x[1], x[2]); }},
        {"BOILINGPOINTAT",
         [](Autodiff const* x, Choice const*) { return kernels::boiling_point_at_station(x[0], x[1]); }},
        {"WATERDENSITY", [](Autodiff const* x, Choice const*) { return kernels::liquid_density(x[0]); }},
        {"WATERMASS", [](Autodiff const* x, Choice const*) { return 1000 * (x[0] * kernels::liquid_density(x[1])); }},
        {"WATERHEAT",
         [](Autodiff const* x, Choice const* c) { return kernels::water_heat(x[0], x[1], x[2], method_of(c[0])); }},
        {"EVAPORATIONHEAT",
         [](Autodiff const* x, Choice const* c) { return kernels::evaporation_heat(x[0], x[1], method_of(c[0])); }},
        {"POTHEAT", [](Autodiff const* x, Choice const*) { return kernels::pot_heat(x[0], x[1], x[2], x[3]); }},
        {"USEFULHEAT",
         [](Autodiff const* x, Choice const* c) {
             return kernels::useful_heat(x[0], x[1], x[2], x[3], x[4], method_of(c[0]));
         }},
        {"MOISTURE",
         [](Autodiff const* x, Choice const* c) {
             return kernels::moisture(x[0], x[1], x[2], c[0].index == 0 ? kernels::Basis::wet : kernels::Basis::dry);
         }},
        {"WETBASIS", [](Autodiff const* x, Choice const*) { return kernels::wet_basis(x[0]); }},
        {"DRYBASIS", [](Autodiff const* x, Choice const*) { return kernels::dry_basis(x[0]); }},
        {"DRYMASS", [](Autodiff const* x, Choice const*) { return kernels::dry_mass(x[0], x[1]); }},
        {"NETASFIRED", [](Autodiff const* x, Choice const*) { return kernels::net_as_fired(x[0], x[1]); }},
        {"NETFROMGROSS", [](Autodiff const* x, Choice const*) { return kernels::net_from_gross(x[0], x[1], x[2]); }},
        {"CALORIFICVALUE", [](Autodiff const* x, Choice const*) { return x[0]; }},
        {"WOODENERGY",
         [](Autodiff const* x, Choice const* c) {
             return kernels::wood_energy(x[0], x[1], x[2], x[3], x[4], method_of(c[0]));
         }},
        {"CHARENERGY", [](Autodiff const* x, Choice const*) { return kernels::char_energy(x[0], x[1]); }},
        {"EQUIVALENTDRYFUEL",
         [](Autodiff const* x, Choice const* c) {
             return kernels::equivalent_dry_wood(x[0], x[1], x[2], x[3], x[4], x[5], x[6], method_of(c[0]));
         }},
        {"AUXILIARYENERGY",
         [](Autodiff const* x, Choice const*) { return kernels::auxiliary_energy(x[0], x[1], x[2]); }},
        {"EFFICIENCY", [](Autodiff const* x, Choice const*) { return kernels::efficiency(x[0], x[1], x[2], x[3]); }},
        {"BENCHEFFICIENCY",
         [](Autodiff const* x, Choice const* c) {
             kernels::BenchReadings<Autodiff> const readings{x[0], x[1], x[2], x[3],  x[4],  x[5],  x[6],
                                                             x[7], x[8], x[9], x[10], x[11], x[12], x[13]};
             return kernels::bench_efficiency(readings, method_of(c[0]));
         }},
        {"FIREPOWER", [](Autodiff const* x, Choice const*) { return kernels::firepower(x[0], x[1], x[2]); }},
        {"COOKINGPOWER", [](Autodiff const* x, Choice const*) { return kernels::mean_power(x[0], x[1]); }},
        {"BURNRATE", [](Autodiff const* x, Choice const*) { return x[0] / x[1]; }},
        {"SPECIFICFUEL",
         [](Autodiff const* x, Choice const* c) {
             return kernels::specific_fuel(x[0], x[1], x[2], x[3], x[4], x[5], method_of(c[0]));
         }},
        {"SIMMERENERGY",
         [](Autodiff const* x, Choice const*) { return kernels::simmer_energy(x[0], x[1], x[2], x[3]); }},
        {"TURNDOWN", [](Autodiff const* x, Choice const*) { return x[0] / x[1]; }},
        {"GASCONCENTRATION",
         [](Autodiff const* x, Choice const*) { return kernels::gas_concentration(x[0], x[1], x[2], x[3]); }},
        {"FUELCARBON", [](Autodiff const* x, Choice const*) { return kernels::fuel_carbon(x[0], x[1], x[2], x[3]); }},
        {"CARBONBALANCE",
         [](Autodiff const* x, Choice const* c) { return kernels::gas_of_fire(x[0], x[1], x[2], x[3], x[4], c[0]); }},
        {"ROOMCONCENTRATION",
         [](Autodiff const* x, Choice const* c) {
             return kernels::room_concentration(kernels::Room<Autodiff>{x[0], x[1], x[2], x[3], x[4], x[5]}, c[0]);
         }},
        {"FILTEREMISSION",
         [](Autodiff const* x, Choice const*) { return kernels::filter_emission(x[0], x[1], x[2], x[3]); }},
        {"EMISSIONFACTOR", [](Autodiff const* x, Choice const*) { return kernels::per_thousand(x[0], x[1]); }},
        {"EMISSIONPERENERGY", [](Autodiff const* x, Choice const*) { return kernels::per_thousand(x[0], x[1]); }},
        {"EMISSIONRATE", [](Autodiff const* x, Choice const*) { return x[0] / x[1]; }},
        {"STANDARDADULTS",
         [](Autodiff const* x, Choice const*) { return kernels::standard_adults(x[0], x[1], x[2], x[3]); }},
        {"FUELPERSTANDARDADULT",
         [](Autodiff const* x, Choice const*) { return kernels::fuel_per_adult(x[0], x[1], x[2]); }},
        {"NORMALBOILTIME", [](Autodiff const* x,
                              Choice const*) { return kernels::normal_boil_time(x[0], x[1], x[2], x[3], x[4], x[5]); }},
        {"MODELBOILTIME",
         [](Autodiff const* x, Choice const*) {
             kernels::Heating<Autodiff> const test{x[4], x[1], x[2], x[3]};
             kernels::Heating<Autodiff> const standard{is_absent(x[9]) ? x[4] : x[9], x[7], x[8],
                                                       is_absent(x[10]) ? x[7] : x[10]};
             return kernels::model_boil_time(x[0], test, standard, x[5], x[6]);
         }},
    };
    return kernels;
}

} // namespace hearthcell::tests
