#pragma once
// The published documents, each written once.

#include "functions/catalogue/argument.hpp"

namespace hearthcell::sources {

inline constexpr Source iso_2533{Label{"ISO 2533:1975, standard atmosphere", "ISO 2533:1975, atmosphère type",
                                       "ISO 2533:1975, atmósfera tipo", "ISO 2533:1975, angahewa sanifu"}};
inline constexpr Source altimeter{
    Label{"WMO-No. 8, reduction by the ICAO standard column", "OMM-N° 8, réduction par la colonne normale de l’OACI",
          "OMM-N.º 8, reducción por la columna estándar de la OACI", "WMO-No. 8, ugeuzaji kwa safu sanifu ya ICAO"},
    true};
inline constexpr Source reduction_with_air{
    Label{"Hydrostatic column at the air's mean temperature, without humidity (QFF)",
          "Colonne hydrostatique à la température moyenne de l’air, sans humidité (QFF)",
          "Columna hidrostática a la temperatura media del aire, sin humedad (QFF)",
          "Safu ya hewa tuli kwa halijoto ya wastani ya hewa, bila unyevu (QFF)"}};
inline constexpr Source iapws_saturation{Label{"IAPWS R7-97(2012), region 4", "IAPWS R7-97(2012), région 4",
                                               "IAPWS R7-97(2012), región 4", "IAPWS R7-97(2012), eneo la 4"}};
inline constexpr Source iapws_liquid{"IAPWS SR6-08(2011)"};
inline constexpr Source iapws_steam{"IAPWS SR1-86(1992)"};
inline constexpr Source iso_18134{Label{"ISO 18134-1, oven-dry method", "ISO 18134-1, méthode par séchage à l’étuve",
                                        "ISO 18134-1, método de secado en horno",
                                        "ISO 18134-1, mbinu ya kukausha kwa tanuri"},
                                  true};
inline constexpr Source iso_18125{Label{"ISO 18125:2017, net calorific value at constant pressure",
                                        "ISO 18125:2017, pouvoir calorifique inférieur à pression constante",
                                        "ISO 18125:2017, poder calorífico inferior a presión constante",
                                        "ISO 18125:2017, thamani halisi ya kalori kwa shinikizo thabiti"},
                                  true};
inline constexpr Source iso_17225{
    Label{"ISO 17225-1:2021, annex B, typical values", "ISO 17225-1:2021, annexe B, valeurs typiques",
          "ISO 17225-1:2021, anexo B, valores típicos", "ISO 17225-1:2021, kiambatisho B, thamani za kawaida"},
    true};
inline constexpr Source ipcc_2006{
    Label{"IPCC 2006 guidelines, volume 2, table 1.2", "Lignes directrices 2006 du GIEC, volume 2, tableau 1.2",
          "Directrices del IPCC de 2006, volumen 2, cuadro 1.2", "Miongozo ya IPCC ya 2006, juzuu la 2, jedwali 1.2"},
    true};
// Of these the figures were read; gross values are made net by the form of ISO 18125, from the composition beside them.
inline constexpr Source pine_review{Label{"Energies 15 (2022) 1442, mean of a review of pine wood",
                                          "Energies 15 (2022) 1442, moyenne d’une revue sur le bois de pin",
                                          "Energies 15 (2022) 1442, media de una revisión sobre madera de pino",
                                          "Energies 15 (2022) 1442, wastani wa mapitio ya kuni za msonobari"}};
inline constexpr Source acacia_wood{
    Label{"J. Wood Sci., doi 10.1007/s10086-016-1599-7, Acacia tortilis, gross 19.29 made net",
          "J. Wood Sci., doi 10.1007/s10086-016-1599-7, Acacia tortilis, supérieur 19,29 rendu inférieur",
          "J. Wood Sci., doi 10.1007/s10086-016-1599-7, Acacia tortilis, superior 19,29 llevado a inferior",
          "J. Wood Sci., doi 10.1007/s10086-016-1599-7, Acacia tortilis, jumla 19.29 iliyogeuzwa kuwa halisi"}};
inline constexpr Source residues_in_fuel{Label{"Fuel 74 (1995) 1812-1822, gross values made net",
                                               "Fuel 74 (1995) 1812-1822, valeurs supérieures rendues inférieures",
                                               "Fuel 74 (1995) 1812-1822, valores superiores llevados a inferiores",
                                               "Fuel 74 (1995) 1812-1822, thamani za jumla zilizogeuzwa kuwa halisi"}};
inline constexpr Source composition_in_fuel{
    Label{"Fuel 74 (1995) 1812-1822, elemental composition", "Fuel 74 (1995) 1812-1822, composition élémentaire",
          "Fuel 74 (1995) 1812-1822, composición elemental", "Fuel 74 (1995) 1812-1822, muundo wa elementi"}};
inline constexpr Source corn_cobs{Label{
    "Energies 8 (2015) 4827-4838, gross 17.72 made net by the hydrogen of Fuel 74 (1995) 1812-1822",
    "Energies 8 (2015) 4827-4838, supérieur 17,72 rendu inférieur par l’hydrogène de Fuel 74 (1995) 1812-1822",
    "Energies 8 (2015) 4827-4838, superior 17,72 llevado a inferior con el hidrógeno de Fuel 74 (1995) 1812-1822",
    "Energies 8 (2015) 4827-4838, jumla 17.72 iliyogeuzwa kuwa halisi kwa hidrojeni ya Fuel 74 (1995) 1812-1822"}};
inline constexpr Source eucalyptus_residues{
    Label{"Mateos and Ormaetxea, Energies, 21 December 2018, residues of Eucalyptus globulus",
          "Mateos et Ormaetxea, Energies, 21 décembre 2018, rémanents d’Eucalyptus globulus",
          "Mateos y Ormaetxea, Energies, 21 de diciembre de 2018, restos de Eucalyptus globulus",
          "Mateos na Ormaetxea, Energies, 21 Desemba 2018, mabaki ya Eucalyptus globulus"}};
inline constexpr Source pellets_at_least{
    Label{"ISO 17225-2:2021, class A1: at least 16.5 MJ/kg at 10 % moisture, which is 18.6 dry",
          "ISO 17225-2:2021, classe A1\u00a0: au moins 16,5 MJ/kg à 10\u00a0% d’humidité, soit 18,6 à sec",
          "ISO 17225-2:2021, clase A1: al menos 16,5 MJ/kg con 10\u00a0% de humedad, que son 18,6 en seco",
          "ISO 17225-2:2021, daraja A1: angalau 16.5 MJ/kg kwa unyevu wa 10 %, yaani 18.6 ikiwa kavu"},
    true};
inline constexpr Source ethanol_combustion{
    Label{"NIST Chemistry WebBook, enthalpy of combustion 1366.8 kJ/mol less that of the steam; without water",
          "NIST Chemistry WebBook, enthalpie de combustion 1366,8 kJ/mol moins celle de la vapeur\u00a0; sans eau",
          "NIST Chemistry WebBook, entalpía de combustión 1366,8 kJ/mol menos la del vapor; sin agua",
          "NIST Chemistry WebBook, enthalpia ya kuungua 1366.8 kJ/mol kutoa ya mvuke; bila maji"},
    true};
inline constexpr Source ipcc_2006_carbon{
    Label{"IPCC 2006 guidelines, volume 2, tables 1.2 and 1.3: carbon by energy, times energy by mass",
          "Lignes directrices 2006 du GIEC, volume 2, tableaux 1.2 et 1.3\u00a0: carbone par énergie, fois énergie "
          "par masse",
          "Directrices del IPCC de 2006, volumen 2, cuadros 1.2 y 1.3: carbono por energía, por energía por masa",
          "Miongozo ya IPCC ya 2006, juzuu la 2, majedwali 1.2 na 1.3: kaboni kwa nishati, mara nishati kwa uzito"},
    true};
inline constexpr Source atomic_weights{
    Label{"IUPAC standard atomic weights 2021, rounded as the conventional ones are",
          "UICPA, masses atomiques standard 2021, arrondies comme les conventionnelles",
          "IUPAC, pesos atómicos estándar de 2021, redondeados como los convencionales",
          "IUPAC, uzito sanifu wa atomi wa 2021, uliokadiriwa kama wa kawaida"}};
inline constexpr Source ideal_gas{Label{
    "Ideal gas, R = 8.314462618 J/(mol K) of the SI of 2019", "Gaz parfait, R = 8,314462618 J/(mol K) du SI de 2019",
    "Gas ideal, R = 8,314462618 J/(mol K) del SI de 2019", "Gesi kamilifu, R = 8.314462618 J/(mol K) ya SI ya 2019"}};
inline constexpr Source carbon_balance{Label{"Atoms of carbon are neither made nor lost: C = CO2 and CO",
                                             "Les atomes de carbone ne se créent ni ne se perdent\u00a0: C = CO2 et CO",
                                             "Los átomos de carbono ni se crean ni se pierden: C = CO2 y CO",
                                             "Atomi za kaboni hazitengenezwi wala hazipotei: C = CO2 na CO"}};
inline constexpr Source mixed_room{
    Label{"One well-mixed room, V dC/dt = s G - q (C - background), q = air changes × V",
          "Une pièce bien mélangée, V dC/dt = s G - q (C - ambiante), q = renouvellements d’air × V",
          "Una habitación bien mezclada, V dC/dt = s G - q (C - fondo), q = renovaciones de aire × V",
          "Chumba kimoja kilichochanganyika vizuri, V dC/dt = s G - q (C - ya hewani), q = mabadilisho ya hewa × V"}};
inline constexpr Source standard_adult{
    Label{"FAO guidelines for woodfuel surveys (1983), factors of the standard adult",
          "FAO, guide des enquêtes sur le bois de feu (1983), facteurs de l’adulte équivalent",
          "FAO, guía de encuestas sobre leña (1983), factores del adulto equivalente",
          "FAO, mwongozo wa tafiti za kuni (1983), vizidishi vya mtu mzima linganifu"},
    true};
inline constexpr Source handbook_heats{
    Label{"CRC Handbook of Chemistry and Physics, specific heats near 25 °C",
          "CRC Handbook of Chemistry and Physics, chaleurs massiques vers 25 °C",
          "CRC Handbook of Chemistry and Physics, calores específicos cerca de 25 °C",
          "CRC Handbook of Chemistry and Physics, joto mahususi karibu 25 °C"},
    true};
inline constexpr Source iso_19867_1{"ISO 19867-1:2018", true};
inline constexpr Source wbt_4_2_3{"Water Boiling Test 4.2.3 (2014)", true};
inline constexpr Source wbt_3{"Water Boiling Test 3.0 (2007)", true};
inline constexpr Source wax{
    Label{"Common practice, no source: 40 to 44 MJ/kg", "Usage courant, sans source\u00a0: 40 à 44 MJ/kg",
          "Práctica común, sin fuente: 40 a 44 MJ/kg", "Desturi ya kawaida, bila chanzo: 40 hadi 44 MJ/kg"},
    true};
inline constexpr Source least_squares{
    Label{"Linear least squares, checked with the Norris set of NIST StRD",
          "Moindres carrés linéaires, vérifiés avec la série Norris du NIST StRD",
          "Mínimos cuadrados lineales, comprobados con la serie Norris de NIST StRD",
          "Miraba midogo kabisa ya mstari, ikikaguliwa kwa seti ya Norris ya NIST StRD"}};
inline constexpr Source common_practice{Label{"Common practice, no source", "Usage courant, sans source",
                                              "Práctica común, sin fuente", "Desturi ya kawaida, bila chanzo"}};
inline constexpr Source definition{
    Label{"Definition of the quantity", "Définition de la grandeur", "Definición de la magnitud", "Fasili ya kiasi"}};
inline constexpr Source lumped_heating{
    Label{"Lumped heating with linear heat loss, C dT/dt = P - UA (T - air)",
          "Chauffe d’un seul bloc à perte linéaire, C dT/dt = P - UA (T - air)",
          "Calentamiento concentrado con pérdida lineal, C dT/dt = P - UA (T - aire)",
          "Upashaji joto wa pamoja wenye upotevu wa mstari, C dT/dt = P - UA (T - hewa)"}};
inline constexpr Source student_limits{
    Label{"NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2, limits for the mean",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2, limites de la moyenne",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2, límites de la media",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2, vikomo vya wastani"},
    true};
inline constexpr Source welch{
    Label{"NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.3, two-sample t test",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.3, test t à deux échantillons",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.3, contraste t de dos muestras",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.3, jaribio t la sampuli mbili"},
    true};
inline constexpr Source rosner{
    Label{"NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.3, generalised ESD (Rosner 1983)",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.3, ESD généralisé (Rosner 1983)",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.3, ESD generalizado (Rosner 1983)",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.3, ESD ya jumla (Rosner 1983)"},
    true};
inline constexpr Source paired_t{Label{"NIST/SEMATECH e-Handbook of Statistical Methods, 7.3.1, paired t test",
                                       "NIST/SEMATECH e-Handbook of Statistical Methods, 7.3.1, test t apparié",
                                       "NIST/SEMATECH e-Handbook of Statistical Methods, 7.3.1, contraste t pareado",
                                       "NIST/SEMATECH e-Handbook of Statistical Methods, 7.3.1, jaribio t la jozi"},
                                 true};
inline constexpr Source least_squares_blocks{
    Label{"NIST/SEMATECH e-Handbook of Statistical Methods, 5.3.3.2, randomised blocks",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 5.3.3.2, blocs randomisés",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 5.3.3.2, bloques aleatorizados",
          "NIST/SEMATECH e-Handbook of Statistical Methods, 5.3.3.2, vikundi vya nasibu"},
    true};
inline constexpr Source holm{Label{"Holm, Scand. J. Stat. 6 (1979) 65-70, several tests at once",
                                   "Holm, Scand. J. Stat. 6 (1979) 65-70, plusieurs tests à la fois",
                                   "Holm, Scand. J. Stat. 6 (1979) 65-70, varios contrastes a la vez",
                                   "Holm, Scand. J. Stat. 6 (1979) 65-70, majaribio kadhaa kwa pamoja"},
                             true};
inline constexpr Source fieller{Label{"Fieller, J. R. Stat. Soc. B 16 (1954) 175-185, limits of a ratio",
                                      "Fieller, J. R. Stat. Soc. B 16 (1954) 175-185, limites d’un rapport",
                                      "Fieller, J. R. Stat. Soc. B 16 (1954) 175-185, límites de un cociente",
                                      "Fieller, J. R. Stat. Soc. B 16 (1954) 175-185, vikomo vya uwiano"},
                                true};
inline constexpr Source power_of_t{
    Label{"Cohen, Statistical Power Analysis (1988), chapter 2; here by the noncentral t",
          "Cohen, Statistical Power Analysis (1988), chapitre 2\u00a0; ici par le t non centré",
          "Cohen, Statistical Power Analysis (1988), capítulo 2; aquí por la t no central",
          "Cohen, Statistical Power Analysis (1988), sura ya 2; hapa kwa t isiyo ya kati"},
    true};
inline constexpr Source iso_tr_19867_3{Label{"ISO/TR 19867-3:2018, default voluntary performance targets",
                                             "ISO/TR 19867-3:2018, objectifs volontaires de performance par défaut",
                                             "ISO/TR 19867-3:2018, objetivos voluntarios de desempeño por omisión",
                                             "ISO/TR 19867-3:2018, malengo ya hiari ya utendaji"},
                                       true};
inline constexpr Source jcgm_100{Label{"JCGM 100:2008 (GUM), 5.1.2 and 5.2.2", "JCGM 100:2008 (GUM), 5.1.2 et 5.2.2",
                                       "JCGM 100:2008 (GUM), 5.1.2 y 5.2.2", "JCGM 100:2008 (GUM), 5.1.2 na 5.2.2"},
                                 true};
inline constexpr Source jcgm_101{Label{"JCGM 101:2008, propagation of distributions, 7.6 and 7.7",
                                       "JCGM 101:2008, propagation de distributions, 7.6 et 7.7",
                                       "JCGM 101:2008, propagación de distribuciones, 7.6 y 7.7",
                                       "JCGM 101:2008, upitishaji wa mitawanyiko, 7.6 na 7.7"},
                                 true};
inline constexpr Source jcgm_106{
    Label{"JCGM 106:2012, conformity assessment, 7.2", "JCGM 106:2012, évaluation de la conformité, 7.2",
          "JCGM 106:2012, evaluación de la conformidad, 7.2", "JCGM 106:2012, tathmini ya ulinganifu, 7.2"},
    true};
inline constexpr Source project{Label{"This project's own record", "Ce que ce projet a lui-même consigné",
                                      "Lo anotado por este mismo proyecto", "Rekodi ya mradi huu wenyewe"}};

} // namespace hearthcell::sources
