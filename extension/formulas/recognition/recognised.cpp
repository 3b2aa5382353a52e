#include "extension/formulas/recognition/recognised.hpp"

#include "extension/formulas/letters.hpp"
#include "extension/formulas/recognition/forms.hpp"

#include <algorithm>

namespace hearthcell::formulas {
namespace {

constexpr int most_steps = 3; // columns of their own for the rise, the heat and both heats together, say

/// Which numbers that stand in cells are taken for constants.
enum class Constants { none, fixed, all };

constexpr std::array anywhere{4.18,   4.184,  4.186,  4.1868, 4.187,  4.19, 4.2,
                              2254.0, 2256.0, 2257.0, 2258.0, 2260.0, 1.12};
constexpr std::array where_fixed{1.5,  75.0, 60.0,   100.0, 1000.0, 3.6,  300.0,
                                 0.01, 29.5, 2443.0, 2.443, 2442.0, 2.26, 2.257};

bool is_constant(Quantity const& quantity, Constants which) {
    if (which == Constants::none || (which == Constants::fixed && !quantity.fixed))
        return false;
    double const number = *quantity.typed;
    auto const is_it = [&](double one) { return is_near(number, one) || is_near(number, one * 1000); };
    return std::ranges::any_of(anywhere, is_it) ||
           (quantity.fixed && std::ranges::any_of(where_fixed, [&](double one) { return is_near(number, one); }));
}

/// Where one of the constants is a number that stands in a cell like any other, two of them must agree, or one that a
/// mass or time would hardly be.
bool is_sure(PublishedForm const& form, Constants which) {
    return which != Constants::all || form.form.find('+') != std::string::npos ||
           form.function == "EQUIVALENTDRYFUEL" || form.function == "WOODENERGY" ||
           (form.form.starts_with("4.18") && is_digit(form.form[4]));
}

std::optional<PublishedForm> held_against_forms(Expression const& expression, Surroundings const& surroundings) {
    auto [common, rest] = split(expression.polynomial);
    Subject const subject{common, rest, expression.quantities, expression.numbers};
    std::optional<PublishedForm> part;
    for (auto const& form :
         {as_heat(subject), as_fuel(subject), as_normal_time(subject, surroundings), as_site(subject)})
        if (form && !form->is_part)
            return form;
        else if (form && !part)
            part = form;
    return part;
}

bool is_unit(double factor) {
    return in_usual_unit(factor, {1, 1}) ||
           std::ranges::any_of(std::array{100.0, 0.01, 60.0, 3.6, 3600.0},
                               [&](double unit) { return is_near(factor, unit) || is_near(factor, 1 / unit); });
}

/// What a formula is without those of the cells that it reads: a copy of one, perhaps in another unit; a product; a
/// sum.
enum class Itself { copy, product, sum };
Itself seen_by_itself(std::string_view formula, Place const& cell, Surroundings const& surroundings) {
    try {
        Polynomial const polynomial =
            expression_of(formula, cell, surroundings, 0, [](Quantity const&) { return false; }).polynomial;
        if (polynomial.terms().size() > 1)
            return Itself::sum;
        if (polynomial.constant())
            return Itself::copy;
        auto const& [product, factor] = *polynomial.terms().begin();
        return product.size() == 1 && product[0].second == 1 && is_unit(factor) ? Itself::copy : Itself::product;
    } catch (NoPolynomial const&) {
        return Itself::copy;
    }
}

std::optional<PublishedForm> after_steps(std::string_view formula, Place const& cell, Surroundings const& surroundings,
                                         int steps) {
    std::optional<PublishedForm> part;
    for (Constants const which : {Constants::none, Constants::fixed, Constants::all}) {
        Expression const expression = expression_of(
            formula, cell, surroundings, steps, [&](Quantity const& quantity) { return is_constant(quantity, which); });
        if (expression.polynomial.constant() || (which != Constants::none && !expression.has_constants))
            continue;
        auto const form = held_against_forms(expression, surroundings);
        if (!form || !is_sure(*form, which))
            continue;
        if (!form->is_part)
            return form;
        part = part ? part : form;
    }
    return part;
}

} // namespace

std::optional<PublishedForm> recognised(std::string_view formula, Place const& cell, Surroundings const& surroundings) {
    std::optional<PublishedForm> best;
    Itself const itself = seen_by_itself(formula, cell, surroundings);
    for (int steps = 0; steps <= most_steps && itself != Itself::copy; ++steps)
        try {
            auto const form = after_steps(formula, cell, surroundings, steps);
            if (form && form->is_part && itself != Itself::sum)
                continue; // the part stands in another cell
            // With more of the weighings before it, an efficiency may turn out to be one of raw readings.
            bool const is_better =
                form && (!best || (!form->is_part && (best->is_part || form->function == "BENCHEFFICIENCY")));
            if (!is_better)
                continue;
            best = form;
            if (!best->is_part && best->function != "EFFICIENCY")
                return best;
        } catch (NoPolynomial const&) { // with more of its cells in it, it is no simpler
            break;
        }
    return best;
}

} // namespace hearthcell::formulas
