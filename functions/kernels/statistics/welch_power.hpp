#pragma once
// How likely Welch's t test is to show a change, when both variants were run equally often and scatter alike.

#include "functions/number/distributions.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace hearthcell::kernels {

/// A rule of integration over 0 to 1.
struct Node {
    double place, weight;
};

/// Gauss and Legendre's rule of 20 points (M. Abramowitz, I. Stegun, Handbook of Mathematical Functions, table 25.4).
inline constexpr std::array<Node, 10> outward_from_the_middle = {{
    {0.076526521133497333755, 0.152753387130725850698},
    {0.227785851141645078080, 0.149172986472603746788},
    {0.373706088715419560673, 0.142096109318382051329},
    {0.510867001950827098004, 0.131688638449176626898},
    {0.636053680726515025453, 0.118194531961518417312},
    {0.746331906460150792614, 0.101930119817240435037},
    {0.839116971822218823395, 0.083276741576704748725},
    {0.912234428251325905868, 0.062672048334109063570},
    {0.963971927277913791268, 0.040601429800386941331},
    {0.993128599185094924786, 0.017614007139152118312},
}};

/// The chance that so many runs of each variant show a change of `effect` standard deviations, at this confidence,
/// both sides counted.
///
/// Welch's t is the pooled one where both series are equally long: noncentral with 2 (n - 1) degrees of freedom. Only
/// what it has to exceed moves, with the share w that the one variance has in the sum of both: t of (n - 1)/(w² +
/// (1 - w)²) degrees. w is independent of that sum and has a Beta distribution of (n - 1)/2 and (n - 1)/2, over which
/// the chance is averaged; with w = (1 + sin ψ)/2 its density is that of cos(ψ)^(n - 2).
inline double power_of_welch(double runs, double effect, double confidence) {
    double const noncentrality = effect * std::sqrt(runs / 2), degrees = runs - 1;
    // Beyond nine standard deviations of ψ nothing is left.
    double const widest = std::min(std::numbers::pi / 2, 9 / std::sqrt(std::max(runs - 2, 1e-9)));
    double sum = 0, weights = 0;
    for (Node const& node : outward_from_the_middle)
        for (double const side : {-0.5, 0.5}) {
            double const angle = widest * (0.5 + side * node.place);
            double const share = (1 + std::sin(angle)) / 2, rest = 1 - share;
            double const weight = node.weight * std::pow(std::cos(angle), runs - 2);
            double const exceeded = t_exceeded(1 - confidence, degrees / (share * share + rest * rest));
            sum += weight * probability_beyond(exceeded, 2 * degrees, noncentrality);
            weights += weight;
        }
    return sum / weights;
}

} // namespace hearthcell::kernels
