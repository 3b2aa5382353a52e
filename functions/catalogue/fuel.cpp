#include "functions/kernels/fuel.hpp"
#include "functions/catalogue/arguments.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/catalogue/tables.hpp"
#include "functions/kernels/fuel_batches.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace sources;

constexpr Argument as_fired{.name = "mass as fired",
                            .measure = Measure::wood_mass,
                            .low = 0.1,
                            .high = 100000,
                            .help = "Mass of the sample before the oven, with its container if one is given"};
constexpr Argument oven_dry = named(as_fired, "oven-dry mass",
                                    "Mass of the sample dried at 105 °C to constant mass, "
                                    "with its container if one is given");
constexpr Argument container{.name = "container mass",
                             .measure = Measure::metal_mass,
                             .low = 0,
                             .high = 100000,
                             .help = "Mass of the empty container, if it was weighed too"};
constexpr Argument basis{.name = "basis",
                         .measure = Measure::words,
                         .help = "Moisture by mass as fired (wet) or by dry mass (dry)",
                         .kind = Kind::choice,
                         .choices = {"wet", "dry"},
                         .optional = true};
constexpr Argument boils_at = optional(boiling_point, "none; WBT 4.2.3 needs it");
constexpr Argument air_of_method = optional(air, "none; WBT 4.2.3 needs it");
constexpr Argument burned = named(wood_mass, "wood burned",
                                  "Mass of the wood fed in less that left over, moisture "
                                  "included");

constexpr Argument column(Argument argument, std::string_view name, std::string_view help) {
    argument = named(argument, name, help);
    argument.kind = Kind::column;
    return argument;
}

constexpr std::array<double, 3> batch_masses{300.0, 250.0, 120.0};
constexpr std::array<double, 3> batch_moistures{0.12, 0.18, 0.25};
constexpr std::array<double, 3> batch_left{90.0, blank, blank};
constexpr std::array<double, 5> spare_masses{300.0, 250.0, blank, 120.0, blank};
constexpr std::array<double, 5> spare_moistures{0.12, 0.18, blank, 0.25, blank};
constexpr std::array<double, 3> half_empty_moistures{0.12, blank, 0.25};

constexpr Function functions[] = {
    {.name = "MOISTURE",
     .stored = "moisture",
     .summary = "Moisture of wood from a sample dried in an oven",
     .arguments = {as_fired, oven_dry, basis, optional(container, 0)},
     .result = {"moisture", Measure::moisture_wet, 0, 3},
     .kernel = numeric<[]<class Real>(Real const& wet, Real const& dry, Real const& box, Choice on) {
         return kernels::moisture(wet, dry, box, kernels::Basis(on.index));
     }>,
     .equations = {"(as fired - dry)/(as fired - container)", "(as fired - dry)/(dry - container)"},
     .sources = {iso_18134},
     .examples = {{{120, 100}, {0.1666667, 5e-8}, "u = 20 % gives 16.6667 % wet basis, by hand"},
                  {{120, 100, "dry"}, {0.2, 1e-12}, "Definition, by hand"},
                  {{170, 150, "wet", 50}, {0.1666667, 5e-8}, "The same sample in a box of 50 g, by hand"},
                  {{100, 120}, {Error::number}, "Wood does not gain mass in an oven"}}},
    {.name = "WETBASIS",
     .stored = "wetBasis",
     .summary = "Moisture on wet basis from moisture on dry basis",
     .arguments = {dry_basis_moisture},
     .result = {"moisture, wet basis", Measure::moisture_wet, 0, 1},
     .kernel = numeric<[]<class Real>(Real const& u) { return kernels::wet_basis(u); }>,
     .equations = {"u/(1 + u)"},
     .sources = {definition, iso_18134},
     .examples = {{{0.15}, {0.130435, 5e-7}, "Definition, by hand"}, {{1}, {0.5, 1e-12}, "Definition, by hand"}}},
    {.name = "DRYBASIS",
     .stored = "dryBasis",
     .summary = "Moisture on dry basis from moisture on wet basis",
     .arguments = {moisture},
     .result = {"moisture, dry basis", Measure::moisture_dry, 0, 3},
     .kernel = numeric<[]<class Real>(Real const& m) { return kernels::dry_basis(m); }>,
     .equations = {"M/(1 - M)"},
     .sources = {definition, iso_18134},
     .examples = {{{0.2}, {0.25, 1e-12}, "Definition, by hand"}, {{0.1}, {0.111111, 5e-7}, "Definition, by hand"}}},
    {.name = "DRYMASS",
     .stored = "dryMass",
     .summary = "Dry mass of moist wood",
     .arguments = {wood_mass, moisture},
     .result = {"dry mass", Measure::wood_mass, 0, 100000},
     .kernel = numeric<[]<class Real>(Real const& mass, Real const& m) { return kernels::dry_mass(mass, m); }>,
     .equations = {"m (1 - M)"},
     .sources = {definition},
     .examples = {{{600, 0.12}, {528, 1e-9}, "Definition, by hand"}}},
    {.name = "CALORIFICVALUE",
     .stored = "calorificValue",
     .summary = "Typical net calorific value of a dry fuel",
     .arguments = {{.name = "fuel",
                    .measure = Measure::calorific_value,
                    .low = 5,
                    .high = 50,
                    .help = "A fuel's name, as \"broad-leaf wood\"; a value measured on your own fuel is better",
                    .kind = Kind::name,
                    .table = &fuel_table}},
     .result = {"net calorific value, dry", Measure::calorific_value, 5, 50},
     .kernel = numeric<[]<class Real>(Real const& value) { return value; }>,
     .equations = {"a table of typical values"},
     .sources = {iso_17225, ipcc_2006},
     .examples = {{{"coniferous wood"}, {19.1, 1e-12}, "ISO 17225-1, annex B (from memory)"},
                  {{"Broad-leaf wood"}, {18.9, 1e-12}, "ISO 17225-1, annex B (from memory)"},
                  {{"charcoal"}, {29.5, 1e-12}, "IPCC 2006, volume 2, table 1.2 (from memory)"},
                  {{"old boots"}, {Error::not_available}, "No such name in the table"}}},
    {.name = "NETFROMGROSS",
     .stored = "netFromGross",
     .summary = "Net calorific value of a dry fuel from its gross value",
     .arguments = {{.name = "gross calorific value",
                    .measure = Measure::calorific_value,
                    .low = 5,
                    .high = 55,
                    .help = "Gross calorific value of the dry fuel at constant volume, as a bomb gives it"},
                   optional(Argument{.name = "hydrogen",
                                     .measure = Measure::mass_fraction,
                                     .low = 0,
                                     .high = 0.2,
                                     .help = "Mass fraction of hydrogen in the dry fuel"},
                            0.062),
                   optional(Argument{.name = "oxygen and nitrogen",
                                     .measure = Measure::mass_fraction,
                                     .low = 0,
                                     .high = 0.6,
                                     .help = "Mass fraction of oxygen and nitrogen in the dry fuel"},
                            0.441)},
     .result = {"net calorific value, dry", Measure::calorific_value, 1, 55},
     .kernel = numeric<[]<class Real>(Real const& gross, Real const& hydrogen, Real const& rest) {
         return kernels::net_from_gross(gross, hydrogen, rest);
     }>,
     .equations = {"gross - 21.22 H - 0.08 (O + N)"},
     .sources = {iso_18125, iso_17225},
     .examples = {{{20.5, 0.063, 0.421},
                   {19.12946, 5e-6},
                   "ISO 18125 form: 20.5 - 2.122 × 0.63 - 0.08 × 0.421, by hand"},
                  {{20.0}, {18.64908, 5e-6}, "H 6.2 %, O + N 44.1 % of broad-leaf wood, by hand"}}},
    {.name = "NETASFIRED",
     .stored = "netAsFired",
     .summary = "Net calorific value of moist fuel",
     .arguments = {net_dry, moisture},
     .result = {"net calorific value as fired", Measure::calorific_value, 0.1, 50},
     .kernel = numeric<[]<class Real>(Real const& dry, Real const& m) { return kernels::net_as_fired(dry, m); }>,
     .equations = {"H (1 - M) - 2.443 M"},
     .sources = {iso_18125},
     .examples = {{{19.1, 0.2}, {14.7914, 5e-5}, "ISO 18125 form, by hand"},
                  {{18.5, 0.12}, {15.98684, 5e-6}, "ISO 18125 form, by hand"}}},
    {.name = "WOODENERGY",
     .stored = "woodEnergy",
     .summary = "Energy of moist wood",
     .arguments = {wood_mass, moisture, net_dry, method, boils_at, air_of_method},
     .result = {"fuel energy", Measure::energy, 0.1, 1e7},
     .kernel = numeric<[]<class Real>(Real const& mass, Real const& m, Real const& dry, Real const& boils,
                                      Real const& ambient, Choice how) {
         return kernels::wood_energy(mass, m, dry, boils, ambient, method_of(how));
     }>,
     .equations = {"f [H (1 - M) - 2.443 M]", "f [H (1 - M) - 2.443 M]",
                   "f [H (1 - M) - M (4.186 (boiling point - air) + 2257)/1000]", "f (1 - 1.12 M) H"},
     .sources = {iso_18125, iso_19867_1, wbt_4_2_3, wbt_3},
     .examples = {{{600, 0.12, 18.5}, {9592.1040, 5e-5}, "600 × 15.98684, by hand"},
                  {{600, 0.12, 18.5, "WBT 4.2.3", 94.983, 20}, {9582.8967, 5e-5}, "Equation of the method, by hand"},
                  {{600, 0.12, 18.5, "WBT 3"}, {9608.16, 1e-9}, "Equation of the method, by hand"},
                  {{600, 0.12, 18.5, "WBT 4.2.3"}, {Error::number}, "This method needs boiling point and air"}}},
    {.name = "FUELENERGY",
     .stored = "fuelEnergy",
     .summary = "Energy of weighed batches of fuel",
     .arguments = {column(wood_mass, "masses", "Mass of each batch laid out, moisture included"),
                   column(moisture, "moistures", "Moisture of each batch (wet basis), or one for all"),
                   column(net_dry, "net calorific values", "Net calorific value of each dry batch, or one for all"),
                   method,
                   optional(column(wood_left, "masses left", "Mass left over of each batch; empty where nothing was"),
                            "nothing was left"),
                   boils_at, air_of_method},
     .result = {"fuel energy", Measure::energy, 0.1, 1e7},
     .kernel = Columnar{kernels::fuel_energy},
     .equations = {"Σ f [H (1 - M) - 2.443 M]", "Σ f [H (1 - M) - 2.443 M]",
                   "Σ f [H (1 - M) - M (4.186 (boiling point - air) + 2257)/1000]", "Σ f (1 - 1.12 M) H"},
     .sources = {iso_18125, iso_19867_1, wbt_4_2_3, wbt_3},
     .examples = {{{batch_masses, batch_moistures, 18.5}, {10070.327, 5e-4}, "Three batches, by hand"},
                  {{spare_masses, spare_moistures, 18.5}, {10070.327, 5e-4}, "The same with unused rows"},
                  {{batch_masses, batch_moistures, 18.5, omitted, batch_left},
                   {8631.511, 5e-4},
                   "90 g of the first batch left, by hand"},
                  {{batch_masses, half_empty_moistures, 18.5}, {Error::value}, "A moisture is missing"}}},
    {.name = "CHARENERGY",
     .stored = "charEnergy",
     .summary = "Energy left in the char",
     .arguments = {net_char, char_value},
     .result = {"char energy", Measure::energy, -3e6, 3e6},
     .kernel =
         numeric<[]<class Real>(Real const& mass, Real const& value) { return kernels::char_energy(mass, value); }>,
     .equations = {"net char × calorific value"},
     .sources = {definition, ipcc_2006},
     .examples = {{{50}, {1475, 1e-9}, "50 g × 29.5 MJ/kg, by hand"},
                  {{-30, 28}, {-840, 1e-9}, "A simmer that burned 30 g of earlier char, by hand"}}},
    {.name = "DRYWOOD",
     .stored = "dryWood",
     .summary = "Dry wood with the energy that a run set free",
     .arguments = {burned, moisture, net_dry, net_char, method, char_value, boils_at, air_of_method},
     .result = {"equivalent dry wood", Measure::wood_mass, 0, 200000},
     .kernel = numeric<[]<class Real>(Real const& wood, Real const& m, Real const& dry, Real const& coal,
                                      Real const& coal_value, Real const& boils, Real const& ambient, Choice how) {
         return kernels::equivalent_dry_wood(wood, m, dry, coal, coal_value, boils, ambient, method_of(how));
     }>,
     .equations = {"(E - net char × char value)/H, E as in STOVE.WOODENERGY", "not defined by this standard",
                   "(E - net char × char value)/H, E as in STOVE.WOODENERGY", "f (1 - 1.12 M) - 1.5 net char"},
     .sources = {iso_18125, wbt_4_2_3, wbt_3},
     .examples = {{{600, 0.12, 18.5, 50}, {438.7624, 5e-5}, "(9592.104 - 1475)/18.5, by hand"},
                  {{600, 0.12, 18.5, 50, "WBT 4.2.3", omitted, 94.983, 20}, {438.2647, 5e-5}, "By hand"},
                  {{600, 0.12, 18.5, 50, "WBT 3"}, {444.36, 1e-9}, "600 × 0.8656 - 75, by hand"},
                  {{450, 0.12, 18.5, -30, "WBT 4.2.3", omitted, 94.983, 20}, {436.3337, 5e-5}, "A simmer, by hand"},
                  {{600, 0.12, 18.5, 50, "ISO 19867-1"}, {Error::not_available}, "Not defined by this standard"}}},
    {.name = "AUXILIARYENERGY",
     .stored = "auxiliaryEnergy",
     .summary = "Energy that a fan drew",
     .arguments = {{.name = "fan power",
                    .measure = Measure::electric_power,
                    .low = 0.01,
                    .high = 2000,
                    .help = "Electric power of the fan"},
                   minutes,
                   optional(Argument{.name = "efficiency of charging",
                                     .measure = Measure::share,
                                     .low = 0.05,
                                     .high = 1,
                                     .help = "Share of the charging energy that reaches the fan"},
                            1)},
     .result = {"auxiliary energy", Measure::energy, 0, 1e6},
     .kernel = numeric<[]<class Real>(Real const& watts, Real const& time, Real const& charging) {
         return kernels::auxiliary_energy(watts, time, charging);
     }>,
     .equations = {"P t/efficiency of charging"},
     .sources = {definition},
     .examples = {{{2, 30}, {3.6, 1e-12}, "2 W for 30 min, by hand"}, {{2, 30, 0.8}, {4.5, 1e-12}, "By hand"}}},
};

} // namespace

std::span<Function const> fuel() {
    return functions;
}

} // namespace hearthcell
