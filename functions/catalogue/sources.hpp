#pragma once
// The published documents, each written once.

#include "functions/catalogue/argument.hpp"

namespace hearthcell::sources {

inline constexpr Source iso_2533{"ISO 2533:1975, standard atmosphere"};
inline constexpr Source altimeter{"WMO-No. 8, reduction by the ICAO standard column", true};
inline constexpr Source iapws_saturation{"IAPWS R7-97(2012), region 4"};
inline constexpr Source iapws_liquid{"IAPWS SR6-08(2011)"};
inline constexpr Source iapws_steam{"IAPWS SR1-86(1992)"};
inline constexpr Source iso_18134{"ISO 18134-1, oven-dry method", true};
inline constexpr Source iso_18125{"ISO 18125:2017, net calorific value at constant pressure", true};
inline constexpr Source iso_17225{"ISO 17225-1:2021, annex B, typical values", true};
inline constexpr Source ipcc_2006{"IPCC 2006 guidelines, volume 2, table 1.2", true};
inline constexpr Source handbook_heats{"CRC Handbook of Chemistry and Physics, specific heats near 25 °C", true};
inline constexpr Source iso_19867_1{"ISO 19867-1:2018", true};
inline constexpr Source wbt_4_2_3{"Water Boiling Test 4.2.3 (2014)", true};
inline constexpr Source wbt_3{"Water Boiling Test 3.0 (2007)", true};
inline constexpr Source wax{"Common practice, no source: 40 to 44 MJ/kg", true};
inline constexpr Source definition{"Definition of the quantity"};
inline constexpr Source lumped_heating{"Lumped heating with linear heat loss, C dT/dt = P - UA (T - air)"};
inline constexpr Source student_limits{"NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2, limits for the mean",
                                       true};
inline constexpr Source welch{"NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.3, two-sample t test", true};
inline constexpr Source rosner{
    "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.3, generalised ESD (Rosner 1983)", true};
inline constexpr Source paired_t{"NIST/SEMATECH e-Handbook of Statistical Methods, 7.3.1, paired t test", true};
inline constexpr Source least_squares_blocks{
    "NIST/SEMATECH e-Handbook of Statistical Methods, 5.3.3.2, randomised blocks", true};
inline constexpr Source holm{"Holm, Scand. J. Stat. 6 (1979) 65-70, several tests at once", true};
inline constexpr Source fieller{"Fieller, J. R. Stat. Soc. B 16 (1954) 175-185, limits of a ratio", true};
inline constexpr Source power_of_t{"Cohen, Statistical Power Analysis (1988), chapter 2; here by the noncentral t",
                                   true};
inline constexpr Source iso_tr_19867_3{"ISO/TR 19867-3:2018, default voluntary performance targets", true};
inline constexpr Source jcgm_100{"JCGM 100:2008 (GUM), 5.1.2 and 5.2.2", true};
inline constexpr Source project{"This project's own record"};

} // namespace hearthcell::sources
