#pragma once
// Which runs of a series are outliers.

#include "functions/kernels/statistics/series.hpp"

#include <algorithm>
#include <optional>

namespace hearthcell::kernels {

/// What the farthest of n runs exceeds, in standard deviations, only once in 1/`beyond` series. Grubbs' test,
/// two-sided; with n runs left it is the λ of the generalised test, too.
inline double critical_distance(std::size_t runs, double beyond) {
    double const n = double(runs);
    double const t = t_exceeded(beyond / n, n - 2);
    return (n - 1) / std::sqrt(n) * std::sqrt(t * t / (n - 2 + t * t));
}

// With three runs the critical distance all but equals the largest that three runs can have; with four it is close.
inline constexpr std::size_t least_runs_for_outlier = 5;

/// Runs of which one after the other is taken away, always the one that is farthest from the mean of what is left: the
/// lowest or the highest. Sums about the median, in twice the digits, so that taking away costs nothing but the run's
/// own share, however many there are.
class RunsLeft {
public:
    explicit RunsLeft(Block const& column) {
        for (std::size_t i = 0; i < column.numbers.size(); ++i)
            if (!is_absent(column.numbers[i]))
                upwards_.push_back({column.numbers[i], i + 1});
        std::ranges::sort(upwards_, {}, [](Run const& run) { return std::pair(run.value, run.place); });
        double const median = upwards_[upwards_.size() / 2].value;
        for (Run& run : upwards_) {
            run.value -= median;
            sum_.add(run.value);
            squares_.add(run.value * run.value);
        }
        downwards_ = upwards_; // among equal ones the first cell first, from this side, too
        std::ranges::sort(downwards_, {}, [](Run const& run) { return std::pair(-run.value, run.place); });
        taken_.resize(column.numbers.size() + 1);
        left_ = upwards_.size();
    }

    std::size_t left() const { return left_; }

    struct Farthest {
        std::size_t place;
        double distance; ///< in standard deviations of the runs left
    };
    /// Takes the farthest away, the first of two that are equally far; nothing where all that are left are alike.
    std::optional<Farthest> take() {
        double const n = double(left_), mean = sum_.rounded() / n;
        double const variance = (squares_.rounded() - n * mean * mean) / (n - 1);
        Run const lowest = next(upwards_, lowest_), highest = next(downwards_, highest_);
        if (lowest.value == highest.value)
            return std::nullopt;
        double const below = mean - lowest.value, above = highest.value - mean;
        bool const is_lowest = below > above || (below == above && lowest.place < highest.place);
        Run const farthest = is_lowest ? lowest : highest;
        taken_[farthest.place] = true;
        sum_.add(-farthest.value);
        squares_.add(-(farthest.value * farthest.value));
        --left_;
        return Farthest{farthest.place, (is_lowest ? below : above) / std::sqrt(variance)};
    }

private:
    struct Run {
        double value; ///< from the median
        std::size_t place;
    };

    Run next(std::vector<Run> const& runs, std::size_t& from) const {
        while (taken_[runs[from].place])
            ++from;
        return runs[from];
    }

    std::vector<Run> upwards_, downwards_;
    std::vector<bool> taken_; ///< by the place of the cell
    Twice sum_, squares_;
    std::size_t left_ = 0, lowest_ = 0, highest_ = 0;
};

/// Generalised extreme studentised deviate: run by run the farthest is taken away, up to `most` of them; the last one
/// that was too far, and all that went before it, are outliers. So two that lie together cannot hide each other.
inline std::vector<double> outliers(Block const& column, std::size_t most, double beyond) {
    RunsLeft runs(column);
    std::vector<double> places;
    std::size_t found = 0;
    while (places.size() < most) {
        double const critical = critical_distance(runs.left(), beyond);
        std::optional<RunsLeft::Farthest> const farthest = runs.take();
        if (!farthest)
            break;
        places.push_back(double(farthest->place));
        if (farthest->distance > critical)
            found = places.size();
    }
    places.resize(found);
    std::ranges::sort(places);
    return places;
}

/// Columns: values. Numbers: confidence, the most outliers to look for or absent for a third of the runs. The places of
/// the outliers among the cells as they are given, blanks counted, side by side; a 0 for none.
inline Outcome outlier(Given const& given) {
    Block const& column = *given.columns[0];
    std::size_t const runs = describe(column).runs;
    if (runs < least_runs_for_outlier)
        return Failure{Reason::too_few_for_outlier, 0};
    // Three runs at least have to be left, by which the others are judged.
    std::size_t const possible = runs - 3;
    double const wanted = given.numbers[1];
    std::size_t const most = is_absent(wanted) ? runs / 3 : std::min(std::size_t(wanted), possible);
    std::vector<double> places = outliers(column, most, 1 - given.numbers[0]);
    if (places.empty())
        return 0.0;
    return one_row(std::move(places));
}

} // namespace hearthcell::kernels
