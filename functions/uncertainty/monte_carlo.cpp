#include "functions/uncertainty/monte_carlo.hpp"

#include "functions/kernels/statistics/series.hpp"
#include "functions/uncertainty/correlations.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell {
namespace {

/// Any; the same for every cell, so that the same question has the same answer.
constexpr std::uint64_t seed = 101;

/// Between -1 and 1, in steps of 2^-51 and never 0.
double from_minus_one_to_one(std::uint64_t bits) {
    return (double(bits >> 12) + 0.5) * 0x1p-51 - 1;
}

/// The numbers that are uncertain, and what makes of independent deviates theirs.
class UncertainNumbers {
public:
    explicit UncertainNumbers(Inputs const& inputs) {
        for (unsigned i = 0; i < inputs.numbers.size(); ++i)
            if (inputs.uncertainties[i] > 0)
                places_.push_back(i);
        std::size_t const count = places_.size(), all = inputs.numbers.size();
        if (!inputs.correlations.empty()) {
            std::vector<double> coefficients;
            for (unsigned const i : places_)
                for (unsigned const j : places_)
                    coefficients.push_back(inputs.correlations[i * all + j]);
            factor_ = factor_of(coefficients, count);
        }
        deviates_.resize(count);
    }

    /// Draws them all into the numbers.
    void draw(NormalDraws& normal, Inputs const& inputs, std::array<double, most_arguments>& numbers) {
        for (double& deviate : deviates_)
            deviate = normal.next();
        for (std::size_t i = 0; i < places_.size(); ++i) {
            unsigned const place = places_[i];
            numbers[place] = inputs.numbers[place] + inputs.uncertainties[place] * deviate(i);
        }
    }

    bool are_in(Bounds const& bounds, std::array<double, most_arguments> const& numbers) const {
        return std::ranges::all_of(places_, [&](unsigned place) {
            return numbers[place] >= bounds.low[place] && numbers[place] <= bounds.high[place];
        });
    }

private:
    double deviate(std::size_t i) const {
        if (factor_.empty())
            return deviates_[i];
        double sum = 0;
        for (std::size_t j = 0; j <= i; ++j)
            sum += factor_[i * places_.size() + j] * deviates_[j];
        return sum;
    }

    std::vector<unsigned> places_;
    std::vector<double> factor_; ///< empty where nothing is correlated
    std::vector<double> deviates_;
};

} // namespace

double NormalDraws::next() {
    if (has_spare_) {
        has_spare_ = false;
        return spare_;
    }
    double x, y, square;
    do { // a point within the circle
        x = from_minus_one_to_one(generator_());
        y = from_minus_one_to_one(generator_());
        square = x * x + y * y;
    } while (square >= 1);
    double const length = std::sqrt(-2 * std::log(square) / square);
    spare_ = y * length;
    has_spare_ = true;
    return x * length;
}

DrawnResults summarise(std::span<double const> results, double coverage) {
    Block upwards{1, results.size(), {results.begin(), results.end()}, {}};
    kernels::Series const series = kernels::describe(upwards);
    std::vector<double>& sorted = upwards.numbers;
    std::ranges::sort(sorted);
    // Of all intervals from one result to the one that lies so many further, the shortest.
    std::size_t const steps = std::min(std::size_t(coverage * double(sorted.size()) + 0.5), sorted.size() - 1);
    std::size_t lowest = 0;
    for (std::size_t i = 1; i + steps < sorted.size(); ++i)
        if (sorted[i + steps] - sorted[i] < sorted[lowest + steps] - sorted[lowest])
            lowest = i;
    return {series.mean, series.deviation(), sorted[lowest], sorted[lowest + steps]};
}

StandardErrors standard_errors(std::span<double const> results, double coverage) {
    constexpr std::size_t parts = 10;
    std::size_t const each = results.size() / parts;
    std::array<Block, 4> figures;
    for (Block& figure : figures)
        figure = {1, parts, {}, {}};
    for (std::size_t part = 0; part < parts; ++part) {
        DrawnResults const drawn = summarise(results.subspan(part * each, each), coverage);
        figures[0].numbers.push_back(drawn.mean);
        figures[1].numbers.push_back(drawn.uncertainty);
        figures[2].numbers.push_back(drawn.low);
        figures[3].numbers.push_back(drawn.high);
    }
    auto const error = [](Block const& figure) { return std::sqrt(kernels::describe(figure).variance_of_mean()); };
    return {error(figures[0]), error(figures[1]), error(figures[2]), error(figures[3])};
}

Draws draw(Numeric const& equation, Inputs const& inputs, Bounds const& bounds, std::size_t count) {
    NormalDraws normal(seed);
    UncertainNumbers uncertain(inputs);
    std::array<double, most_arguments> numbers{};
    std::ranges::copy(inputs.numbers, numbers.begin());
    Draws drawn;
    drawn.results.reserve(count);
    for (std::size_t i = 0; i < count; ++i) {
        uncertain.draw(normal, inputs, numbers);
        double const result =
            uncertain.are_in(bounds, numbers) ? equation.value(numbers.data(), inputs.choices.data()) : absent;
        bool const in_range = result >= bounds.lowest_result && result <= bounds.highest_result; // false for NaN
        if (in_range)
            drawn.results.push_back(result);
        else
            ++drawn.without;
    }
    return drawn;
}

} // namespace hearthcell
