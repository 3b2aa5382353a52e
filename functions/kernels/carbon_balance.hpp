#pragma once
// The two gases that the carbon of a fuel became, from readings of both in its smoke and in the air around.

#include "functions/contract/kernel.hpp"
#include "functions/kernels/gas.hpp"
#include "functions/kernels/log/readings.hpp"

namespace hearthcell::kernels {

/// What stands in a column on average; absent where nothing does.
inline double mean_of(Block const* column) {
    double sum = 0;
    std::size_t count = 0;
    if (column != nullptr)
        for (double const reading : column->numbers)
            if (is_number(reading)) {
                sum += reading;
                ++count;
            }
    return count > 0 ? sum / double(count) : absent;
}

/// The readings of a smoke: rows in which one of the two gases is missing are left out.
struct Smoke {
    double dioxide = 0, monoxide = 0; ///< ppm, on average
    double background_dioxide = 0, background_monoxide = 0;
    std::size_t rows = 0, left_out = 0;
    Failure failure;
};

/// Columns: carbon dioxide, carbon monoxide, background of the one, of the other (may be omitted).
inline Smoke read_smoke(Given const& given) {
    Block const &dioxide = *given.columns[0], &monoxide = *given.columns[1];
    Smoke smoke;
    if (dioxide.numbers.size() != monoxide.numbers.size()) {
        smoke.failure = {Reason::columns_differ};
        return smoke;
    }
    for (std::size_t i = 0; i < dioxide.numbers.size(); ++i) {
        double const one = dioxide.numbers[i], other = monoxide.numbers[i];
        bool const has_one = is_number(one), has_other = is_number(other);
        smoke.left_out += has_one != has_other ? 1 : 0;
        if (!has_one || !has_other)
            continue;
        smoke.dioxide += one;
        smoke.monoxide += other;
        ++smoke.rows;
    }
    smoke.background_dioxide = mean_of(given.columns[2]);
    if (smoke.rows == 0 || is_absent(smoke.background_dioxide)) {
        smoke.failure = {Reason::no_rows};
        return smoke;
    }
    smoke.dioxide /= double(smoke.rows);
    smoke.monoxide /= double(smoke.rows);
    double const background_monoxide = mean_of(given.columns[3]);
    smoke.background_monoxide = is_absent(background_monoxide) ? 0 : background_monoxide;
    return smoke;
}

/// One of the three, by its place.
template <class Real>
Real gas_of_fire(Real const& carbon, Real const& dioxide, Real const& monoxide, Real const& background_dioxide,
                 Real const& background_monoxide, Choice part) {
    BurnedCarbon<Real> const burned = burned_carbon(carbon, dioxide, monoxide, background_dioxide, background_monoxide);
    return part.index == 0 ? burned.dioxide : part.index == 1 ? burned.monoxide : burned.efficiency;
}

/// Numbers: carbon.
inline Outcome answer_carbon_balance(Given const& given) {
    Smoke const smoke = read_smoke(given);
    if (smoke.failure.reason != Reason::none)
        return smoke.failure;
    auto const [dioxide, monoxide, efficiency] = burned_carbon(given.numbers[0], smoke.dioxide, smoke.monoxide,
                                                               smoke.background_dioxide, smoke.background_monoxide);
    return failed(efficiency) ? Outcome(failure_of(efficiency))
                              : Outcome(Block{1, 3, {dioxide, monoxide, efficiency}, {}});
}

} // namespace hearthcell::kernels
