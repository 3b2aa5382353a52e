#include "extension/menu/texts.hpp"

#include "functions/words/by_place.hpp"

namespace hearthcell::menu {
namespace {

struct Row {
    Text text;
    std::array<std::string_view, languages.size()> in; // in the order of Language
};

constexpr std::array<Row, text_count> rows{{
    {Text::menu_title, {"Hearth~cell", "Hearth~cell", "Hearth~cell", "Hearth~cell"}},
    {Text::new_bench_record,
     {"New ~bench record", "Nouvelle ~fiche d’essais", "Nuevo ~registro de ensayo", "~Rekodi mpya ya jaribio"}},
    {Text::new_comparison, {"New ~comparison", "Nouvelle ~comparaison", "Nueva ~comparación", "~Ulinganisho mpya"}},
    {Text::new_log_import,
     {"New ~logger import", "Nouvelle ~lecture d’enregistreur", "Nueva ~importación de registrador",
      "Uingizaji mpya wa re~kodi za halijoto"}},
    {Text::new_campaign,
     {"New campaign ~overview", "Nouvelle ~synthèse de campagne", "Nuevo resumen de ca~mpaña",
      "Muhta~sari mpya wa kampeni"}},
    {Text::function_guide,
     {"~Function guide", "~Guide des fonctions", "~Guía de funciones", "~Mwongozo wa vitendakazi"}},
    {Text::check_workbook,
     {"Check this ~workbook", "Vérifier ce class~eur", "Comprobar es~ta hoja de cálculo", "Kagua ~lahajedwali hili"}},
    {Text::check_selection,
     {"Check the selecte~d cells", "Vérifier les cellules sélecti~onnées", "Comprobar las celdas ~seleccionadas",
      "Kagua seli zili~zochaguliwa"}},
    {Text::leave_seen, {"Seen, leave ~it", "Vu, l~aisser tel quel", "Vist~o, dejarlo así", "Ime~onwa, iachwe"}},
    {Text::copy_for_sharing,
     {"Copy for ~sharing…", "Copie à ~partager…", "Co~pia para compartir…", "~Nakala ya kushirikisha wengine…"}},
    {Text::start_from_old,
     {"S~tart from an old sheet…", "Pa~rtir d’un ancien classeur…", "~Empezar desde una hoja antigua…",
      "~Anza na jedwali la zamani…"}},
    {Text::same_in_folder,
     {"Do the s~ame in a folder…", "Faire de ~même dans un dossier…", "~Hacer lo mismo en una carpeta…",
      "Fanya vivyo ~hivyo kwenye folda…"}},
    {Text::recalculate_folder,
     {"~Recalculate a folder…", "Recalculer un ~dossier…", "Reca~lcular una carpeta…", "Kokotoa upya ~folda…"}},
    {Text::about, {"~Edition and licence", "~Version et licence", "~Versión y licencia", "~Toleo na leseni"}},
    {Text::about_words,
     {"%1\n\nCell functions for people who test biomass cookstoves. Free software under the Mozilla Public License 2.0 "
      "(MPL-2.0). The text of the licence:\n%2",
      "%1\n\nFonctions de cellule pour celles et ceux qui testent des foyers de cuisson à biomasse. Logiciel libre "
      "sous licence publique Mozilla 2.0 (MPL-2.0). Texte de la licence\u00a0:\n%2",
      "%1\n\nFunciones de celda para quienes ensayan cocinas de biomasa. Software libre bajo la Licencia Pública de "
      "Mozilla 2.0 (MPL-2.0). Texto de la licencia:\n%2",
      "%1\n\nVitendakazi vya seli kwa wanaopima majiko ya kuni, makaa na mabaki ya mimea. Ni programu huria chini ya "
      "leseni ya Mozilla Public License 2.0 (MPL-2.0). Maandishi ya leseni:\n%2"}},
    {Text::old_sheets,
     {"Folder of old sheets", "Dossier des anciens classeurs", "Carpeta de las hojas antiguas",
      "Folda ya majedwali ya zamani"}},
    {Text::results_folder,
     {"Folder for the results", "Dossier des résultats", "Carpeta para los resultados", "Folda ya matokeo"}},
    {Text::choose_folder, {"Choose…", "Choisir…", "Elegir…", "Chagua…"}},
    {Text::choose_old_sheets,
     {"Choose the folder of old sheets", "Choisir le dossier des anciens classeurs",
      "Elegir la carpeta de las hojas antiguas", "Chagua folda ya majedwali ya zamani"}},
    {Text::choose_results_folder,
     {"Choose the folder for the results", "Choisir le dossier des résultats", "Elegir la carpeta para los resultados",
      "Chagua folda ya matokeo"}},
    {Text::what_to_write,
     {"What is written there, besides the reports", "Ce qui y est écrit, en plus des rapports",
      "Qué se escribe ahí, además de los informes", "Kitakachoandikwa humo, pamoja na ripoti"}},
    {Text::whole_copies,
     {"Recalculated copies of all sheets", "Des copies recalculées de tous les classeurs",
      "Copias recalculadas de todas las hojas", "Nakala zilizokokotolewa upya za majedwali yote"}},
    {Text::shared_copies,
     {"Copies with values, for people without Hearthcell", "Des copies avec valeurs, pour qui n’a pas Hearthcell",
      "Copias con valores, para quien no tiene Hearthcell", "Nakala zenye thamani, kwa wasio na Hearthcell"}},
    {Text::reports_only, {"Nothing else", "Rien d’autre", "Nada más", "Hakuna kingine"}},
    {Text::what_to_collect,
     {"Results to collect into one table: names or cells such as Run.B14, with commas; may stay empty",
      "Résultats à réunir dans un tableau\u00a0: noms ou cellules comme Run.B14, séparés par des virgules\u00a0; peut "
      "rester vide",
      "Resultados que reunir en una tabla: nombres o celdas como Run.B14, con comas; puede quedar vacío",
      "Matokeo ya kukusanya kwenye jedwali moja: majina au seli kama Run.B14, kwa mikato; si lazima"}},
    {Text::originals_stay,
     {"Every sheet in the folder, at any depth, is recalculated with today’s functions, and every result that changes "
      "is "
      "listed. The originals are not touched.",
      "Chaque classeur du dossier et de ses sous-dossiers est recalculé avec les fonctions d’aujourd’hui, et chaque "
      "résultat qui change est listé. Les originaux ne sont pas modifiés.",
      "Cada hoja de la carpeta y de sus subcarpetas se recalcula con las funciones de hoy, y se anota cada resultado "
      "que "
      "cambia. Los originales no se tocan.",
      "Kila jedwali ndani ya folda na folda zake ndogo linakokotolewa upya kwa vitendakazi vya leo, na kila tokeo "
      "linalobadilika linaorodheshwa. Majedwali asilia hayaguswi."}},
    {Text::recalculate, {"Recalculate", "Recalculer", "Recalcular", "Kokotoa upya"}},
    {Text::cancel, {"Cancel", "Annuler", "Cancelar", "Ghairi"}},
    {Text::name_of_results, {"%1 recalculated", "%1 recalculé", "%1 recalculado", "%1 iliyokokotolewa upya"}},
    {Text::recalculating, {"Recalculating…", "Recalcul en cours…", "Recalculando…", "Inakokotoa upya…"}},
    {Text::looking_for_workbooks,
     {"Looking for workbooks…", "Recherche des classeurs…", "Buscando hojas de cálculo…", "Inatafuta majedwali…"}},
    {Text::workbooks_done,
     {"%1 of %2 workbooks done", "%1 classeurs sur %2 terminés", "%1 de %2 hojas terminadas",
      "Majedwali %1 kati ya %2 yamekamilika"}},
    {Text::problems_so_far,
     {"Problems so far: %1", "Problèmes jusqu’ici\u00a0: %1", "Problemas hasta ahora: %1", "Matatizo hadi sasa: %1"}},
    {Text::writing_reports,
     {"Writing the reports…", "Rédaction des rapports…", "Escribiendo los informes…", "Inaandika ripoti…"}},
    {Text::stopping, {"Stopping…", "Arrêt en cours…", "Deteniendo…", "Inasimamisha…"}},
    {Text::office_stays_usable,
     {"You can go on working in the meantime.", "Vous pouvez continuer à travailler pendant ce temps.",
      "Mientras tanto puede seguir trabajando.", "Unaweza kuendelea na kazi wakati huu."}},
    {Text::stopped,
     {"Stopped. What is finished stays in “%1”; with the same folders it goes on from there.",
      "Arrêté. Ce qui est terminé reste dans «\u00a0%1\u00a0»\u00a0; avec les mêmes dossiers, la suite reprend là.",
      "Detenido. Lo terminado queda en «%1»; con las mismas carpetas se sigue desde ahí.",
      "Imesimamishwa. Iliyokamilika inabaki kwenye “%1”; kwa folda zilezile kazi itaendelea kutoka hapo."}},
    {Text::recalculated,
     {"The results are in “%1”, without a summary that could be opened.",
      "Les résultats sont dans «\u00a0%1\u00a0», sans résumé qui puisse être ouvert.",
      "Los resultados están en «%1», sin un resumen que se pueda abrir.",
      "Matokeo yako kwenye “%1”, bila muhtasari unaoweza kufunguliwa."}},
    {Text::not_recalculated,
     {"The folder could not be recalculated.", "Le dossier n’a pas pu être recalculé.",
      "No se pudo recalcular la carpeta.", "Folda haikuweza kukokotolewa upya."}},
    {Text::program_missing,
     {"The program hearthcell-archive, which does this work, is not installed. In Hearthcell’s folder, run "
      "./extension/install; it puts the program into %1.",
      "Le programme hearthcell-archive, qui fait ce travail, n’est pas installé. Dans le dossier de Hearthcell, lancez "
      "./extension/install\u00a0: il place le programme dans %1.",
      "El programa hearthcell-archive, que hace este trabajo, no está instalado. En la carpeta de Hearthcell, ejecute "
      "./extension/install, que pone el programa en %1.",
      "Programu hearthcell-archive, inayofanya kazi hii, haijasakinishwa. Ndani ya folda ya Hearthcell, endesha "
      "./extension/install; itaweka programu hiyo kwenye %1."}},
    {Text::workbook_files,
     {"Workbooks (.ods, .fods, .xlsx, .xls)", "Classeurs (.ods, .fods, .xlsx, .xls)",
      "Hojas de cálculo (.ods, .fods, .xlsx, .xls)", "Majedwali (.ods, .fods, .xlsx, .xls)"}},
    {Text::choose_old_sheet,
     {"Choose an old sheet", "Choisir un ancien classeur", "Elegir una hoja antigua", "Chagua jedwali la zamani"}},
    {Text::started_from_old,
     {"This is a copy. It remembers its original, “%1”, which stays as it is, also when you save.\n\nType functions of "
      "Hearthcell over the old formulas or beside them, once. Then choose “%2”: it does so on every sheet that is laid "
      "out like this one.",
      "Ceci est une copie. Elle se souvient de son original, «\u00a0%1\u00a0», qui reste tel quel, même quand vous "
      "enregistrez.\n\nÉcrivez des fonctions de Hearthcell à la place des anciennes formules ou à côté, une seule "
      "fois. Choisissez ensuite «\u00a0%2\u00a0»\u00a0: la même chose sera faite sur chaque feuille disposée comme "
      "celle-ci.",
      "Esto es una copia. Recuerda su original, «%1», que queda como está, también cuando usted guarda.\n\nEscriba "
      "funciones de Hearthcell sobre las fórmulas antiguas o a su lado, una sola vez. Después elija «%2»: hace lo "
      "mismo en cada hoja dispuesta como esta.",
      "Hii ni nakala. Inakumbuka asili yake, “%1”, ambayo inabaki kama ilivyo, hata unapohifadhi.\n\nAndika "
      "vitendakazi vya Hearthcell juu ya fomula za zamani au kando yake, mara moja tu. Kisha chagua “%2”: hufanya "
      "vivyo hivyo kwenye kila lahakazi lenye mpangilio kama huu."}},
    {Text::same_words,
     {"What differs between this document, as it is on the screen, and its original goes into every sheet of the "
      "folder that is laid out like the original: into copies. First you see what that is. No original is touched.",
      "Ce qui diffère entre ce document, tel qu’il est à l’écran, et son original ira dans chaque feuille du dossier "
      "disposée comme l’original\u00a0: dans des copies. Vous verrez d’abord de quoi il s’agit. Aucun original n’est "
      "modifié.",
      "Lo que difiere entre este documento, tal como está en pantalla, y su original pasa a cada hoja de la carpeta "
      "que esté dispuesta como el original: a copias. Primero verá qué es. No se toca ningún original.",
      "Tofauti kati ya hati hii, kama ilivyo kwenye skrini, na asili yake zitaingia kwenye kila lahakazi ndani ya "
      "folda lenye mpangilio kama wa asili: katika nakala. Kwanza utaziona. Hakuna asili inayoguswa."}},
    {Text::original_file,
     {"Original of this document (as the document names it: please check)",
      "Original de ce document (d’après le document\u00a0: à vérifier)",
      "Original de este documento (según el documento: compruébelo)",
      "Asili ya hati hii (kama hati inavyosema: tafadhali hakikisha)"}},
    {Text::choose_original, {"Choose the original", "Choisir l’original", "Elegir el original", "Chagua asili"}},
    {Text::compare_now, {"Compare", "Comparer", "Comparar", "Linganisha"}},
    {Text::name_of_same, {"%1 with Hearthcell", "%1 avec Hearthcell", "%1 con Hearthcell", "%1 kwa Hearthcell"}},
    {Text::original_missing,
     {"The original “%1” is not there: perhaps it was moved or renamed. Please choose where it is now.",
      "L’original «\u00a0%1\u00a0» n’est pas là\u00a0: il a peut-être été déplacé ou renommé. Veuillez choisir où il "
      "se trouve.",
      "El original «%1» no está ahí: quizá se movió o cambió de nombre. Elija dónde está ahora.",
      "Asili “%1” haipo: huenda imehamishwa au kubadilishwa jina. Tafadhali chagua mahali ilipo sasa."}},
    {Text::folder_missing,
     {"The folder “%1” is not there.", "Le dossier «\u00a0%1\u00a0» n’existe pas.", "La carpeta «%1» no existe.",
      "Folda “%1” haipo."}},
    {Text::results_elsewhere,
     {"The results cannot go to “%1”. Please name a folder in full, beginning with /, that lies neither inside the "
      "folder of old sheets nor around it.",
      "Les résultats ne peuvent pas aller dans «\u00a0%1\u00a0». Veuillez indiquer un dossier en entier, à partir de "
      "/, qui ne soit ni à l’intérieur du dossier des anciens classeurs ni autour de lui.",
      "Los resultados no pueden ir a «%1». Indique una carpeta con su ruta completa, desde /, que no esté dentro de la "
      "carpeta de las hojas antiguas ni la contenga.",
      "Matokeo hayawezi kwenda “%1”. Tafadhali taja folda kwa njia kamili, kuanzia /, ambayo haimo ndani ya folda ya "
      "majedwali ya zamani wala haiizunguki."}},
    {Text::no_example,
     {"There is no spreadsheet here to compare. Please open one in Calc and choose the command there.",
      "Il n’y a ici aucun classeur à comparer. Veuillez en ouvrir un dans Calc et y choisir la commande.",
      "Aquí no hay ninguna hoja de cálculo que comparar. Abra una en Calc y elija allí la orden.",
      "Hakuna lahajedwali la kulinganisha hapa. Tafadhali fungua moja kwenye Calc, kisha uchague amri hii humo."}},
    {Text::comparing,
     {"Comparing with the original…", "Comparaison avec l’original…", "Comparando con el original…",
      "Inalinganisha na asili…"}},
    {Text::comparison_stopped,
     {"Stopped. Nothing was written, and the open document is unchanged.",
      "Arrêté. Rien n’a été écrit, et le document ouvert n’a pas changé.",
      "Detenido. No se ha escrito nada, y el documento abierto no ha cambiado.",
      "Imesimamishwa. Hakuna kilichoandikwa, na hati iliyofunguliwa haijabadilika."}},
    {Text::nothing_to_carry,
     {"Nothing would be carried: the document differs from its original in no cell that counts.\n\n%1",
      "Rien ne serait reporté\u00a0: le document ne diffère de son original dans aucune cellule qui compte.\n\n%1",
      "No se trasladaría nada: el documento no difiere de su original en ninguna celda que cuente.\n\n%1",
      "Hakuna kitakachohamishwa: hati haitofautiani na asili yake katika seli yoyote inayohusika.\n\n%1"}},
    {Text::plan_words,
     {"This goes into every sheet of “%1” that is laid out like the original. It is written into copies, in “%2”; "
      "sheets that are laid out otherwise are left alone and listed.",
      "Ceci ira dans chaque feuille de «\u00a0%1\u00a0» disposée comme l’original. C’est écrit dans des copies, dans "
      "«\u00a0%2\u00a0»\u00a0; les feuilles disposées autrement restent telles quelles et sont listées.",
      "Esto pasa a cada hoja de «%1» dispuesta como el original. Se escribe en copias, en «%2»; las hojas dispuestas "
      "de otro modo quedan como están y se anotan.",
      "Hii itaingia kwenye kila lahakazi la “%1” lenye mpangilio kama wa asili. Itaandikwa kwenye nakala, ndani ya "
      "“%2”; lahakazi zenye mpangilio mwingine zinaachwa na kuorodheshwa."}},
    {Text::original_changed,
     {"“%1” is not as the original was when this document was started from it. What differs in it is among these "
      "differences.",
      "«\u00a0%1\u00a0» n’est pas tel que l’original était quand ce document en est parti. Ce qui y diffère est parmi "
      "ces différences.",
      "«%1» no está como estaba el original cuando se empezó este documento desde él. Lo que difiere ahí está entre "
      "estas diferencias.",
      "“%1” haiko kama asili ilivyokuwa hati hii ilipoanzishwa kutokana nayo. Kinachotofautiana humo kimo kati ya "
      "tofauti hizi."}},
    {Text::plan_cells,
     {"What the cells get", "Ce que reçoivent les cellules", "Lo que reciben las celdas",
      "Kitakachoingia kwenye seli"}},
    {Text::instead_of, {"instead of %1", "au lieu de %1", "en lugar de %1", "badala ya %1"}},
    {Text::not_carried,
     {"stays as it is: %1", "reste tel quel\u00a0: %1", "queda como está: %1", "inabaki kama ilivyo: %1"}},
    {Text::plan_constants,
     {"Values that no sheet shows, and into how many sheets each goes",
      "Valeurs qu’aucune feuille ne montre, et dans combien de feuilles chacune va",
      "Valores que ninguna hoja muestra, y en cuántas hojas entra cada uno",
      "Thamani ambazo hakuna lahakazi linazozionyesha, na idadi ya lahakazi zinakoingia"}},
    {Text::constants_confirmed,
     {"These values hold for all of these sheets", "Ces valeurs sont justes pour toutes ces feuilles",
      "Estos valores son válidos para todas estas hojas", "Thamani hizi ni sahihi kwa lahakazi hizi zote"}},
    {Text::plan_pairs,
     {"New results to be compared with old ones: new – old",
      "Nouveaux résultats à comparer aux anciens\u00a0: nouveau – ancien",
      "Resultados nuevos que comparar con los antiguos: nuevo – antiguo",
      "Matokeo mapya ya kulinganisha na ya zamani: jipya – la zamani"}},
    {Text::not_confirmed,
     {"Values that no sheet shows would go into every sheet. They must be confirmed first.",
      "Des valeurs qu’aucune feuille ne montre iraient dans chaque feuille. Il faut d’abord les confirmer.",
      "Valores que ninguna hoja muestra pasarían a cada hoja. Primero hay que confirmarlos.",
      "Thamani ambazo hakuna lahakazi linazozionyesha zingeingia kwenye kila lahakazi. Lazima zithibitishwe kwanza."}},
    {Text::few_first, {"Five first", "Cinq d’abord", "Primero cinco", "Tano kwanza"}},
    {Text::do_all, {"All", "Tous", "Todas", "Yote"}},
    {Text::doing_few, {"Doing five first…", "Cinq d’abord…", "Primero cinco…", "Tano kwanza…"}},
    {Text::doing_all,
     {"Doing the same in the folder…", "La même chose dans le dossier…", "Lo mismo en la carpeta…",
      "Vivyo hivyo kwenye folda…"}},
    {Text::name_of_few, {"%1, five first", "%1, cinq d’abord", "%1, primero cinco", "%1, tano kwanza"}},
    {Text::tried_words,
     {"The first workbooks are done: the oldest, the newest and some between. The summary shows what came of them. "
      "Shall all follow?",
      "Les premiers classeurs sont faits\u00a0: le plus ancien, le plus récent et quelques-uns entre les deux. Le "
      "résumé montre ce qu’il en est. Faut-il faire tous les autres\u00a0?",
      "Las primeras hojas de cálculo están hechas: la más antigua, la más reciente y algunas entre ambas. El resumen "
      "muestra el resultado. ¿Hacer todas?",
      "Majedwali ya kwanza yamekamilika: la zamani zaidi, jipya zaidi na baadhi kati yao. Muhtasari unaonyesha "
      "matokeo. Je, yafuate yote?"}},
    {Text::values_read,
     {"Values that were read: lowest … median … highest (what looks odd)",
      "Valeurs lues\u00a0: minimum … médiane … maximum (ce qui paraît étrange)",
      "Valores leídos: mínimo … mediana … máximo (lo que parece raro)",
      "Thamani zilizosomwa: ya chini … ya katikati … ya juu (zinazoonekana za ajabu)"}},
    {Text::same_failed,
     {"The same could not be done in the folder.", "La même chose n’a pas pu être faite dans le dossier.",
      "No se pudo hacer lo mismo en la carpeta.", "Haikuwezekana kufanya vivyo hivyo kwenye folda."}},
    {Text::same_stopped,
     {"Stopped. What is finished stays in “%1”.", "Arrêté. Ce qui est terminé reste dans «\u00a0%1\u00a0».",
      "Detenido. Lo terminado queda en «%1».", "Imesimamishwa. Iliyokamilika inabaki kwenye “%1”."}},
    {Text::package_not_found,
     {"LibreOffice does not say where the Hearthcell package is installed. Please install it again and restart "
      "LibreOffice.",
      "LibreOffice n’indique pas où l’extension Hearthcell est installée. Veuillez la réinstaller, puis redémarrer "
      "LibreOffice.",
      "LibreOffice no indica dónde está instalada la extensión Hearthcell. Vuelva a instalarla y reinicie LibreOffice.",
      "LibreOffice haionyeshi mahali Hearthcell iliposakinishwa. Tafadhali isakinishe tena, kisha uanzishe LibreOffice "
      "upya."}},
    {Text::file_missing,
     {"The file “%1” is missing from the installed package. Please install Hearthcell again.",
      "Le fichier «\u00a0%1\u00a0» manque dans l’extension installée. Veuillez réinstaller Hearthcell.",
      "Falta el archivo «%1» en la extensión instalada. Vuelva a instalar Hearthcell.",
      "Faili “%1” halipo kwenye kifurushi kilichosakinishwa. Tafadhali sakinisha Hearthcell tena."}},
    {Text::cannot_open,
     {"LibreOffice could not open “%1”.", "LibreOffice n’a pas pu ouvrir «\u00a0%1\u00a0».",
      "LibreOffice no pudo abrir «%1».", "LibreOffice haikuweza kufungua “%1”."}},
    {Text::no_spreadsheet,
     {"There is no spreadsheet here to copy. Please open one in Calc and choose the command there.",
      "Il n’y a ici aucun classeur à copier. Veuillez en ouvrir un dans Calc et y choisir la commande.",
      "Aquí no hay ninguna hoja de cálculo que copiar. Abra una en Calc y elija allí la orden.",
      "Hakuna lahajedwali la kunakili hapa. Tafadhali fungua moja kwenye Calc, kisha uchague amri hii humo."}},
    {Text::picker_title,
     {"Save a copy for sharing", "Enregistrer une copie à partager", "Guardar una copia para compartir",
      "Hifadhi nakala ya kushirikisha wengine"}},
    {Text::ods_files,
     {"ODF spreadsheet (.ods)", "Classeur ODF (.ods)", "Hoja de cálculo ODF (.ods)", "Lahajedwali la ODF (.ods)"}},
    {Text::xlsx_files,
     {"Office Open XML spreadsheet (.xlsx)", "Classeur Office Open XML (.xlsx)",
      "Hoja de cálculo Office Open XML (.xlsx)", "Lahajedwali la Office Open XML (.xlsx)"}},
    {Text::untitled, {"Untitled", "Sans nom", "Sin título", "Bila jina"}},
    {Text::name_of_copy, {"%1 for sharing", "%1 à partager", "%1 para compartir", "%1 ya kushirikisha"}},
    {Text::name_is_open,
     {"“%1” is open in LibreOffice, so the copy cannot be saved there. Please choose another name or folder.",
      "«\u00a0%1\u00a0» est ouvert dans LibreOffice\u00a0: la copie ne peut pas prendre sa place. Veuillez choisir un "
      "autre nom ou un autre dossier.",
      "«%1» está abierto en LibreOffice, así que la copia no puede ocupar su lugar. Elija otro nombre u otra carpeta.",
      "“%1” imefunguliwa kwenye LibreOffice, kwa hiyo nakala haiwezi kuhifadhiwa hapo. Tafadhali chagua jina au folda "
      "nyingine."}},
    {Text::sheet_is_locked,
     {"The sheet “%1” is protected by a password, so that its formulas cannot be replaced in a copy. Please lift the "
      "protection and try again. No copy was written.",
      "La feuille «\u00a0%1\u00a0» est protégée par un mot de passe\u00a0: ses formules ne peuvent pas être remplacées "
      "dans une copie. Veuillez ôter la protection et réessayer. Aucune copie n’a été écrite.",
      "La hoja «%1» está protegida con contraseña, por lo que sus fórmulas no se pueden sustituir en una copia. Quite "
      "la protección e inténtelo de nuevo. No se ha escrito ninguna copia.",
      "Lahakazi “%1” imelindwa kwa nenosiri, kwa hiyo fomula zake haziwezi kubadilishwa kwenye nakala. Tafadhali ondoa "
      "ulinzi huo, kisha ujaribu tena. Hakuna nakala iliyoandikwa."}},
    {Text::copying,
     {"Making the copy for sharing…", "Préparation de la copie à partager…", "Preparando la copia para compartir…",
      "Inatengeneza nakala ya kushirikisha wengine…"}},
    {Text::reading_document,
     {"Reading what the cells show…", "Lecture de ce qu’affichent les cellules…", "Leyendo lo que muestran las celdas…",
      "Inasoma kinachoonyeshwa na seli…"}},
    {Text::replacing_formulas,
     {"Replacing formulas by their values…", "Remplacement des formules par leurs valeurs…",
      "Sustituyendo las fórmulas por sus valores…", "Inabadilisha fomula kuwa thamani zake…"}},
    {Text::saving_copy,
     {"Saving the copy…", "Enregistrement de la copie…", "Guardando la copia…", "Inahifadhi nakala…"}},
    {Text::copy_stopped,
     {"Stopped. No copy was written, and the open document is unchanged.",
      "Arrêté. Aucune copie n’a été écrite, et le document ouvert n’a pas changé.",
      "Detenido. No se ha escrito ninguna copia, y el documento abierto no ha cambiado.",
      "Imesimamishwa. Hakuna nakala iliyoandikwa, na hati iliyofunguliwa haijabadilika."}},
    {Text::copy_failed,
     {"The copy could not be saved as “%1”. Is there room, and may you write there?",
      "La copie n’a pas pu être enregistrée sous «\u00a0%1\u00a0». Y a-t-il assez de place, et avez-vous le droit d’y "
      "écrire\u00a0?",
      "No se pudo guardar la copia como «%1». ¿Hay espacio suficiente y tiene permiso para escribir ahí?",
      "Nakala haikuweza kuhifadhiwa kama “%1”. Je, kuna nafasi ya kutosha, na una ruhusa ya kuandika hapo?"}},
    {Text::copied,
     {"The copy is saved as “%2”.\n\nHearthcell formulas replaced by their values: %1. Each formula is kept as a "
      "comment on its cell. The open document is unchanged.",
      "La copie est enregistrée sous «\u00a0%2\u00a0».\n\nFormules Hearthcell remplacées par leurs valeurs\u00a0: %1. "
      "Chaque formule est conservée en commentaire de sa cellule. Le document ouvert n’a pas changé.",
      "La copia se ha guardado como «%2».\n\nFórmulas de Hearthcell sustituidas por sus valores: %1. Cada fórmula se "
      "conserva como comentario de su celda. El documento abierto no ha cambiado.",
      "Nakala imehifadhiwa kama “%2”.\n\nFomula za Hearthcell zilizobadilishwa kuwa thamani zake: %1. Kila fomula "
      "imebaki kama maoni kwenye seli yake. Hati iliyofunguliwa haijabadilika."}},
    {Text::copied_but_left,
     {"Names, conditional formats and validity rules in which a Hearthcell formula is left, because its value depends "
      "on "
      "the cell: %1. They do not work without Hearthcell.",
      "Noms, formats conditionnels et règles de validité où une formule Hearthcell reste, car sa valeur dépend de la "
      "cellule\u00a0: %1. Sans Hearthcell, ils ne fonctionnent pas.",
      "Nombres, formatos condicionales y reglas de validez en los que queda una fórmula de Hearthcell, porque su valor "
      "depende de la celda: %1. Sin Hearthcell no funcionan.",
      "Majina, miundo yenye masharti na kanuni za uhalali ambamo fomula ya Hearthcell imebaki, kwa sababu thamani yake "
      "inategemea seli: %1. Bila Hearthcell hazifanyi kazi."}},
    {Text::copied_without_links,
     {"Pictures and objects that the document only links to and that the copy does not have, because nothing is "
      "fetched "
      "for it: %1. An object is the picture of itself there.",
      "Images et objets que le document ne contient que par un lien et que la copie n’a pas, car rien n’est téléchargé "
      "pour elle\u00a0: %1. À la place d’un objet s’y trouve son image.",
      "Imágenes y objetos que el documento solo enlaza y que la copia no tiene, porque no se descarga nada para ella: "
      "%1. En lugar de un objeto está su imagen.",
      "Picha na vitu ambavyo hati inaviunganisha tu kwa kiungo, na ambavyo nakala haina kwa sababu hakuna "
      "kinachopakuliwa kwa ajili yake: %1. Mahali pa kitu pana picha yake."}},
    {Text::copied_without_password,
     {"The copy has no password: whoever has the file can read it.",
      "La copie n’a pas de mot de passe\u00a0: quiconque a le fichier peut la lire.",
      "La copia no tiene contraseña: quien tenga el archivo puede leerla.",
      "Nakala haina nenosiri: yeyote aliye na faili anaweza kuisoma."}},
    {Text::checking,
     {"Checking the workbook…", "Vérification du classeur…", "Comprobando la hoja de cálculo…",
      "Inakagua lahajedwali…"}},
    {Text::looking_at_formulas,
     {"Looking at every formula…", "Examen de chaque formule…", "Examinando cada fórmula…", "Inaangalia kila fomula…"}},
    {Text::writing_check,
     {"Writing what came of it…", "Rédaction du résultat…", "Escribiendo el resultado…", "Inaandika matokeo…"}},
    {Text::check_stopped,
     {"Stopped. The open document is unchanged.", "Arrêté. Le document ouvert n’a pas changé.",
      "Detenido. El documento abierto no ha cambiado.", "Imesimamishwa. Hati iliyofunguliwa haijabadilika."}},
    {Text::nothing_to_check,
     {"There is no spreadsheet here to check. Please open one in Calc and choose the command there.",
      "Il n’y a ici aucun classeur à vérifier. Veuillez en ouvrir un dans Calc et y choisir la commande.",
      "Aquí no hay ninguna hoja de cálculo que comprobar. Abra una en Calc y elija allí la orden.",
      "Hakuna lahajedwali la kukagua hapa. Tafadhali fungua moja kwenye Calc, kisha uchague amri hii humo."}},
    {Text::no_cells_selected,
     {"No cells are selected. Please select those whose formulas are to be checked.",
      "Aucune cellule n’est sélectionnée. Veuillez sélectionner celles dont les formules sont à vérifier.",
      "No hay celdas seleccionadas. Seleccione aquellas cuyas fórmulas quiere comprobar.",
      "Hakuna seli zilizochaguliwa. Tafadhali chagua zile ambazo fomula zake zitakaguliwa."}},
    {Text::no_check_here,
     {"This is not the result of a check. Please choose the command in the workbook that a check opened.",
      "Ce n’est pas le résultat d’une vérification. Veuillez choisir la commande dans le classeur qu’une vérification "
      "a "
      "ouvert.",
      "Esto no es el resultado de una comprobación. Elija la orden en la hoja de cálculo que abrió una comprobación.",
      "Haya si matokeo ya ukaguzi. Tafadhali chagua amri hii kwenye lahajedwali lililofunguliwa na ukaguzi."}},
    {Text::nothing_seen,
     {"No remark is marked as seen. Please type a word into the last cell of each that is to be left out.",
      "Aucune remarque n’est marquée comme vue. Veuillez écrire un mot dans la dernière cellule de chacune de celles à "
      "laisser.",
      "Ninguna observación está marcada como vista. Escriba una palabra en la última celda de cada una que quiera "
      "dejar.",
      "Hakuna maoni yaliyowekwa alama kuwa yameonwa. Tafadhali andika neno kwenye seli ya mwisho ya kila "
      "yanayoachwa."}},
    {Text::checked_document_closed,
     {"The workbook that was checked is not open any more. Please open it and try again.",
      "Le classeur vérifié n’est plus ouvert. Veuillez l’ouvrir et réessayer.",
      "La hoja de cálculo comprobada ya no está abierta. Ábrala e inténtelo de nuevo.",
      "Lahajedwali lililokaguliwa halijafunguliwa tena. Tafadhali lifungue kisha ujaribu tena."}},
    {Text::seen_kept,
     {"Remarks that are left out from now on: %1. Save “%2”, so that this is remembered.",
      "Remarques laissées de côté désormais : %1. Enregistrez « %2 » pour que ce soit retenu.",
      "Observaciones que se dejan desde ahora: %1. Guarde «%2» para que se recuerde.",
      "Maoni yanayoachwa kuanzia sasa: %1. Hifadhi “%2” ili hili likumbukwe."}},
    {Text::unexpected,
     {"The command could not be carried out.", "La commande n’a pas pu être exécutée.", "No se pudo ejecutar la orden.",
      "Amri haikuweza kutekelezwa."}},
    {Text::office_says,
     {"LibreOffice says: %1", "Message de LibreOffice\u00a0: %1", "LibreOffice dice: %1", "LibreOffice inasema: %1"}},
}};

static_assert(stand_in_order(rows), "a text is looked up by its place");

} // namespace

std::string_view text(Text which, Language language) {
    return rows[std::size_t(which)].in[std::size_t(language)];
}

} // namespace hearthcell::menu
