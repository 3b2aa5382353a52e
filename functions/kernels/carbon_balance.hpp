#pragma once
// The two gases that the carbon of a fuel became, from readings of both in its smoke and in the air around.

#include "functions/contract/kernel.hpp"
#include "functions/kernels/gas.hpp"

namespace hearthcell::kernels {

/// What stands in a column on average; where there is none, none.
inline double mean_of(Block const* column) {
    double sum = 0;
    std::size_t count = 0;
    if (column != nullptr)
        for (double const reading : column->numbers)
            if (reading == reading) { // neither empty nor the text of a heading
                sum += reading;
                ++count;
            }
    return count > 0 ? sum / double(count) : 0;
}

/// The readings of a smoke: rows in which one of the two gases is missing are left out.
struct Smoke {
    double dioxide = 0, monoxide = 0; ///< ppm above their background, on average
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
        bool const has_one = one == one, has_other = other == other;
        smoke.left_out += has_one != has_other ? 1 : 0;
        if (!has_one || !has_other)
            continue;
        smoke.dioxide += one;
        smoke.monoxide += other;
        ++smoke.rows;
    }
    if (smoke.rows == 0) {
        smoke.failure = {Reason::no_rows};
        return smoke;
    }
    smoke.dioxide = smoke.dioxide / double(smoke.rows) - mean_of(given.columns[2]);
    smoke.monoxide = smoke.monoxide / double(smoke.rows) - mean_of(given.columns[3]);
    if (smoke.dioxide <= 0)
        smoke.failure = {Reason::background_above_reading, 1};
    else if (smoke.monoxide < 0)
        smoke.failure = {Reason::background_above_reading, 2};
    return smoke;
}

/// Numbers: carbon.
inline Outcome answer_carbon_balance(Given const& given) {
    Smoke const smoke = read_smoke(given);
    if (smoke.failure.reason != Reason::none)
        return smoke.failure;
    auto const [dioxide, monoxide, efficiency] = burned_carbon(given.numbers[0], smoke.dioxide, smoke.monoxide);
    return Block{1, 3, {dioxide, monoxide, efficiency}, {}};
}

} // namespace hearthcell::kernels
