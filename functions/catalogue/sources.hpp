#pragma once
// The published documents, each written once.

#include "functions/catalogue/argument.hpp"

namespace hearthcell::sources {

inline constexpr Source iso_2533{"ISO 2533:1975, standard atmosphere"};
inline constexpr Source altimeter{"WMO-No. 8, reduction by the ICAO standard column", true};
inline constexpr Source reduction_with_air{"Hydrostatic column at the air's mean temperature, without humidity (QFF)"};
inline constexpr Source iapws_saturation{"IAPWS R7-97(2012), region 4"};
inline constexpr Source iapws_liquid{"IAPWS SR6-08(2011)"};
inline constexpr Source iapws_steam{"IAPWS SR1-86(1992)"};
inline constexpr Source iso_18134{"ISO 18134-1, oven-dry method", true};
inline constexpr Source iso_18125{"ISO 18125:2017, net calorific value at constant pressure", true};
inline constexpr Source iso_17225{"ISO 17225-1:2021, annex B, typical values", true};
inline constexpr Source ipcc_2006{"IPCC 2006 guidelines, volume 2, table 1.2", true};
// Of these the figures were read; gross values are made net by the form of ISO 18125, from the composition beside them.
inline constexpr Source pine_review{"Energies 15 (2022) 1442, mean of a review of pine wood"};
inline constexpr Source acacia_wood{
    "J. Wood Sci., doi 10.1007/s10086-016-1599-7, Acacia tortilis, gross 19.29 made net"};
inline constexpr Source residues_in_fuel{"Fuel 74 (1995) 1812-1822, gross values made net"};
inline constexpr Source corn_cobs{"Energies 8 (2015) 4827-4838, gross 17.72 made net by the hydrogen of Fuel 74 (1995) "
                                  "1812-1822"};
inline constexpr Source eucalyptus_residues{
    "Mateos and Ormaetxea, Energies, 21 December 2018, residues of Eucalyptus globulus"};
inline constexpr Source pellets_at_least{
    "ISO 17225-2:2021, class A1: at least 16.5 MJ/kg at 10 % moisture, which is 18.6 dry", true};
inline constexpr Source ethanol_combustion{
    "NIST Chemistry WebBook, enthalpy of combustion 1366.8 kJ/mol less that of the steam; without water", true};
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
inline constexpr Source jcgm_101{"JCGM 101:2008, propagation of distributions, 7.6 and 7.7", true};
inline constexpr Source jcgm_106{"JCGM 106:2012, conformity assessment, 7.2", true};
inline constexpr Source project{"This project's own record"};

} // namespace hearthcell::sources
