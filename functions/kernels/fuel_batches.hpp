#pragma once
// Energy of weighed batches of several fuels.

#include "functions/contract/kernel.hpp"
#include "functions/kernels/fuel.hpp"

namespace hearthcell::kernels {

/// Columns: masses, moistures, net dry values, masses left (may be omitted). Numbers: boiling point, air. A row that
/// is wholly empty is skipped; a single moisture or value serves all rows; an empty 'left' means nothing was left.
/// Rows are checked one by one, so that the failure names its row.
inline Outcome fuel_energy(Given const& given) {
    Block const& masses = *given.columns[0];
    Block const* const left = given.columns[3];
    Method const method = method_of(given.choices[0]);
    std::size_t const rows = masses.numbers.size();
    for (Block const* column : {given.columns[1], given.columns[2]})
        if (column->numbers.size() != 1 && column->numbers.size() != rows)
            return Failure{Reason::columns_differ};
    if (left != nullptr && left->numbers.size() != rows)
        return Failure{Reason::columns_differ};

    auto const serves_row = [](Block const& column, std::size_t row) {
        return column.numbers.size() == 1 ? column.numbers[0] : column.numbers[row];
    };
    double sum = 0;
    bool any = false;
    for (std::size_t row = 0; row < rows; ++row) {
        double const mass = masses.numbers[row];
        double const moisture = serves_row(*given.columns[1], row);
        double const value = serves_row(*given.columns[2], row);
        double const remaining = left == nullptr ? absent : left->numbers[row];
        bool const shared_moisture = rows > 1 && given.columns[1]->numbers.size() == 1;
        bool const shared_value = rows > 1 && given.columns[2]->numbers.size() == 1;
        bool const empty_row = is_absent(mass) && (shared_moisture || is_absent(moisture)) &&
                               (shared_value || is_absent(value)) && is_absent(remaining);
        if (empty_row)
            continue;
        if (is_absent(mass) || is_absent(moisture) || is_absent(value))
            return Failure{Reason::half_empty_row, no_argument, unsigned(row + 1)};
        double const burned = mass - (is_absent(remaining) ? 0 : remaining);
        if (burned < 0)
            return Failure{Reason::more_left_than_laid, no_argument, unsigned(row + 1)};
        double const energy = wood_energy(burned, moisture, value, given.numbers[0], given.numbers[1], method);
        if (failed(energy))
            return failure_of(energy);
        sum += energy;
        any = true;
    }
    return any ? Outcome(sum) : Outcome(Failure{Reason::no_rows});
}

} // namespace hearthcell::kernels
