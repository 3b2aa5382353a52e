#include "functions/about/uncertainty.hpp"

#include "functions/about/uncertain_call.hpp"

namespace hearthcell {
namespace {

/// A failure of the function asked about keeps its kind; which of its arguments is to blame, EXPLAIN finds again.
Failure as_a_cell_sees_it(Doubt const& doubt) {
    return doubt.inside ? Failure{doubt.failure.reason} : doubt.failure;
}

Block budget(Doubt const& doubt, Propagated const& result) {
    constexpr std::size_t columns = 4;
    Block block{doubt.given, columns, std::vector<double>(doubt.given * columns, absent), {}};
    for (std::size_t i = 0; i < doubt.given; ++i) {
        double* const row = &block.numbers[i * columns];
        row[0] = text_in_block;
        block.texts.push_back({i * columns, std::string(doubt.function->arguments[i].name)});
        if (!doubt.known[i])
            continue;
        unsigned const number = doubt.number_of[i];
        row[1] = result.slopes[number];
        row[2] = doubt.coverage * result.contributions[number];
        row[3] = result.shares[number];
    }
    return block;
}

/// Reads the question and carries the doubt through, or tells why that cannot be done.
template <class Answer> Outcome with_propagated(std::span<Value const> given, Answer answer) {
    Doubt doubt = read_doubt(given);
    if (doubt.failure.reason != Reason::none)
        return as_a_cell_sees_it(doubt);
    Propagated const result = propagate(doubt);
    if (doubt.failure.reason != Reason::none)
        return as_a_cell_sees_it(doubt);
    return answer(doubt, result);
}

} // namespace

Outcome uncertainty_of(std::span<Value const> given) {
    return with_propagated(given, [](Doubt const& doubt, Propagated const& result) -> Outcome {
        return doubt.coverage * result.uncertainty;
    });
}

Outcome budget_of(std::span<Value const> given) {
    return with_propagated(
        given, [](Doubt const& doubt, Propagated const& result) -> Outcome { return budget(doubt, result); });
}

} // namespace hearthcell
