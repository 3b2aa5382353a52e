#pragma once
// The trade's terms in four languages, each once. Names of arguments, of parts of a result and the headings of the
// templates are taken from here by their English form; a native reader can mend a language by mending its column. The
// words that the terms shut out stand in tests/support/words_shut_out.hpp.

#include "functions/words/language.hpp"

namespace hearthcell {

inline constexpr Wording glossary[] = {
    // place and weather
    {"altitude", "altitude", "altitud", "mwinuko"},
    {"air", "air", "aire", "hewa"},
    {"air temperature", "température de l’air", "temperatura del aire", "halijoto ya hewa"},
    {"sea-level pressure", "pression au niveau de la mer", "presión al nivel del mar", "shinikizo usawa wa bahari"},
    {"station pressure", "pression à la station", "presión de la estación", "shinikizo la mahali"},
    {"boiling point", "point d’ébullition", "punto de ebullición", "kiwango cha kuchemka"},
    {"local boiling point", "point d’ébullition local", "punto de ebullición local", "kiwango cha kuchemka hapa"},

    // the pot and its water
    {"material", "matériau", "material", "nyenzo"},
    {"temperature", "température", "temperatura", "halijoto"},
    {"start", "début", "inicio", "mwanzo"},
    {"end", "fin", "final", "mwisho"},
    {"volume", "volume", "volumen", "ujazo"},
    {"mass", "masse", "masa", "uzito"},
    {"water mass", "masse d’eau", "masa de agua", "uzito wa maji"},
    {"water left", "eau restante", "agua restante", "maji yaliyobaki"},
    {"water start", "eau au début", "agua al inicio", "maji mwanzoni"},
    {"water end", "eau à la fin", "agua al final", "maji mwishoni"},
    {"mass evaporated", "masse évaporée", "masa evaporada", "uzito uliovukizwa"},
    {"pot empty", "marmite vide", "olla vacía", "sufuria tupu"},
    {"pot and water at start", "marmite et eau au début", "olla y agua al inicio", "sufuria na maji mwanzoni"},
    {"pot and water at end", "marmite et eau à la fin", "olla y agua al final", "sufuria na maji mwishoni"},
    {"pot and water", "marmite et eau", "olla y agua", "sufuria na maji"},
    {"pot capacity", "capacité de la marmite", "capacidad de la olla", "uwezo wa sufuria"},
    {"heat loss", "perte de chaleur", "pérdida de calor", "upotevu wa joto"},

    // the fuel
    {"fuel", "combustible", "combustible", "fueli"},
    {"wood laid out", "bois préparé", "leña preparada", "kuni zilizoandaliwa"},
    {"wood left", "bois restant", "leña sobrante", "kuni zilizobaki"},
    {"wood burned", "bois brûlé", "leña quemada", "kuni zilizochomwa"},
    {"masses", "masses", "masas", "uzito wa mafungu"},
    {"masses left", "masses restantes", "masas sobrantes", "uzito uliobaki"},
    {"mass as fired", "masse telle que brûlée", "masa tal como se quema", "uzito kama inavyochomwa"},
    {"oven-dry mass", "masse séchée à l’étuve", "masa secada al horno", "uzito uliokaushwa kwa tanuri"},
    {"dry mass", "masse sèche", "masa seca", "uzito mkavu"},
    {"container mass", "masse du récipient", "masa del recipiente", "uzito wa chombo"},
    {"moisture", "humidité", "humedad", "unyevu"},
    {"moistures", "humidités", "humedades", "unyevu wa mafungu"},
    {"moisture on dry basis", "humidité sur base sèche", "humedad en base seca", "unyevu kwa msingi mkavu"},
    {"basis", "base", "base", "msingi"},
    {"hydrogen", "hydrogène", "hidrógeno", "hidrojeni"},
    {"oxygen and nitrogen", "oxygène et azote", "oxígeno y nitrógeno", "oksijeni na nitrojeni"},
    {"gross calorific value", "pouvoir calorifique supérieur", "poder calorífico superior",
     "thamani ya jumla ya kalori"},
    {"net calorific value", "pouvoir calorifique inférieur", "poder calorífico inferior", "thamani halisi ya kalori"},
    {"net calorific values", "pouvoirs calorifiques inférieurs", "poderes caloríficos inferiores",
     "thamani halisi za kalori"},
    {"char calorific value", "pouvoir calorifique du charbon", "poder calorífico del carbón",
     "thamani ya kalori ya makaa"},
    {"net char", "charbon net", "carbón neto", "makaa halisi"},
    {"equivalent dry fuel", "combustible sec équivalent", "combustible seco equivalente", "fueli kavu inayolingana"},
    {"fan power", "puissance du ventilateur", "potencia del ventilador", "nguvu ya feni"},
    {"efficiency of charging", "rendement de la charge", "rendimiento de la carga", "ufanisi wa kuchaji"},

    // results of a test
    {"method", "méthode", "método", "mbinu"},
    {"minutes", "minutes", "minutos", "dakika"},
    {"useful heat", "chaleur utile", "calor útil", "joto faafu"},
    {"fuel energy", "énergie du combustible", "energía del combustible", "nishati ya fueli"},
    {"char energy", "énergie du charbon", "energía del carbón", "nishati ya makaa"},
    {"auxiliary energy", "énergie auxiliaire", "energía auxiliar", "nishati ya ziada"},
    {"other energy", "autre énergie", "otra energía", "nishati nyingine"},
    {"efficiency", "rendement", "rendimiento", "ufanisi"},
    {"power", "puissance", "potencia", "nguvu"},
    {"high power", "puissance haute", "potencia alta", "nguvu kubwa"},
    {"low power", "puissance basse", "potencia baja", "nguvu ndogo"},
    {"largest power", "plus grande puissance", "mayor potencia", "nguvu kubwa kabisa"},
    {"standard start", "début de référence", "inicio de referencia", "mwanzo wa rejeleo"},
    {"standard end", "fin de référence", "final de referencia", "mwisho wa rejeleo"},
    {"standard rise", "élévation de référence", "elevación de referencia", "ongezeko la rejeleo"},
    {"standard mass", "masse de référence", "masa de referencia", "uzito wa rejeleo"},
    {"standard air", "air de référence", "aire de referencia", "hewa ya rejeleo"},
    {"measure", "grandeur", "magnitud", "kipimo"},
    {"value", "valeur", "valor", "thamani"},
    {"tier", "niveau", "nivel", "daraja"},

    // gases, emissions and the room
    {"gas", "gaz", "gas", "gesi"},
    {"parts per million", "parties par million", "partes por millón", "sehemu kwa milioni"},
    {"air pressure", "pression de l’air", "presión del aire", "shinikizo la hewa"},
    {"carbon", "carbone", "carbono", "kaboni"},
    {"carbon share", "part de carbone", "fracción de carbono", "sehemu ya kaboni"},
    {"char carbon share", "part de carbone du charbon", "fracción de carbono del carbón", "sehemu ya kaboni ya makaa"},
    {"carbon dioxide", "dioxyde de carbone", "dióxido de carbono", "kaboni dioksidi"},
    {"carbon monoxide", "monoxyde de carbone", "monóxido de carbono", "kaboni monoksidi"},
    {"background carbon dioxide", "dioxyde de carbone ambiant", "dióxido de carbono de fondo",
     "kaboni dioksidi ya hewani"},
    {"background carbon monoxide", "monoxyde de carbone ambiant", "monóxido de carbono de fondo",
     "kaboni monoksidi ya hewani"},
    {"modified combustion efficiency", "rendement de combustion modifié", "rendimiento de combustión modificado",
     "ufanisi wa mwako uliorekebishwa"},
    {"concentrations", "concentrations", "concentraciones", "viwango vya ukolezi"},
    {"background", "concentration ambiante", "concentración de fondo", "ukolezi wa hewani"},
    {"flow", "débit", "caudal", "mtiririko"},
    {"duct flow", "débit du conduit", "caudal del conducto", "mtiririko wa bomba"},
    {"sample flow", "débit prélevé", "caudal de muestreo", "mtiririko wa sampuli"},
    {"filter gain", "gain du filtre", "ganancia del filtro", "ongezeko la kichujio"},
    {"blank gain", "gain du filtre témoin", "ganancia del filtro testigo", "ongezeko la kichujio cha kulinganisha"},
    {"mass emitted", "masse émise", "masa emitida", "uzito uliotolewa"},
    {"emission rate", "débit d’émission", "tasa de emisión", "kasi ya utoaji"},
    {"room volume", "volume de la pièce", "volumen de la habitación", "ujazo wa chumba"},
    {"air changes", "renouvellements d’air", "renovaciones de aire", "mabadilisho ya hewa"},
    {"share entering", "part entrante", "fracción que entra", "sehemu inayoingia"},
    {"at the end", "à la fin", "al final", "mwishoni"},
    {"in the long run", "à la longue", "a la larga", "hatimaye"},

    // households and instruments
    {"children", "enfants", "niños", "watoto"},
    {"women", "femmes", "mujeres", "wanawake"},
    {"men", "hommes", "hombres", "wanaume"},
    {"older men", "hommes âgés", "hombres mayores", "wanaume wazee"},
    {"standard adults", "adultes équivalents", "adultos equivalentes", "watu wazima linganifu"},
    {"days", "jours", "días", "siku"},
    {"reading", "mesure", "lectura", "usomaji"},
    {"indicated values", "valeurs indiquées", "valores indicados", "thamani zilizoonyeshwa"},
    {"true values", "valeurs vraies", "valores verdaderos", "thamani za kweli"},

    // a temperature log
    {"time", "temps", "tiempo", "muda"},
    {"typed as", "tapé comme", "escrito como", "ulivyoandikwa"},
    {"times", "temps des mesures", "tiempos", "nyakati"},
    {"temperatures", "températures", "temperaturas", "halijoto za vipimo"},
    {"target", "cible", "objetivo", "lengo"},
    {"tolerance", "tolérance", "tolerancia", "uvumilivu"},
    {"start minute", "minute de début", "minuto de inicio", "dakika ya kuanza"},
    {"from minute", "de la minute", "desde el minuto", "kutoka dakika"},
    {"to minute", "à la minute", "hasta el minuto", "hadi dakika"},
    {"hold", "maintien", "mantenimiento", "kudumu"},
    {"from", "de", "desde", "kutoka"},
    {"to", "à", "hasta", "hadi"},
    {"row", "ligne", "fila", "safu mlalo"},
    {"finding", "constat", "hallazgo", "jambo"},
    {"earliest", "au plus tôt", "lo más temprano", "mapema zaidi"},
    {"latest", "au plus tard", "lo más tarde", "kwa kuchelewa zaidi"},

    // runs and how they scatter
    {"run", "essai", "ensayo", "jaribio"},
    {"runs", "essais", "ensayos", "majaribio"},
    {"values", "valeurs", "valores", "thamani za majaribio"},
    {"results", "résultats", "resultados", "matokeo"},
    {"baseline values", "valeurs de référence", "valores de referencia", "thamani za msingi"},
    {"new values", "valeurs nouvelles", "valores nuevos", "thamani mpya"},
    {"before", "avant", "antes", "kabla"},
    {"after", "après", "después", "baada"},
    {"variants", "variantes des essais", "variantes", "aina za majaribio"},
    {"variant", "variante", "variante", "aina"},
    {"blocks", "blocs", "bloques", "vikundi"},
    {"baseline name", "nom de la référence", "nombre de la referencia", "jina la msingi"},
    {"confidence", "niveau de confiance", "nivel de confianza", "kiwango cha uhakika"},
    {"most", "au plus", "como máximo", "kwa wingi"},
    {"pooled variance", "variance commune", "varianza común", "variansi ya pamoja"},
    {"coefficient of variation", "coefficient de variation", "coeficiente de variación", "mgawo wa mtawanyiko"},
    {"smallest change", "plus petit changement", "menor cambio", "badiliko dogo kabisa"},
    {"half-width", "demi-largeur", "semiancho", "nusu-upana"},
    {"pilot runs", "essais préliminaires", "ensayos previos", "majaribio ya awali"},
    {"mean", "moyenne", "media", "wastani"},
    {"standard deviation", "écart-type", "desviación estándar", "mkengeuko sanifu"},
    {"lower limit", "limite inférieure", "límite inferior", "kikomo cha chini"},
    {"upper limit", "limite supérieure", "límite superior", "kikomo cha juu"},
    {"level", "niveau de certitude", "nivel de certeza", "kiwango"},
    {"difference", "différence", "diferencia", "tofauti"},
    {"saving", "économie", "ahorro", "uokoaji"},
    {"outlier", "essai aberrant", "ensayo atípico", "jaribio lisilo la kawaida"},

    // doubt, and functions about functions
    {"function name", "nom de la fonction", "nombre de la función", "jina la kitendakazi"},
    {"name", "nom", "nombre", "jina"},
    {"language", "langue", "idioma", "lugha"},
    {"arguments", "arguments", "argumentos", "hoja"},
    {"uncertainty", "incertitude", "incertidumbre", "ukosefu wa uhakika"},
    {"standard uncertainty", "incertitude-type", "incertidumbre típica", "ukosefu sanifu wa uhakika"},
    {"standard uncertainties", "incertitudes-types", "incertidumbres típicas",
     "ukosefu sanifu wa uhakika wa kila moja"},
    {"coverage factor", "facteur d’élargissement", "factor de cobertura", "kizidishi cha uhakika"},
    {"correlations", "corrélations", "correlaciones", "mahusiano"},
    {"coverage", "couverture", "cobertura", "sehemu inayofunikwa"},
    {"draws", "tirages", "sorteos", "machaguo"},
    {"sensitivity", "sensibilité", "sensibilidad", "wepesi wa kuathiri"},
    {"contribution", "contribution", "contribución", "mchango"},
    {"share", "part", "parte", "sehemu"},
    {"part", "résultat voulu", "resultado deseado", "tokeo linalotakiwa"},
    {"all", "tout", "todo", "yote"},
    {"with the build", "avec la compilation", "con la compilación", "pamoja na ujenzi"},
};

/// The entry of an English term; null where there is none.
constexpr Wording const* find_term(std::string_view english) {
    for (Wording const& entry : glossary)
        if (entry.english == english)
            return &entry;
    return nullptr;
}

/// A term of the glossary, written in English: one that is not there does not compile.
struct Term : Wording {
    constexpr Term() = default;
    consteval Term(char const* in_english) : Wording(*find_term(in_english)) {}

    friend constexpr bool operator==(Term const& term, std::string_view in_english) {
        return term.english == in_english;
    }
};

} // namespace hearthcell
