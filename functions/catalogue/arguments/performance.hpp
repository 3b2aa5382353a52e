#pragma once
// Of a test as a whole: pot, time, heat and power, the method and the conditions that results are scaled to.

#include "functions/catalogue/arguments/fuel.hpp"
#include "functions/catalogue/arguments/site_and_water.hpp"

namespace hearthcell::arguments {

inline constexpr Argument method{
    .name = "method",
    .measure = Measure::words,
    .help = {"Whose definition is computed", "Définition suivie par le calcul", "Definición que sigue el cálculo",
             "Fasili inayofuatwa katika hesabu"},
    .kind = ArgumentKind::choice,
    .choices = {"properties", "ISO 19867-1", "WBT 4.2.3", "WBT 3"},
    .optional = true,
};
// One method of energy needs them.
inline constexpr Wording needed_by_one_method{"none; WBT 4.2.3 needs it", "aucune valeur\u00a0; WBT 4.2.3 en exige une",
                                              "ningún valor; WBT 4.2.3 necesita uno", "hakuna; WBT 4.2.3 inaihitaji"};
inline constexpr Argument boils_at = optional(boiling_point, needed_by_one_method);
inline constexpr Argument air_of_method = optional(air, needed_by_one_method);

inline constexpr Argument boils_at_end =
    optional(boiling_point, {"the water boiled at its end temperature", "l’eau a bouilli à sa température finale",
                             "el agua hirvió a su temperatura final", "maji yalichemka kwa halijoto ya mwisho"});
inline constexpr Argument pot_empty{
    .name = "pot empty",
    .measure = Measure::metal_mass,
    .low = 10,
    .high = 200000,
    .help = {"Mass of the empty pot, with whatever stays on it while it is weighed",
             "Masse de la marmite vide, avec tout ce qui reste dessus pendant les pesées",
             "Masa de la olla vacía, con todo lo que queda sobre ella al pesarla",
             "Uzito wa sufuria tupu, pamoja na chochote kinachobaki juu yake inapopimwa"},
};
inline constexpr Argument pot_and_water{
    .name = "pot and water",
    .measure = Measure::water_mass,
    .low = 60,
    .high = 700000,
    .help = {"Mass of the pot with its water", "Masse de la marmite avec son eau", "Masa de la olla con su agua",
             "Uzito wa sufuria pamoja na maji yake"},
};
// A heat capacity of the pot that is left out counts as none.
inline constexpr Argument pot_capacity{
    .name = "pot capacity",
    .measure = Measure::heat_capacity,
    .low = 0,
    .high = 50000,
    .help = {"Heat capacity of the pot itself", "Capacité thermique de la marmite elle-même",
             "Capacidad calorífica de la olla misma", "Uwezo wa sufuria yenyewe kuhifadhi joto"},
    .optional = true,
    .fallback = 0,
};
// Half a minute at least: a Calc time handed over as a part of a day stays below that up to noon.
inline constexpr Argument minutes{
    .name = "minutes",
    .measure = Measure::minutes,
    .low = 0.5,
    .high = 1440,
    .help = {"Duration in minutes", "Durée en minutes", "Duración en minutos", "Muda kwa dakika"},
};
inline constexpr Argument fuel_energy{
    .name = "fuel energy",
    .measure = Measure::energy,
    .low = 1,
    .high = 1e7,
    .help = {"Energy of the fuel burned, see STOVE.FUELENERGY", "Énergie du combustible brûlé, voir STOVE.FUELENERGY",
             "Energía del combustible quemado, véase STOVE.FUELENERGY",
             "Nishati ya fueli iliyochomwa, tazama STOVE.FUELENERGY"},
};
inline constexpr Argument useful_heat{
    .name = "useful heat",
    .measure = Measure::energy,
    .low = 1,
    .high = 1e7,
    .help = {"Heat that the water took up, see STOVE.USEFULHEAT", "Chaleur reçue par l’eau, voir STOVE.USEFULHEAT",
             "Calor que recibió el agua, véase STOVE.USEFULHEAT", "Joto lililopokewa na maji, tazama STOVE.USEFULHEAT"},
};
inline constexpr Argument other_energy{
    .name = "other energy",
    .measure = Measure::energy,
    .low = 0,
    .high = 1e6,
    .help = {"Energy from elsewhere: firelighter, kindling, fan",
             "Énergie d’autre origine\u00a0: allume-feu, petit bois, ventilateur",
             "Energía de otro origen: pastilla de encendido, astillas, ventilador",
             "Nishati ya chanzo kingine: kiwashio, vijiti vya kuwashia, feni"},
    .optional = true,
    .fallback = 0,
};
inline constexpr Argument char_energy_credit{
    .name = "char energy",
    .measure = Measure::energy,
    .low = -1e6,
    .high = 1e7,
    .help = {"Energy left in the char, if it is credited, see STOVE.CHARENERGY",
             "Énergie restée dans le charbon, si elle est déduite, voir STOVE.CHARENERGY",
             "Energía que queda en el carbón, si se descuenta, véase STOVE.CHARENERGY",
             "Nishati ya makaa, ikiwa inatolewa hesabuni, tazama STOVE.CHARENERGY"},
    .optional = true,
    .fallback = 0,
};
inline constexpr Argument power_of_fire{
    .name = "power",
    .measure = Measure::power_in_kilowatts,
    .low = 0.01,
    .high = 60,
    .help = {"Power of the fire", "Puissance du feu", "Potencia del fuego", "Nguvu ya moto"},
};
inline constexpr Argument standard_rise{
    .name = "standard rise",
    .measure = Measure::temperature_rise,
    .low = 1,
    .high = 105,
    .help = {"Rise of temperature that results are scaled to",
             "Élévation de température à laquelle le résultat est ramené",
             "Elevación de temperatura a la que se ajusta el resultado",
             "Ongezeko la halijoto ambalo matokeo yanalinganishwa nalo"},
};
inline constexpr Argument standard_mass =
    named(water_mass, "standard mass",
          {"Mass of water that the time is scaled to", "Masse d’eau à laquelle le temps est ramené",
           "Masa de agua a la que se ajusta el tiempo", "Uzito wa maji ambao muda unalinganishwa nao"});
inline constexpr Argument heat_loss{
    .name = "heat loss",
    .measure = Measure::heat_loss,
    .low = 0,
    .high = 200,
    .help = {"Heat that the pot loses per kelvin above the air",
             "Chaleur perdue par la marmite par kelvin au-dessus de l’air",
             "Calor que pierde la olla por kelvin sobre el aire",
             "Joto linalopotea kutoka sufuriani kwa kila kelvini juu ya hewa"},
    .zero_is_doubtful = true,
};

} // namespace hearthcell::arguments
