#include "extension/checking/texts.hpp"

#include "functions/words/by_place.hpp"
#include "functions/words/speaker.hpp"

#include <array>

namespace hearthcell::checking {
namespace {

struct Row {
    Text text;
    Wording in;
};

constexpr std::array<Row, std::size_t(Text::count)> rows{{
    {Text::title, {"Check of %1", "Vérification de %1", "Comprobación de %1", "Ukaguzi wa %1"}},
    {Text::nothing_of_ours,
     {"No cell uses a function of Hearthcell: nothing was checked.",
      "Aucune cellule n’utilise une fonction de Hearthcell\u00a0: rien n’a été vérifié.",
      "Ninguna celda usa una función de Hearthcell: no se ha comprobado nada.",
      "Hakuna seli inayotumia kitendakazi cha Hearthcell: hakuna kilichokaguliwa."}},
    {Text::too_large,
     {"More than %1 cells are filled: the workbook was not checked.",
      "Plus de %1 cellules sont remplies\u00a0: le classeur n’a pas été vérifié.",
      "Hay más de %1 celdas llenas: la hoja de cálculo no se ha comprobado.",
      "Seli zaidi ya %1 zimejazwa: lahajedwali halikukaguliwa."}},
    {Text::all_clean,
     {"Runs: %1. Nothing stands out in any of them.", "Essais\u00a0: %1. Rien n’y attire l’attention.",
      "Ensayos: %1. Nada llama la atención en ellos.", "Majaribio: %1. Hakuna kinachotia shaka."}},
    {Text::look_at,
     {"Runs: %1. Nothing stands out in %2 of them; look at %3.",
      "Essais\u00a0: %1. Rien n’attire l’attention dans %2 d’entre eux\u00a0; à regarder\u00a0: %3.",
      "Ensayos: %1. Nada llama la atención en %2 de ellos; mire %3.",
      "Majaribio: %1. Katika %2 kati yake hakuna kinachotia shaka; angalia %3."}},
    {Text::outside_of_runs,
     {"Outside of the runs", "En dehors des essais", "Fuera de los ensayos", "Nje ya majaribio"}},
    {Text::seen_before,
     {"Remarks that are not repeated, since they were seen and nothing has changed: %1.",
      "Remarques non répétées, car elles ont été vues et rien n’a changé\u00a0: %1.",
      "Observaciones que no se repiten, porque se han visto y nada ha cambiado: %1.",
      "Maoni yasiyorudiwa, kwa sababu yameonwa na hakuna kilichobadilika: %1."}},
    {Text::whole_workbook,
     {"What holds for the whole workbook", "Ce qui vaut pour tout le classeur",
      "Lo que vale para toda la hoja de cálculo", "Yanayohusu lahajedwali zima"}},
    {Text::from_memory,
     {"From memory of the document; check the clause before you cite it: %1.",
      "De mémoire du document\u00a0; vérifiez la clause avant de le citer\u00a0: %1.",
      "De memoria del documento; compruebe la cláusula antes de citarlo: %1.",
      "Kwa kumbukumbu ya hati; hakiki kifungu kabla ya kuinukuu: %1."}},
    {Text::default_pressure,
     {"Without a sea-level pressure these count with 1013.25 hPa: %1.",
      "Sans pression au niveau de la mer, ces fonctions comptent avec 1013,25 hPa\u00a0: %1.",
      "Sin presión al nivel del mar, estas cuentan con 1013,25 hPa: %1.",
      "Bila shinikizo usawa wa bahari, hivi hutumia 1013.25 hPa: %1."}},
    {Text::few_runs,
     {"A mean of two or three runs tells little: %1.", "Une moyenne de deux ou trois essais dit peu\u00a0: %1.",
      "Una media de dos o tres ensayos dice poco: %1.", "Wastani wa majaribio mawili au matatu hauelezi mengi: %1."}},
    {Text::by_hand,
     {"Formulas written by hand that compute what a function does, each at the first of its cells: %1.",
      "Formules écrites à la main qui calculent ce que fait une fonction, chacune à sa première cellule\u00a0: %1.",
      "Fórmulas escritas a mano que calculan lo que hace una función, cada una en su primera celda: %1.",
      "Fomula zilizoandikwa kwa mkono zinazokokotoa kile kitendakazi hufanya, kila moja kwenye seli yake ya kwanza: "
      "%1."}},
    {Text::led_outside,
     {"Calls that were not looked at, because what they read is fetched or put together while it is worked out "
      "(INDIRECT, WEBSERVICE, other files): %1.",
      "Appels non examinés, car ce qu’ils lisent est cherché ou composé pendant le calcul (INDIRECT, WEBSERVICE, "
      "autres fichiers)\u00a0: %1.",
      "Llamadas que no se han examinado, porque lo que leen se busca o se compone durante el cálculo (INDIRECT, "
      "WEBSERVICE, otros archivos): %1.",
      "Miito isiyokaguliwa, kwa sababu inachosoma huletwa au hutungwa wakati wa kukokotoa (INDIRECT, WEBSERVICE, "
      "mafaili mengine): %1."}},
    {Text::left_alone,
     {"Calls that were not looked at, because there are too many of them or their formulas are too long: %1.",
      "Appels non examinés, car ils sont trop nombreux ou leurs formules trop longues\u00a0: %1.",
      "Llamadas que no se han examinado, porque son demasiadas o sus fórmulas demasiado largas: %1.",
      "Miito isiyokaguliwa, kwa sababu ni mingi mno au fomula zake ni ndefu mno: %1."}},
    {Text::run, {"run", "essai", "ensayo", "jaribio"}},
    {Text::cell, {"cell", "cellule", "celda", "seli"}},
    {Text::function, {"function", "fonction", "función", "kitendakazi"}},
    {Text::value, {"value shown", "valeur affichée", "valor mostrado", "thamani inayoonyeshwa"}},
    {Text::remark, {"remark", "remarque", "observación", "maoni"}},
    {Text::effect, {"effect", "effet", "efecto", "athari"}},
    {Text::seen, {"seen", "vu", "visto", "imeonwa"}},
    {Text::how_to_leave,
     {"To have a remark left out from now on, type a word into its last cell and choose Hearthcell ▸ Seen, leave it. "
      "It "
      "comes back when a value that it rests on changes. Ctrl and a click on a cell’s name lead to the cell.",
      "Pour qu’une remarque ne revienne plus, écrivez un mot dans sa dernière cellule et choisissez Hearthcell ▸ Vu, "
      "laisser tel quel. Elle revient quand une valeur sur laquelle elle repose change. Ctrl et un clic sur le nom "
      "d’une cellule y mènent.",
      "Para que una observación no vuelva, escriba una palabra en su última celda y elija Hearthcell ▸ Visto, dejarlo "
      "así. Vuelve cuando cambia un valor en el que se apoya. Ctrl y un clic en el nombre de una celda llevan a ella.",
      "Ili maoni yasirudiwe, andika neno kwenye seli yake ya mwisho kisha uchague Hearthcell ▸ Imeonwa, iachwe. "
      "Yatarudi thamani yanayoitegemea ikibadilika. Ctrl na kubofya jina la seli hukupeleka kwenye seli hiyo."}},
    {Text::other_row,
     {"It reads row %1, while the formulas above and below it read their own row.",
      "Elle lit la ligne %1, alors que les formules au-dessus et au-dessous lisent leur propre ligne.",
      "Lee la fila %1, mientras que las fórmulas de arriba y de abajo leen su propia fila.",
      "Inasoma safu mlalo ya %1, ilhali fomula za juu na chini yake husoma safu mlalo zao."}},
    {Text::typed_over,
     {"A value stands here, where the cells above and below have a formula: was the result typed over it?",
      "Une valeur se trouve ici, là où les cellules au-dessus et au-dessous ont une formule\u00a0: le résultat a-t-il "
      "été saisi par-dessus\u00a0?",
      "Aquí hay un valor, donde las celdas de arriba y de abajo tienen una fórmula: ¿se escribió el resultado encima?",
      "Hapa pana thamani, ilhali seli za juu na chini zina fomula: je, tokeo liliandikwa juu ya fomula?"}},
    {Text::unlike_the_others,
     {"%1 is %2 here, and %3 in all %4 others of the column.",
      "%1\u00a0: %2 ici, et %3 dans les %4 autres cellules de la colonne.",
      "%1: %2 aquí, y %3 en las otras %4 celdas de la columna.",
      "%1: %2 hapa, na %3 katika seli nyingine zote %4 za safu wima."}},
    {Text::two_methods,
     {"One result over runs by different methods: %1.",
      "Un seul résultat pour des essais calculés par des méthodes différentes\u00a0: %1.",
      "Un solo resultado para ensayos calculados con métodos distintos: %1.",
      "Tokeo moja kwa majaribio yaliyokokotolewa kwa mbinu tofauti: %1."}},
    {Text::empty_cell,
     {"%1 is an empty cell, which counts as 0.", "%1\u00a0: la cellule est vide et compte pour 0.",
      "%1: la celda está vacía y cuenta como 0.", "%1: seli haina kitu, na inahesabiwa kuwa 0."}},
    {Text::would_be, {"It would be %1.", "Ce serait %1.", "Sería %1.", "Ingekuwa %1."}},
    {Text::points,
     {"%1 instead of %2: about %3 points", "%1 au lieu de %2\u00a0: environ %3 points",
      "%1 en vez de %2: unos %3 puntos", "%1 badala ya %2: takriban pointi %3"}},
    {Text::per_cent,
     {"%1 instead of %2: about %3 %", "%1 au lieu de %2\u00a0: environ %3\u00a0%", "%1 en vez de %2: un %3 % aprox.",
      "%1 badala ya %2: takriban %3 %"}},
    {Text::in_name, {"name %1", "nom %1", "nombre %1", "jina %1"}},
    {Text::in_conditional_format,
     {"conditional format, from %1 on", "format conditionnel, à partir de %1", "formato condicional, desde %1",
      "muundo wenye masharti, kuanzia %1"}},
    {Text::in_validity,
     {"validity rule, from %1 on", "règle de validité, à partir de %1", "regla de validez, desde %1",
      "kanuni ya uhalali, kuanzia %1"}},
    {Text::up_to, {"%1 to %2", "%1 à %2", "%1 a %2", "%1 hadi %2"}},
    {Text::and_more, {"%1 and %2 more", "%1 et %2 autres", "%1 y otros %2", "%1 na nyingine %2"}},
}};

static_assert(stand_in_order(rows), "a text is looked up by its place");

} // namespace

std::string_view text(Text which, Language language) {
    return rows[std::size_t(which)].in.in(language);
}

std::string say(Text which, Language language, std::initializer_list<std::string_view> values) {
    std::string result;
    std::string_view const pattern = text(which, language);
    for (std::size_t at = 0; at < pattern.size(); ++at) {
        std::size_t const place =
            pattern[at] == '%' && at + 1 < pattern.size() ? std::size_t(pattern[at + 1] - '1') : 9;
        if (place < values.size())
            result += values.begin()[place], ++at;
        else
            result += pattern[at];
    }
    return result;
}

std::string in_language(double number, Language language) {
    return Speaker(language).number(number);
}

std::string share_in_language(double share, Language language) {
    return Speaker(language).tenths(100 * share) + (language == Language::french ? "\u00a0%" : " %");
}

} // namespace hearthcell::checking
