#pragma once
// The entry of ROOMCONCENTRATION, and what it takes.

#include "functions/catalogue/arguments/emissions.hpp"
#include "functions/catalogue/arguments/part.hpp"
#include "functions/catalogue/function.hpp"
#include "functions/diagnosis/emission_remarks.hpp"
#include "functions/kernels/room.hpp"

namespace hearthcell {

namespace arguments {
inline constexpr Argument emission_rate{
    .name = "emission rate",
    .measure = Measure::emission_rate,
    .low = 1e-6,
    .high = 1e6,
    .help = {"What the stove emits, see STOVE.EMISSIONRATE", "Ce que le foyer émet, voir STOVE.EMISSIONRATE",
             "Lo que emite la cocina, véase STOVE.EMISSIONRATE", "Kinachotolewa na jiko, tazama STOVE.EMISSIONRATE"},
};
inline constexpr Argument room_volume{
    .name = "room volume",
    .measure = Measure::room_volume,
    .low = 1,
    .high = 5000,
    .help = {"Volume of the room", "Volume de la pièce", "Volumen de la habitación", "Ujazo wa chumba"},
};
inline constexpr Argument air_changes{
    .name = "air changes",
    .measure = Measure::air_changes,
    .low = 0,
    .high = 200,
    .help = {"How often an hour fresh air takes the place of the room's",
             "Combien de fois par heure l’air neuf remplace celui de la pièce",
             "Cuántas veces por hora el aire fresco reemplaza al de la habitación",
             "Mara ngapi kwa saa hewa safi huchukua nafasi ya ile ya chumba"},
    .zero_is_doubtful = true,
};
inline constexpr Argument share_entering{
    .name = "share entering",
    .measure = Measure::share,
    .low = 0.001,
    .high = 1,
    .help = {"Share that enters the room; the rest leaves by a chimney",
             "Part qui entre dans la pièce\u00a0; le reste sort par une cheminée",
             "Fracción que entra en la habitación; el resto sale por una chimenea",
             "Sehemu inayoingia chumbani; nyingine hutoka kwa bomba la moshi"},
    .optional = true,
    .fallback = 1,
};
} // namespace arguments

namespace room_examples {
inline constexpr std::array<Expected, 3> particles_in_a_kitchen{{{2.4148922, 5e-7}, {2.1775108, 5e-7}, {2.415, 1e-12}}};
}

inline constexpr Function room_concentration_function = [] {
    using namespace arguments;
    using namespace sources;
    return Function{
        .name = "ROOMCONCENTRATION",
        .stored = "roomConcentration",
        .summary = {"Concentration in a room that a stove emits into", "Concentration dans une pièce où un foyer émet",
                    "Concentración en una habitación en la que emite una cocina",
                    "Ukolezi katika chumba ambamo jiko hutoa moshi"},
        .arguments = {emission_rate, room_volume, air_changes, minutes, background, share_entering, part},
        .result = {.name = {"concentration in the room", "concentration dans la pièce",
                            "concentración en la habitación", "ukolezi chumbani"},
                   .measure = Measure::concentration,
                   .low = 0,
                   .high = 1e9,
                   .parts = {{Term("at the end"), Measure::concentration},
                             {Term("mean"), Measure::concentration},
                             {Term("in the long run"), Measure::concentration}}},
        .kernel =
            Columnar{kernels::answer_room, diagnosis::remark_on_room,
                     &numeric<[]<class Real>(Real const& rate, Real const& volume, Real const& changes,
                                             Real const& time, Real const& there, Real const& entering, Choice which) {
                         return kernels::room_concentration(
                             kernels::Room<Real>{rate, volume, changes, time, there, entering}, which);
                     }>},
        .equations = {Label{
            "background + s G/q × (1 - e^-x), q = air changes × volume, x = air changes × time; as a mean "
            "background + s G/q × (1 - (1 - e^-x)/x); in the long run background + s G/q",
            "ambiante + s G/q × (1 - e^-x), q = renouvellements × volume, x = renouvellements × durée\u00a0; en "
            "moyenne "
            "ambiante + s G/q × (1 - (1 - e^-x)/x)\u00a0; à la longue ambiante + s G/q",
            "fondo + s G/q × (1 - e^-x), q = renovaciones × volumen, x = renovaciones × tiempo; de media "
            "fondo + s G/q × (1 - (1 - e^-x)/x); a la larga fondo + s G/q",
            "hewani + s G/q × (1 - e^-x), q = mabadilisho × ujazo, x = mabadilisho × muda; kwa wastani "
            "hewani + s G/q × (1 - (1 - e^-x)/x); hatimaye hewani + s G/q"}},
        .sources = {mixed_room},
        .caution = {"Near the fire it is higher. Carbon monoxide kills: ventilate, have an alarm.",
                    "Plus forte près du feu. Le CO tue\u00a0: aérez, ayez un détecteur.",
                    "Más alta junto al fuego. El CO mata: ventile y tenga una alarma.",
                    "Karibu na moto huzidi. CO huua: ingiza hewa, uwe na king’ora."},
        .examples = {
            {{9.5, 24, 10, 60, 0.04}, {2.4148922, 5e-7}, "The equation integrated with scipy"},
            {{9.5, 24, 10, 60, 0.04, 1, "all"},
             room_examples::particles_in_a_kitchen,
             "The equation integrated with scipy"},
            {{160, 30, 15, 240, 2, 0.25, "mean"}, {7.2444444, 5e-7}, "A chimney takes three quarters; scipy"},
            {{500, 30, 15, 45, omitted, omitted, "in the long run"}, {66.666667, 5e-7}, "500 × 60/(15 × 30), by hand"},
            {{9.5, 24, 10, 1.0 / 24}, {Error::number}, "A Calc time, a part of a day"}}};
}();

} // namespace hearthcell
