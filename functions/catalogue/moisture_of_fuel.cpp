#include "functions/catalogue/subjects.hpp"

#include "functions/catalogue/arguments/fuel.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/kernels/fuel.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace sources;

constexpr Function functions[] = {
    {.name = "MOISTURE",
     .stored = "moisture",
     .summary = {"Moisture of wood from a sample dried in an oven",
                 "Humidité du bois d’après un échantillon séché à l’étuve",
                 "Humedad de la leña según una muestra secada al horno",
                 "Unyevu wa kuni kutokana na sampuli iliyokaushwa tanurini"},
     .arguments = {as_fired, oven_dry, basis, optional(container, 0)},
     .result = {.name = Term("moisture"), .measure = Measure::moisture_wet, .low = 0, .high = 3},
     .kernel = numeric<[]<class Real>(Real const& wet, Real const& dry, Real const& box, Choice on) {
         return kernels::moisture(wet, dry, box, kernels::Basis(on.index));
     }>,
     .equations = {Label{"(as fired - dry)/(as fired - container)", "(tel que brûlé - sec)/(tel que brûlé - récipient)",
                         "(tal como se quema - seca)/(tal como se quema - recipiente)",
                         "(kama inavyochomwa - kavu)/(kama inavyochomwa - chombo)"},
                   Label{"(as fired - dry)/(dry - container)", "(tel que brûlé - sec)/(sec - récipient)",
                         "(tal como se quema - seca)/(seca - recipiente)",
                         "(kama inavyochomwa - kavu)/(kavu - chombo)"}},
     .sources = {iso_18134},
     .examples = {{{120, 100}, {0.1666667, 5e-8}, "u = 20 % gives 16.6667 % wet basis, by hand"},
                  {{120, 100, "dry"}, {0.2, 1e-12}, "Definition, by hand"},
                  {{170, 150, "wet", 50}, {0.1666667, 5e-8}, "The same sample in a box of 50 g, by hand"},
                  {{100, 120}, {Error::number}, "Wood does not gain mass in an oven"}}},
    {.name = "WETBASIS",
     .stored = "wetBasis",
     .summary = {"Moisture on wet basis from moisture on dry basis",
                 "Humidité sur base humide d’après l’humidité sur base sèche",
                 "Humedad en base húmeda a partir de la humedad en base seca",
                 "Unyevu kwa msingi mbichi kutokana na unyevu kwa msingi mkavu"},
     .arguments = {dry_basis_moisture},
     .result = {.name = {"moisture, wet basis", "humidité, base humide", "humedad, base húmeda",
                         "unyevu, msingi mbichi"},
                .measure = Measure::moisture_wet,
                .low = 0,
                .high = 1},
     .kernel = numeric<[]<class Real>(Real const& u) { return kernels::wet_basis(u); }>,
     .equations = {"u/(1 + u)"},
     .sources = {definition, iso_18134},
     .examples = {{{0.15}, {0.130435, 5e-7}, "Definition, by hand"}, {{1}, {0.5, 1e-12}, "Definition, by hand"}}},
    {.name = "DRYBASIS",
     .stored = "dryBasis",
     .summary = {"Moisture on dry basis from moisture on wet basis",
                 "Humidité sur base sèche d’après l’humidité sur base humide",
                 "Humedad en base seca a partir de la humedad en base húmeda",
                 "Unyevu kwa msingi mkavu kutokana na unyevu kwa msingi mbichi"},
     .arguments = {moisture},
     .result = {.name = {"moisture, dry basis", "humidité, base sèche", "humedad, base seca", "unyevu, msingi mkavu"},
                .measure = Measure::moisture_dry,
                .low = 0,
                .high = 3},
     .kernel = numeric<[]<class Real>(Real const& m) { return kernels::dry_basis(m); }>,
     .equations = {"M/(1 - M)"},
     .sources = {definition, iso_18134},
     .examples = {{{0.2}, {0.25, 1e-12}, "Definition, by hand"}, {{0.1}, {0.111111, 5e-7}, "Definition, by hand"}}},
    {.name = "DRYMASS",
     .stored = "dryMass",
     .summary = {"Dry mass of moist wood", "Masse sèche d’un bois humide", "Masa seca de la leña húmeda",
                 "Uzito mkavu wa kuni zenye unyevu"},
     .arguments = {wood_mass, moisture},
     .result = {.name = Term("dry mass"), .measure = Measure::wood_mass, .low = 0, .high = 100000},
     .kernel = numeric<[]<class Real>(Real const& mass, Real const& m) { return kernels::dry_mass(mass, m); }>,
     .equations = {"m (1 - M)"},
     .sources = {definition},
     .examples = {{{520, 0.14}, {447.2, 1e-9}, "Definition, by hand"}}},
};

} // namespace

std::span<Function const> moisture_of_fuel() {
    return functions;
}

} // namespace hearthcell
