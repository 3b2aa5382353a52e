#include "by_hand.hpp"

namespace hearthcell::benchmarks {
namespace {

std::string replaced(std::string text, std::string const& key, std::string const& value) {
    for (std::size_t at = text.find(key); at != std::string::npos; at = text.find(key, at + value.size()))
        text.replace(at, key.size(), value);
    return text;
}

// IAPWS-IF97, equation 31, and ISO 2533 on the geopotential altitude.
constexpr char pressure_quarter[] = "SQRT(SQRT(0.101325*(1-0.0065*(6356766*A1/(6356766+A1))/288.15)^5.2558798))";
constexpr char e_of[] = "(#^2-17.073846940092*#+14.91510861353)";
constexpr char f_of[] = "(1167.0521452767*#^2+12020.82470247*#-4823.2657361591)";
constexpr char g_of[] = "(-724213.16703206*#^2-3232555.0322333*#+405113.40542057)";
constexpr char temperature_of[] =
    "(650.17534844798+@-SQRT((650.17534844798+@)^2-4*(-0.23855557567849+650.17534844798*@)))/2-273.15";

std::string root() {
    return std::string("(2*") + g_of + "/(-" + f_of + "-SQRT(" + f_of + "^2-4*" + e_of + "*" + g_of + ")))";
}

// IAPWS SR6-08(2011); # is a temperature in °C.
constexpr char density[] =
    "100/(0.46151805*10*(0.0193763157+6744.58446*(10/(319.85-#))^4-222521.604*(10/(319.85-#))^5"
    "+100231247*(10/(319.85-#))^7-1635521180*(10/(319.85-#))^8+8322996580*(10/(319.85-#))^9"
    "+0.00578545292*(10/(#+41.15))-0.0153195665*(10/(#+41.15))^2+0.0311337859*(10/(#+41.15))^3"
    "-0.0423546241*(10/(#+41.15))^4+0.0338713507*(10/(#+41.15))^5-0.0119946761*(10/(#+41.15))^6))/1000";
constexpr char enthalpy[] =
    "4.6151805*(-245.2093414-166147.0539*(10/(319.85-#))^4+2708781.64*(10/(319.85-#))^5"
    "-155719154.4*(10/(319.85-#))^7-0.8237426256*(10/(#+41.15))^2+1.908956353*(10/(#+41.15))^3"
    "-2.017597384*(10/(#+41.15))^4+0.8546361348*(10/(#+41.15))^5-(#+273.15)/10*(-8.983025854"
    "-4*166147.0539*(10/(319.85-#))^5+5*2708781.64*(10/(319.85-#))^6-7*155719154.4*(10/(319.85-#))^8"
    "+2*0.8237426256*(10/(#+41.15))^3-3*1.908956353*(10/(#+41.15))^4+4*2.017597384*(10/(#+41.15))^5"
    "-5*0.8546361348*(10/(#+41.15))^6))";

std::string enthalpy_of(char const* cell) {
    return "(" + replaced(enthalpy, "#", cell) + ")";
}

} // namespace

std::vector<ByHand> written_by_hand() {
    return {
        {"BOILINGPOINT, one cell",
         "STOVE.BOILINGPOINT(A1)",
         {"=" + replaced(replaced(temperature_of, "@", root()), "#", pressure_quarter)},
         {1240}},
        {"BOILINGPOINT, three columns",
         "STOVE.BOILINGPOINT(A1)",
         {"=" + std::string(pressure_quarter), "=" + replaced(root(), "#", "R1"),
          "=" + replaced(temperature_of, "@", "S1")},
         {1240}},
        {"WATERDENSITY, one cell", "STOVE.WATERDENSITY(A1)", {"=" + replaced(density, "#", "A1")}, {40}},
        {"WATERHEAT, one cell",
         "STOVE.WATERHEAT(A1;B1;C1)",
         {"=A1/1000*(" + enthalpy_of("C1") + "-" + enthalpy_of("B1") + ")"},
         {5000, 20, 95}},
        {"USEFULHEAT by WBT 4.2.3, one cell",
         R"(STOVE.USEFULHEAT(A1;B1;C1;"WBT 4.2.3";D1))",
         {"=A1/1000*4.186*(C1-B1)+2.26*D1"},
         {5000, 20, 95, 150}},
        {"DRYMASS, one cell", "STOVE.DRYMASS(A1;B1)", {"=A1*(1-B1)"}, {600, 0.12}},
    };
}

} // namespace hearthcell::benchmarks
