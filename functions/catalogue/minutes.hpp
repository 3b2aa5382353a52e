#pragma once
// The entry of MINUTES, apart from its group: that holds functions about functions, which stand higher.

#include "functions/catalogue/function.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/diagnosis/minutes_remarks.hpp"
#include "functions/kernels/times/minutes.hpp"

namespace hearthcell {

namespace minutes_examples {
// 10:00 and 31:40 as times of Calc, with a gap.
inline constexpr std::array<double, 3> times{10 / 1440.0, blank, (31 + 40 / 60.0) / 1440};
} // namespace minutes_examples

inline constexpr Function minutes_function{
    .name = "MINUTES",
    .stored = "minutes",
    .summary = {"A time in minutes, from a text, a time of Calc or a column of them",
                "Un temps en minutes, d’après un texte, une heure de Calc ou une colonne",
                "Un tiempo en minutos, a partir de un texto, una hora de Calc o una columna",
                "Muda kwa dakika, kutokana na maandishi, saa ya Calc au safu wima yake"},
    .arguments = {{.name = "time",
                   .measure = Measure::words,
                   .help = {"A text as 31:40, 12m45s or 1 h 8 min, a number (below 0.5 a time of Calc, from 3 on "
                            "minutes), or a row or column",
                            "Un texte comme 31:40, 12m45s ou 1 h 8 min, un nombre (sous 0,5 une heure de Calc, dès 3 "
                            "des minutes) ou une ligne ou colonne",
                            "Un texto como 31:40, 12m45s o 1 h 8 min, un número (bajo 0,5 una hora de Calc, desde 3 "
                            "minutos) o una fila o columna",
                            "Maandishi kama 31:40, 12m45s au 1 h 8 min, namba (chini ya 0.5 saa ya Calc, kuanzia 3 "
                            "dakika), au safu mlalo au wima"},
                   .kind = ArgumentKind::anything},
                  {.name = "typed as",
                   .measure = Measure::words,
                   .help = {"Type \"mm:ss\" where Calc took minutes for hours",
                            "Écrire \"mm:ss\" si Calc a pris les minutes pour des heures",
                            "Escriba \"mm:ss\" si Calc tomó los minutos por horas",
                            "Andika \"mm:ss\" ikiwa Calc ilichukua dakika kuwa saa"},
                   .kind = ArgumentKind::choice,
                   .choices = {"as it stands", "mm:ss", "hh:mm", "minutes"},
                   .optional = true}},
    .result = {.name = Term("time"), .measure = Measure::minutes, .low = 0, .high = longest_time},
    .kernel = Wordy{minutes, diagnosis::remark_on_minutes},
    .equations =
        {Label{"texts by their own signs, 31:40 as mm:ss; numbers below 0.5 as parts of a day, from 3 on as minutes",
               "textes d’après leurs propres signes, 31:40 comme mm:ss\u00a0; nombres sous 0,5 comme parts de jour, à "
               "partir de 3 comme minutes",
               "textos según sus propios signos, 31:40 como mm:ss; números menores que 0,5 como partes de un día, "
               "desde 3 como minutos",
               "maandishi kwa alama zake, 31:40 kama mm:ss; namba chini ya 0.5 kama sehemu za siku, kuanzia 3 kama "
               "dakika"},
         Label{
             "texts by their own signs, 31:40 as mm:ss; numbers × 24, since Calc stored minutes as hours",
             "textes d’après leurs propres signes, 31:40 comme mm:ss\u00a0; nombres × 24, Calc ayant enregistré les "
             "minutes comme heures",
             "textos según sus propios signos, 31:40 como mm:ss; números × 24, pues Calc guardó los minutos como horas",
             "maandishi kwa alama zake, 31:40 kama mm:ss; namba × 24, kwa kuwa Calc ilihifadhi dakika kama saa"},
         Label{"texts by their own signs, 31:40 as hh:mm; numbers × 1440, parts of a day",
               "textes d’après leurs propres signes, 31:40 comme hh:mm\u00a0; nombres × 1440, parts de jour",
               "textos según sus propios signos, 31:40 como hh:mm; números × 1440, partes de un día",
               "maandishi kwa alama zake, 31:40 kama hh:mm; namba × 1440, sehemu za siku"},
         Label{"texts by their own signs; numbers as minutes",
               "textes d’après leurs propres signes\u00a0; nombres comme minutes",
               "textos según sus propios signos; números como minutos", "maandishi kwa alama zake; namba kama dakika"}},
    .sources = {sources::definition},
    .examples = {{{"31:40"}, {31.6666667, 5e-8}, "31 min 40 s: 31 + 40/60"},
                 {{"1 h 8 min"}, {68, 1e-12}, "60 + 8"},
                 {{minutes_examples::times}, {10, 1e-12}, "A column of times of Calc; a single cell shows its first"},
                 {{1.325, "mm:ss"}, {31.8, 1e-12}, "31:48 typed into a cell is 31 h 48 min = 1.325 days"},
                 {{1.325}, {Error::number}, "Minutes, or 31:48 typed into a cell"},
                 {{"1:75"}, {Error::number}, "No time has 75 seconds behind its minutes"}}};

} // namespace hearthcell
