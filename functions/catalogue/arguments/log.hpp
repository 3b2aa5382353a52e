#pragma once
// Of a temperature log.

#include "functions/catalogue/arguments.hpp"

namespace hearthcell::arguments {

// Seven hundred days: a date with its time, of the same unit, is below it as well.
inline constexpr Argument times{
    .name = "times",
    .measure = Measure::minutes,
    .low = 0,
    .high = 1e6,
    .help = {"Times of the readings in minutes, running forwards; empty cells are no readings",
             "Temps des mesures en minutes, croissants\u00a0; une cellule vide n’est pas une mesure",
             "Tiempos de las lecturas en minutos, en orden creciente; una celda vacía no es una lectura",
             "Nyakati za vipimo kwa dakika, zikisonga mbele; seli tupu si kipimo"},
    .kind = ArgumentKind::column,
    .headed = true,
};
inline constexpr Argument logged_values{
    .name = "values",
    .measure = Measure::ratio,
    .low = -1e12,
    .high = 1e12,
    .help = {"What was logged, in the same rows as the times",
             "Ce qui a été relevé, sur les mêmes lignes que les temps",
             "Lo que se registró, en las mismas filas que los tiempos",
             "Kilichorekodiwa, katika safu mlalo zile zile za nyakati"},
    .kind = ArgumentKind::column,
    .headed = true,
};
// What a probe in a pot of water can read. A log in °F or K leaves it at the boil at the latest.
inline constexpr double coldest = -10, warmest = 120;
inline constexpr Argument temperatures{
    .name = "temperatures",
    .measure = Measure::temperature,
    .low = coldest,
    .high = warmest,
    .help = {"Temperatures of the readings, in the same rows as the times",
             "Températures des mesures, sur les mêmes lignes que les temps",
             "Temperaturas de las lecturas, en las mismas filas que los tiempos",
             "Halijoto za vipimo, katika safu mlalo zile zile za nyakati"},
    .kind = ArgumentKind::column,
    .headed = true,
};
inline constexpr Argument any_times{
    .name = "times",
    .measure = Measure::minutes,
    .help = {"Times of the readings as they are, in minutes", "Temps des mesures tels quels, en minutes",
             "Tiempos de las lecturas tal como están, en minutos", "Nyakati za vipimo kama zilivyo, kwa dakika"},
    .kind = ArgumentKind::mixed,
};
inline constexpr Argument any_temperatures{
    .name = "temperatures",
    .measure = Measure::temperature,
    .help = {"Temperatures of the readings as they are", "Températures des mesures telles quelles",
             "Temperaturas de las lecturas tal como están", "Halijoto za vipimo kama zilivyo"},
    .kind = ArgumentKind::mixed,
};
inline constexpr Argument target{
    .name = "target",
    .measure = Measure::temperature,
    .low = coldest,
    .high = warmest,
    .help = {"Temperature that the log passes, upwards or downwards",
             "Température que le relevé franchit, en montant ou en descendant",
             "Temperatura que el registro cruza, al subir o al bajar",
             "Halijoto ambayo rekodi inapita, ikipanda au ikishuka"},
    .zero_is_doubtful = true,
};
inline constexpr Argument tolerance{
    .name = "tolerance",
    .measure = Measure::temperature_rise,
    .low = 0.05,
    .high = 3,
    .help = {"How near to its boil the water counts as boiling",
             "Écart à l’ébullition à partir duquel l’eau compte comme bouillante",
             "A qué distancia de la ebullición se da el agua por hirviendo",
             "Karibu kiasi gani na kuchemka maji huhesabiwa kuwa yanachemka"},
    .optional = true,
    .fallback = 0.5,
};
inline constexpr Argument minute_of_log{
    .name = "start minute",
    .measure = Measure::minutes,
    .low = 0,
    .high = 1e6,
    .optional = true,
};
inline constexpr Wording first_reading{"the first reading", "la première mesure", "la primera lectura",
                                       "kipimo cha kwanza"};
/// A time of day goes with a log by the clock.
consteval Argument by_the_clock(Argument argument) {
    argument.clock = true;
    return argument;
}
inline constexpr Argument start_minute =
    by_the_clock(optional(named(minute_of_log, "start minute",
                                {"When the fire was lit, on the log's clock: a minute, or as 9:17",
                                 "Allumage, à l’horloge du relevé\u00a0: une minute, ou une heure comme 9:17",
                                 "Encendido, según el reloj del registro: un minuto, o una hora como 9:17",
                                 "Moto ulipowashwa, kwa saa ya rekodi: dakika, au saa kama 9:17"}),
                          first_reading));
inline constexpr Argument from_minute =
    optional(named(minute_of_log, "from minute",
                   {"Where the stretch begins, on the clock of the log", "Début du tronçon, à l’horloge du relevé",
                    "Dónde empieza el tramo, según el reloj del registro", "Kipande kinapoanza, kwa saa ya rekodi"}),
             first_reading);
inline constexpr Argument to_minute =
    optional(named(minute_of_log, "to minute",
                   {"Where the stretch ends, on the clock of the log", "Fin du tronçon, à l’horloge du relevé",
                    "Dónde termina el tramo, según el reloj del registro", "Kipande kinapoishia, kwa saa ya rekodi"}),
             {"the last reading", "la dernière mesure", "la última lectura", "kipimo cha mwisho"});
inline constexpr Argument hold{
    .name = "hold",
    .measure = Measure::minutes,
    .low = 0,
    .high = 60,
    .help = {"How long readings must stay together for their level to be told from them",
             "Durée pendant laquelle les mesures doivent rester groupées pour que leur niveau compte",
             "Cuánto deben quedarse juntas las lecturas para que su nivel cuente",
             "Muda ambao vipimo lazima vikae pamoja ili kiwango chao kihesabiwe"},
    .optional = true,
    .fallback = 2,
};
inline constexpr Argument stretch_end{.name = "from", .measure = Measure::temperature, .low = 0.01, .high = 105};
inline constexpr Argument from =
    optional(named(stretch_end, "from",
                   {"Temperature at which the stretch begins", "Température au début du tronçon",
                    "Temperatura a la que empieza el tramo", "Halijoto ambapo kipande kinaanza"}),
             {"30 % of the rise from the first reading", "30\u00a0% de l’élévation depuis la première mesure",
              "30\u00a0% de la elevación desde la primera lectura", "30 % ya ongezeko kutoka kipimo cha kwanza"});
inline constexpr Argument to = optional(
    named(stretch_end, "to",
          {"Temperature at which the stretch ends", "Température à la fin du tronçon",
           "Temperatura a la que termina el tramo", "Halijoto ambapo kipande kinaishia"}),
    {"80 % of the rise, at least 10 K below the highest", "80\u00a0% de l’élévation, à 10 K au moins sous le maximum",
     "80\u00a0% de la elevación, al menos 10 K bajo el máximo", "80 % ya ongezeko, angalau 10 K chini ya kilele"});
inline constexpr Argument largest_power{
    .name = "largest power",
    .measure = Measure::power_in_kilowatts,
    .low = 0.1,
    .high = 60,
    .help = {"Power that no fire under this pot exceeds", "Puissance qu’aucun feu sous cette marmite ne dépasse",
             "Potencia que ningún fuego bajo esta olla supera", "Nguvu ambayo hakuna moto chini ya sufuria hii huzidi"},
    .optional = true,
    .fallback = 8,
};
inline constexpr Argument language{
    .name = "language",
    .measure = Measure::words,
    .help = {"Language of the findings, whatever that of the office",
             "Langue des constats, quelle que soit celle du logiciel",
             "Idioma de los hallazgos, sea cual sea el del programa",
             "Lugha ya yaliyoonekana, bila kujali ile ya programu"},
    .kind = ArgumentKind::choice,
    .choices = {"en", "fr", "es", "sw"}, // in the order of `languages`; held by a test
    .optional = true,
};

} // namespace hearthcell::arguments
