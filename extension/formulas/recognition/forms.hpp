#pragma once
// The forms that formulas are held against. Constants and forms: science of the published methods, from memory of the
// documents, as the catalogue says of each method.

#include "extension/formulas/recognition/expression.hpp"
#include "extension/formulas/recognition/published_form.hpp"

#include <array>

namespace hearthcell::formulas {

inline constexpr std::string_view properties = "properties", iso_19867 = "ISO 19867-1", wbt_4 = "WBT 4.2.3",
                                  wbt_3 = "WBT 3"; // a test holds that these are the catalogue's

struct Window {
    double low, high;
    [[nodiscard]] bool holds(double value) const { return value >= low && value <= high; }
};
inline constexpr Window specific_heat{4.18, 4.2};              // kJ/(kg K)
inline constexpr Window latent_heat{2250, 2260};               // kJ/kg
inline constexpr Window latent_over_specific{535.7, 540.7};    // K; 539 to 540 where the unit is the calorie
inline constexpr Window boiled_at{80, 101.5}, begun_at{1, 45}; // °C that stand in a formula as numbers
inline constexpr Window dry_value{14, 36};                     // MJ/kg, of wood and charcoal
inline constexpr double standard_rise = 75;                    // K
inline constexpr std::array thousands{1.0, 1e3, 1e-3, 1e6, 1e-6};

/// A formula taken apart: common × rest.
struct Subject {
    Product common;
    Polynomial rest;
    Quantities const& quantities;
    std::vector<double> const& numbers; // that stand in it, or in cells that it takes constants from

    [[nodiscard]] bool has_number(Window const& window) const;
    [[nodiscard]] bool has_number(double number) const { return has_number({number, number}); }
};

/// What all terms have in common, apart.
struct Common {
    std::vector<std::size_t> over, under; // with the exponents 1 and -1
    bool is_plain = true;                 // there is nothing else
};
Common common_of(Subject const& subject);

/// A number in one of the usual units: the number, where one of them brings it into the window.
std::optional<double> in_usual_unit(double number, Window const& window);

/// of = factor × (end - start) + rest, in all ways in which it can be seen so.
struct Rise {
    Polynomial factor, rest;
};
std::vector<Rise> rises_in(Polynomial const& of);

/// A sum that is divided by, where it is a rise in temperature: what brings its factor to 1.
std::optional<double> scale_of_rise(Polynomial const& sum);

/// Heat of water: c m (end - start) + L e, of one or several pots.
struct Heat {
    double specific = 0, latent = 0; // as they stand there, with whatever unit; latent 0: no evaporation
    bool mass_is_common = false;     // the mass is in what all terms have in common
    bool weighed = true;             // all masses are differences of weighings
    std::vector<std::string_view> methods;
    std::string form;
};
std::optional<Heat> heat_in(Subject const& subject);

/// Fuel: what a method makes of mass and moisture.
struct Fuel {
    enum class Rule { share, net, boiled } rule = Rule::share; // 1.12 M; H(1-M) - 2443 M; with the water's boiling
    Polynomial mass;                                           // a number where it is in what all terms have in common
    bool charred = false;                                      // char is taken off
    std::vector<std::string_view> methods;
    std::string form;
};
/// known_value: the quantity that all is divided by: only where there is one can the char's energy be told.
std::optional<Fuel> fuel_in(Polynomial const& of, std::optional<std::size_t> known_value);

std::optional<PublishedForm> as_heat(Subject const& subject);
std::optional<PublishedForm> as_fuel(Subject const& subject);
std::optional<PublishedForm> as_normal_time(Subject const& subject, Surroundings const& surroundings);
std::optional<PublishedForm> as_site(Subject const& subject); // boiling point, pressure, calorific values

/// "4.186"
std::string short_number(double number);

} // namespace hearthcell::formulas
