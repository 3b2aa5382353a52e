#include "functions/about/uncertainty.hpp"

#include "functions/about/uncertain_call.hpp"

namespace hearthcell {
namespace {

/// As many as there are values, and on to the last default that counts.
std::size_t rows_of_budget(UncertainCall const& asked) {
    std::size_t rows = asked.function->arguments.size();
    while (rows > asked.given && !asked.is_assumed(rows - 1))
        --rows;
    return rows;
}

Block budget(UncertainCall const& asked, Propagated const& result) {
    constexpr std::size_t columns = 4;
    std::size_t const rows = rows_of_budget(asked);
    Block block{rows, columns, std::vector<double>(rows * columns, absent), {}};
    for (std::size_t i = 0; i < rows; ++i) {
        double* const row = &block.numbers[i * columns];
        row[0] = text_in_block;
        block.texts.push_back({i * columns, std::string(asked.function->arguments[i].name)});
        if (!asked.known[i] && !asked.is_assumed(i))
            continue;
        unsigned const number = asked.number_of[i];
        row[1] = result.slopes[number];
        row[2] = asked.coverage * result.contributions[number];
        row[3] = result.shares[number];
    }
    return block;
}

/// Reads the question and carries the uncertainty through, or tells why that cannot be done.
template <class Answer> Outcome with_propagated(std::span<Value const> given, Answer answer) {
    UncertainCall asked = read_uncertain_call(given);
    if (asked.failure.reason != Reason::none)
        return as_a_cell_sees_it(asked);
    Propagated const result = propagate(asked);
    if (asked.failure.reason != Reason::none)
        return as_a_cell_sees_it(asked);
    return answer(asked, result);
}

} // namespace

Outcome uncertainty_of(std::span<Value const> given) {
    return with_propagated(given, [](UncertainCall const& asked, Propagated const& result) -> Outcome {
        return asked.coverage * result.uncertainty;
    });
}

Outcome budget_of(std::span<Value const> given) {
    return with_propagated(
        given, [](UncertainCall const& asked, Propagated const& result) -> Outcome { return budget(asked, result); });
}

} // namespace hearthcell
