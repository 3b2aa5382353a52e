#include "manifest/generator/guide/words.hpp"

namespace hearthcell::generator::guide {
namespace {

struct Row {
    Word word;
    Wording in;
};

constexpr Row rows[] = {
    // Names of sheets: one word, without anything that a formula would have to quote.
    {Word::index_sheet, {"Guide", "Guide", "Guía", "Mwongozo"}},
    {Word::readings_sheet, {"Readings", "Mesures", "Lecturas", "Vipimo"}},
    {Word::title,
     {"Hearthcell: the function guide", "Hearthcell\u00a0: le guide des fonctions", "Hearthcell: la guía de funciones",
      "Hearthcell: mwongozo wa vitendakazi"}},
    {Word::intro,
     {"What every function does, takes and gives, by which equation and from which source. The examples are computed "
      "here, by the Hearthcell that is installed, and compared with the values that they must give.",
      "Ce que chaque fonction fait, reçoit et donne, par quelle équation et d’après quelle source. Les exemples sont "
      "calculés ici, par l’extension Hearthcell installée, et comparés aux valeurs qu’ils doivent donner.",
      "Qué hace, qué recibe y qué da cada función, con qué ecuación y según qué fuente. Los ejemplos se calculan aquí, "
      "con la extensión Hearthcell instalada, y se comparan con los valores que deben dar.",
      "Kila kitendakazi kinafanya nini, kinapokea nini na kinatoa nini, kwa mlinganyo gani na kwa chanzo gani. Mifano "
      "inakokotolewa hapa na Hearthcell iliyosakinishwa, kisha inalinganishwa na thamani inayotakiwa."}},
    {Word::all_agree,
     {"All %1 checks agree: every example gives what it must.",
      "Les %1 contrôles concordent\u00a0: chaque exemple donne ce qu’il doit donner.",
      "Las %1 comprobaciones coinciden: cada ejemplo da lo que debe dar.",
      "Ukaguzi wote %1 ni sawa: kila mfano unatoa thamani inayotakiwa."}},
    {Word::some_differ,
     {"%1 of %2 checks differ: see the verdicts below.",
      "%1 contrôles sur %2 ne concordent pas\u00a0: voir les verdicts ci-dessous.",
      "%1 de %2 comprobaciones no coinciden: vea los veredictos de abajo.",
      "Ukaguzi %1 kati ya %2 ni tofauti: tazama maamuzi hapa chini."}},
    {Word::nothing_checked,
     {"Nothing is checked: Hearthcell is missing.", "Rien n’est contrôlé\u00a0: l’extension Hearthcell est absente.",
      "No se comprueba nada: falta la extensión Hearthcell.", "Hakuna kilichokaguliwa: Hearthcell haipo."}},
    {Word::is_installed,
     {"Hearthcell is installed and computes the values of this workbook.",
      "L’extension Hearthcell est installée et calcule les valeurs de ce classeur.",
      "La extensión Hearthcell está instalada y calcula los valores de este libro.",
      "Hearthcell imesakinishwa na inakokotoa thamani za kitabu hiki."}},
    {Word::is_missing,
     {"Hearthcell is missing here, so that its functions have no values. Please install it, restart LibreOffice and "
      "open this workbook again.",
      "L’extension Hearthcell est absente ici\u00a0: ses fonctions n’ont pas de valeur. Veuillez l’installer, "
      "redémarrer LibreOffice et rouvrir ce classeur.",
      "Aquí falta la extensión Hearthcell, por lo que sus funciones no tienen valor. Instálela, reinicie LibreOffice y "
      "abra de nuevo este libro.",
      "Hearthcell haipo hapa, kwa hiyo vitendakazi vyake havina thamani. Tafadhali isakinishe, anzisha LibreOffice "
      "upya, "
      "kisha fungua kitabu hiki tena."}},
    {Word::is_another_edition,
     {"This guide belongs to %1, but %2 is installed. The menu Hearthcell opens the guide that belongs to it.",
      "Ce guide va avec %1, mais %2 est installé. Le menu Hearthcell ouvre le guide qui lui correspond.",
      "Esta guía es de %1, pero está instalado %2. El menú Hearthcell abre la guía que le corresponde.",
      "Mwongozo huu ni wa %1, lakini iliyosakinishwa ni %2. Menyu ya Hearthcell hufungua mwongozo wake."}},
    {Word::made_for, {"Guide of %1", "Guide de %1", "Guía de %1", "Mwongozo wa %1"}},
    {Word::agrees, {"agrees", "concorde", "coincide", "sawa"}},
    {Word::differs, {"differs", "diffère", "difiere", "tofauti"}},
    {Word::unchecked, {"no Hearthcell", "sans Hearthcell", "sin Hearthcell", "bila Hearthcell"}},
    {Word::function, {"function", "fonction", "función", "kitendakazi"}},
    {Word::what_it_does, {"what it does", "ce qu’elle fait", "qué hace", "kazi yake"}},
    {Word::gives, {"gives", "donne", "da", "kinatoa"}},
    {Word::result, {"result", "résultat", "resultado", "tokeo"}},
    {Word::agreeing, {"agree", "concordent", "coinciden", "sawa"}},
    {Word::checks, {"checks", "contrôles", "comprobaciones", "ukaguzi"}},
    {Word::verdict, {"verdict", "verdict", "veredicto", "uamuzi"}},
    {Word::all_subjects, {"All subjects", "Tous les sujets", "Todos los temas", "Mada zote"}},
    {Word::to_the_index, {"to the index", "vers l’index", "al índice", "kwenye orodha"}},
    {Word::how_many_agree,
     {"%1 of %2 checks agree", "%1 contrôles sur %2 concordent", "%1 de %2 comprobaciones coinciden",
      "%1 kati ya %2 ni sawa"}},
    {Word::how_to_write_it, {"write", "écrire", "se escribe", "andika"}},
    {Word::caution, {"caution", "attention", "atención", "tahadhari"}},
    {Word::one_part_of,
     {"one of these, or all: %1", "l’un d’eux, ou tous\u00a0: %1", "uno de estos, o todos: %1",
      "mojawapo, au yote: %1"}},
    {Word::a_list_of, {"a list of %1", "une liste\u00a0: %1", "una lista: %1", "orodha ya: %1"}},
    {Word::from_to, {"%1 to %2", "de %1 à %2", "de %1 a %2", "%1 hadi %2"}},
    {Word::with_range, {"%1: %2", "%1\u00a0: %2", "%1: %2", "%1: %2"}},
    {Word::argument, {"argument", "argument", "argumento", "hoja"}},
    {Word::unit, {"unit", "unité", "unidad", "kizio"}},
    {Word::allowed, {"allowed", "admis", "se admite", "kinachokubaliwa"}},
    {Word::left_out, {"when left out", "si omis", "si se omite", "ikiachwa"}},
    {Word::what_it_is, {"what it is", "ce que c’est", "qué es", "maana yake"}},
    {Word::no_arguments,
     {"It takes no argument.", "Elle ne prend aucun argument.", "No lleva argumentos.", "Hakihitaji hoja."}},
    {Word::required, {"required", "obligatoire", "obligatorio", "lazima"}},
    {Word::one_of, {"one of: %1", "au choix\u00a0: %1", "uno de: %1", "moja kati ya: %1"}},
    {Word::a_name_below,
     {"a name from the list below", "un nom de la liste ci-dessous", "un nombre de la lista de abajo",
      "jina kutoka orodha iliyo hapa chini"}},
    {Word::a_name_as_in, {"a name as in %1", "un nom comme dans %1", "un nombre como en %1", "jina kama katika %1"}},
    {Word::or_instead, {"%1, or %2", "%1, ou %2", "%1, o %2", "%1, au %2"}},
    {Word::any_number, {"any number", "un nombre quelconque", "un número cualquiera", "namba yoyote"}},
    {Word::a_column,
     {"a column or row: %1", "une colonne ou une ligne\u00a0: %1", "una columna o fila: %1",
      "safu wima au safu mlalo: %1"}},
    {Word::a_column_of_anything,
     {"a column or row of texts, numbers and blanks", "une colonne ou une ligne de textes, de nombres et de vides",
      "una columna o fila de textos, números y vacíos", "safu wima au safu mlalo ya maandishi, namba na seli tupu"}},
    {Word::a_block,
     {"a square block: %1", "un bloc carré\u00a0: %1", "un bloque cuadrado: %1", "kizuizi cha mraba: %1"}},
    {Word::a_text, {"a text", "un texte", "un texto", "maandishi"}},
    {Word::anything,
     {"a text, a number or a column of them", "un texte, un nombre ou une colonne de ceux-ci",
      "un texto, un número o una columna de ellos", "maandishi, namba au safu wima yake"}},
    {Word::further_arguments,
     {"any number of arguments", "autant d’arguments qu’il faut", "tantos argumentos como haga falta",
      "hoja zozote zinazohitajika"}},
    {Word::equation, {"equation", "équation", "ecuación", "mlinganyo"}},
    {Word::by_method, {"equation by %1", "équation selon %1", "ecuación según %1", "mlinganyo kwa %1"}},
    {Word::source, {"source", "source", "fuente", "chanzo"}},
    {Word::from_memory,
     {"* from memory, not yet compared with the document itself", "* de mémoire, pas encore comparé au document",
      "* de memoria, aún sin cotejar con el documento", "* kwa kumbukumbu, bado haijalinganishwa na hati yenyewe"}},
    {Word::name, {"name", "nom", "nombre", "jina"}},
    {Word::also_typed_as, {"also", "aussi", "también", "pia"}},
    {Word::typical_value, {"typical value", "valeur typique", "valor típico", "thamani ya kawaida"}},
    {Word::example, {"example", "exemple", "ejemplo", "mfano"}},
    {Word::must_give, {"must give", "doit donner", "debe dar", "inatakiwa kutoa"}},
    {Word::within, {"within", "écart", "margen", "kwa ±"}},
    {Word::where_from,
     {"where that value comes from", "d’où vient cette valeur", "de dónde viene ese valor",
      "thamani hiyo imetoka wapi"}},
    {Word::row_of_list, {"%1, row %2", "%1, ligne %2", "%1, fila %2", "%1, safu mlalo %2"}},
    {Word::an_error, {"the error %1", "l’erreur %1", "el error %1", "kosa %1"}},
    {Word::an_empty_text, {"(an empty text)", "(un texte vide)", "(un texto vacío)", "(maandishi matupu)"}},
    {Word::readings_intro,
     {"The columns that the examples refer to. An empty cell is meant to be empty.",
      "Les colonnes auxquelles les exemples se réfèrent. Une cellule vide l’est à dessein.",
      "Las columnas a las que se refieren los ejemplos. Una celda vacía lo está a propósito.",
      "Safu wima ambazo mifano inazirejelea. Seli tupu imeachwa tupu makusudi."}},
    {Word::used_by, {"used by %1", "pour %1", "para %1", "kwa %1"}},
    {Word::uses_sheet, {"Uses", "Usages", "Usos", "Matumizi"}},
    {Word::worked_examples, {"Worked examples", "Exemples d’usage", "Ejemplos de uso", "Mifano ya matumizi"}},
    {Word::uses_intro,
     {"Readings as they are taken, the functions that they go into, and which reading goes into which argument. All "
      "figures are invented: type your own over them.",
      "Des mesures telles qu’on les prend, les fonctions qui les reçoivent, et quelle mesure va dans quel argument. "
      "Tous "
      "les chiffres sont inventés\u00a0: remplacez-les par les vôtres.",
      "Medidas tal como se toman, las funciones que las reciben y qué medida va en qué argumento. Todas las cifras son "
      "inventadas: escriba las suyas encima.",
      "Vipimo kama vinavyochukuliwa, vitendakazi vinavyovipokea, na kipimo gani huenda kwenye hoja gani. Tarakimu zote "
      "ni za kubuni: andika zako juu yake."}},
    {Word::uses_caution,
     {"Carbon monoxide kills, and nobody smells it: have an alarm at head height and ventilate. No number here says "
      "that "
      "a room is safe. Boiling water and char burn. Local codes and licensed practice come first.",
      "Le monoxyde de carbone tue et personne ne le sent\u00a0: détecteur à hauteur de tête et aération. Aucun nombre "
      "d’ici ne dit qu’une pièce est sûre. L’eau bouillante et le charbon brûlent. Les règlements locaux et les "
      "métiers "
      "agréés passent avant.",
      "El monóxido de carbono mata y nadie lo huele: tenga un detector a la altura de la cabeza y ventile. Ningún "
      "número "
      "de aquí dice que un cuarto sea seguro. El agua hirviendo y el carbón queman. Las normas locales y la práctica "
      "autorizada van antes.",
      "Kaboni monoksidi huua na hakuna anayeinusa: weka kengele kwenye kimo cha kichwa na pitisha hewa. Hakuna namba "
      "hapa inayosema kuwa chumba ni salama. Maji yanayochemka na makaa huunguza. Kanuni za eneo na mafundi wenye "
      "leseni hutangulia."}},
    {Word::reading_or_result, {"reading or result", "mesure ou résultat", "medida o resultado", "kipimo au tokeo"}},
    {Word::value, {"value", "valeur", "valor", "thamani"}},
    {Word::what_goes_where, {"what goes where", "ce qui va où", "qué va dónde", "kipi huenda wapi"}},
    {Word::page_of, {"page: %1", "page\u00a0: %1", "página: %1", "ukurasa: %1"}},
};

constexpr bool is_complete() {
    std::size_t place = 0;
    for (Row const& row : rows) {
        if (std::size_t(row.word) != place)
            return false;
        if (row.in.english.empty() || row.in.french.empty() || row.in.spanish.empty() || row.in.swahili.empty())
            return false;
        ++place;
    }
    return place == std::size_t(Word::count);
}
static_assert(is_complete(), "a word is looked up by its place, and stands in every language");

} // namespace

std::string_view word(Word which, Language language) {
    return rows[std::size_t(which)].in.in(language);
}

std::string with_decimal_sign(std::string number, Language language) {
    bool const has_comma = language == Language::french || language == Language::spanish;
    if (std::size_t const point = number.find('.'); has_comma && point != std::string::npos)
        number[point] = ',';
    return number;
}

} // namespace hearthcell::generator::guide
