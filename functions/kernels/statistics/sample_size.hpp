#pragma once
// How many runs are needed: of each of two variants, so that DIFFERENCE shows a change; or of one, so that its mean is
// known well enough.

#include "functions/kernels/statistics/welch_power.hpp"
#include "functions/number/reason.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::kernels {

inline constexpr int most_runs = 10000; // nobody runs more: the change is too small to be looked for

/// The plans that are mostly asked for: what change, in standard deviations, so many runs of each variant show with
/// this confidence and power. From power_of_welch by bisection, and held to it by a test: looking a plan up costs a
/// cell nothing, working it out a tenth of a millisecond.
struct UsualPlan {
    double confidence, power;
    std::array<double, 23> effects; ///< of 2 to 24 runs
    /// Of n runs beyond: √(2/n) times a polynomial in 1/n, fitted at 26 numbers of runs from 22 to 10000, to 1e-12.
    std::array<double, 8> beyond;
};
inline constexpr std::array<UsualPlan, 4> usual_plans = {
    {{0.95,
      0.8,
      {10.3921659863,  3.50744567158,  2.51359566871, 2.08430268842,  1.82841505484,  1.65204480141,
       1.52024446638,  1.41656916548,  1.33207474665, 1.2613969899,   1.20108458861,  1.1487964146,
       1.10287753346,  1.06211871366,  1.02561206259, 0.992660275901, 0.962717363452, 0.935348663827,
       0.910203115366, 0.886993561747, 0.86548246881, 0.845471373174, 0.826792958968},
      {2.80158178701, 1.34527013377, 3.42286125724, 6.4953470284, 14.7709351733, 23.5361621508, 56.0459304051,
       81.3907158799}},
     {0.95,
      0.9,
      {13.551587959,  4.11703561821, 2.91572396726, 2.41281249252,  2.11555435108, 1.91123206497,
       1.75869947614, 1.63876473599, 1.54103467506, 1.4592900507,   1.3895343363,  1.32905841822,
       1.27594797498, 1.22880454894, 1.18657829955, 1.14846294647,  1.11382718511, 1.08216843556,
       1.05308077543, 1.02623216746, 1.00134794544, 0.978198615473, 0.956590695954},
      {3.24151498681, 1.55651829282, 3.88587889655, 7.6428275345, 17.9038155198, 30.9170561868, 76.293766295,
       135.476223607}},
     {0.9,
      0.8,
      {5.86102171808,  2.70557113388,  2.06911728525,  1.7591087428,   1.56298526347,  1.42309853266,
       1.31625523978,  1.23094283244,  1.16065496596,  1.10137645871,  1.05046674846,  1.00610351166,
       0.966980571951, 0.932132630795, 0.900828061078, 0.872500442467, 0.846703239522, 0.823078873991,
       0.801337062169, 0.78123929447,  0.762587492803, 0.745215574438, 0.728983078696},
      {2.4864104296, 0.840886432872, 2.04245351028, 3.52279379027, 7.26748178678, 10.3960019495, 23.1217526423,
       30.6202509026}},
     {0.9,
      0.9,
      {7.35102125957,  3.19753303996,  2.4351103787,   2.06936237739,  1.83868095307,  1.67424717493,
       1.54865892561,  1.44836725423,  1.36572638074,  1.29602046359,  1.23614853508,  1.1839704199,
       1.13795192531,  1.09695907328,  1.06013225907,  1.02680588654,  0.996455165186, 0.968659800284,
       0.943078557245, 0.919431035487, 0.897484346667, 0.877043205248, 0.857942441246},
      {2.92639137952, 0.989684880306, 2.32820300764, 4.16229701744, 8.8109877134, 13.5902447529, 30.8365752917,
       48.2818334588}}}};

/// About as many: the normal approximation with the first correction for the t test (W. C. Guenther, The American
/// Statistician 35 (1981) 243, from memory). Welch's needs the same number but for a small part of a run.
inline double runs_about(double effect, double confidence, double power) {
    double const beyond = normal_exceeded((1 - confidence) / 2);
    double const sum = (beyond + normal_exceeded(1 - power)) / effect;
    return 2 * sum * sum + beyond * beyond / 4;
}

/// A number of runs to begin the search with.
inline int runs_to_begin_with(double effect, double confidence, double power) {
    double const runs = runs_about(effect, confidence, power);
    return runs < most_runs ? std::max(2, int(std::ceil(runs))) : most_runs; // a NaN begins at the end
}

/// The least number of runs of each variant whose power is sufficient. More runs are always more powerful, so that
/// going up from a first guess, or halving what lies below it, finds it.
inline double search_for_runs(double effect, double confidence, double power) {
    auto const enough = [&](int runs) { return power_of_welch(runs, effect, confidence) >= power; };
    int sufficient = runs_to_begin_with(effect, confidence, power);
    while (!enough(sufficient)) {
        if (sufficient == most_runs)
            return failure(Reason::too_many_runs);
        ++sufficient;
    }
    int too_few = sufficient - 1;
    if (too_few > 1 && enough(too_few)) {
        sufficient = too_few;
        too_few = 1; // which tells nothing of the scatter
    }
    while (sufficient - too_few > 1) {
        int const middle = (too_few + sufficient) / 2;
        (enough(middle) ? sufficient : too_few) = middle;
    }
    return sufficient;
}

/// What change more runs than the table's show.
inline double effect_shown(UsualPlan const& plan, int runs) {
    double polynomial = 0;
    for (std::size_t i = plan.beyond.size(); i-- > 0;)
        polynomial = polynomial / runs + plan.beyond[i];
    return polynomial * std::sqrt(2.0 / runs);
}

/// The least number of runs of a usual plan; more runs show smaller changes.
inline double runs_of_plan(UsualPlan const& plan, double effect) {
    auto const* const shown = std::ranges::find_if(plan.effects, [&](double shows) { return shows <= effect; });
    if (shown != plan.effects.end())
        return double(shown - plan.effects.begin() + 2);
    constexpr int first = 25;
    int runs = std::max(first, runs_to_begin_with(effect, plan.confidence, plan.power));
    while (runs > first && effect_shown(plan, runs - 1) <= effect)
        --runs;
    for (; effect_shown(plan, runs) > effect; ++runs)
        if (runs == most_runs)
            return failure(Reason::too_many_runs);
    return runs;
}

/// The scatter of runs that so many pilot runs do not exceed with a chance of 80 %: s √((n - 1)/χ²), χ² the value that
/// is exceeded with that chance.
inline double upper_limit_of_variation(double variation, double pilot_runs) {
    double const degrees = pilot_runs - 1;
    return variation * std::sqrt(degrees / chi_square_exceeded(0.8, degrees));
}

/// Runs of each variant, planned for Welch's test. Pilot runs: how many runs the coefficient of variation comes from,
/// or absent when it is taken as known.
inline double runs_needed(double variation, double change, double confidence, double power, double pilot_runs) {
    double const planned = is_absent(pilot_runs) ? variation : upper_limit_of_variation(variation, pilot_runs);
    double const effect = change / planned;
    for (UsualPlan const& plan : usual_plans)
        if (plan.confidence == confidence && plan.power == power)
            return runs_of_plan(plan, effect);
    return search_for_runs(effect, confidence, power);
}

/// Runs of one variant, or households, after which the limits of the mean lie within this share of it on either side.
inline double runs_for_mean(double variation, double half_width, double confidence) {
    double const wanted = half_width / variation;
    auto const enough = [&](int runs) {
        // Whether t with this probability beyond it is near enough: asked without looking for t itself.
        return probability_beyond(wanted * std::sqrt(double(runs)), runs - 1) <= 1 - confidence;
    };
    // Student's t is z + (z³ + z)/(4 ν) + …: the number lies next to where this expansion puts it.
    double const z = normal_exceeded((1 - confidence) / 2), guess = z * z / (wanted * wanted) + (z * z + 1) / 2;
    int runs = std::max(2, int(std::ceil(std::min(guess, double(most_runs)))));
    while (runs > 2 && enough(runs - 1))
        --runs;
    for (; !enough(runs); ++runs)
        if (runs == most_runs)
            return failure(Reason::too_many_runs);
    return runs;
}

} // namespace hearthcell::kernels
