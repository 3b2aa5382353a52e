#pragma once
// The three kinds of kernel: what each is given, what it gives, and what it has to say to EXPLAIN.

#include "functions/contract/choice.hpp"
#include "functions/contract/values.hpp"
#include "functions/number/dual.hpp"
#include "functions/words/language.hpp"

#include <span>
#include <type_traits>
#include <utility>
#include <variant>

namespace hearthcell {

inline constexpr std::size_t most_arguments = 16;
inline constexpr std::size_t most_choices = 2;

/// An equation of numbers and trailing choices. Both pointers read exactly `numbers` and `choices` elements.
struct Numeric {
    std::size_t numbers = 0, choices = 0;
    double (*value)(double const* numbers, Choice const* choices) = nullptr;
    /// The same value, and the partial derivative by each number. Null where the result moves in steps.
    double (*gradient)(double const* numbers, Choice const* choices, double* partials) = nullptr;
};

/// What a kernel of columns is given, each kind in the order of the arguments. An omitted column is null.
struct Given {
    std::span<Block const* const> columns;
    std::span<double const> numbers;
    std::span<Choice const> choices;
};

using Sentences = std::vector<std::string>;

/// What there is to say to an answer.
struct Remarks {
    Sentences odd;  ///< what looks like a slip
    Sentences said; ///< what one should know besides
};

/// A log or a series: columns first checked for shape, text and range.
struct Columnar {
    Outcome (*answer)(Given const&) = nullptr;
    Remarks (*remark)(Given const&, Language) = nullptr; ///< on an answer that was no failure, for EXPLAIN
    Numeric const* equation = nullptr; ///< the same of single numbers, for derivatives; a part is its last choice
};

/// Whatever needs texts: it is given one value an argument (and those of the rest), checked and with defaults filled
/// in; what has neither value nor default is std::monostate.
struct Wordy {
    Outcome (*answer)(std::span<Value const>) = nullptr;
    Remarks (*remark)(std::span<Value const>, Language) = nullptr; ///< on an answer that was no failure, for EXPLAIN
    /// On a failure that only the kernel itself can tell; empty where the reason's own sentence will do.
    std::string (*complaint)(std::span<Value const>, Language) = nullptr;
};

using Kernel = std::variant<Numeric, Columnar, Wordy>;

namespace detail {
template <std::size_t> using NumberAt = double const&;
template <std::size_t> using ChoiceAt = Choice;

template <class Lambda, std::size_t... N, std::size_t... C>
consteval bool takes(std::index_sequence<N...>, std::index_sequence<C...>) {
    return std::is_invocable_v<Lambda, NumberAt<N>..., ChoiceAt<C>...>;
}

struct Arity {
    std::size_t numbers, choices;
};

/// Counts the parameters of a []<class Real>(Real const&…, Choice…) lambda by trying.
template <class Lambda, std::size_t Numbers = 1, std::size_t Choices = 0> consteval Arity arity() {
    if constexpr (takes<Lambda>(std::make_index_sequence<Numbers>(), std::make_index_sequence<Choices>()))
        return {Numbers, Choices};
    else if constexpr (Choices < most_choices)
        return arity<Lambda, Numbers, Choices + 1>();
    else if constexpr (Numbers < most_arguments)
        return arity<Lambda, Numbers + 1, 0>();
    else
        static_assert(Numbers < most_arguments, "not a kernel of numbers and trailing choices");
}

template <auto Lambda, std::size_t... N, std::size_t... C>
consteval Numeric numeric_of(std::index_sequence<N...>, std::index_sequence<C...>) {
    return {sizeof...(N), sizeof...(C),
            [](double const* x, [[maybe_unused]] Choice const* c) -> double { return Lambda(x[N]..., c[C]...); },
            [](double const* x, [[maybe_unused]] Choice const* c, double* partials) -> double {
                using Real = Dual<sizeof...(N)>;
                Real const result = Lambda(Real::input(x[N], N)..., c[C]...);
                ((partials[N] = result.slope[N]), ...);
                return result.value;
            }};
}

template <auto Lambda, std::size_t... N, std::size_t... C>
consteval Numeric stepwise_of(std::index_sequence<N...>, std::index_sequence<C...>) {
    return {sizeof...(N), sizeof...(C),
            [](double const* x, [[maybe_unused]] Choice const* c) -> double { return Lambda(x[N]..., c[C]...); },
            nullptr};
}
} // namespace detail

template <auto Lambda>
inline constexpr Numeric
    numeric = detail::numeric_of<Lambda>(std::make_index_sequence<detail::arity<decltype(Lambda)>().numbers>(),
                                         std::make_index_sequence<detail::arity<decltype(Lambda)>().choices>());

/// A kernel whose result moves in steps and has no derivative: a [](double, …, Choice…) lambda.
template <auto Lambda>
inline constexpr Numeric
    stepwise = detail::stepwise_of<Lambda>(std::make_index_sequence<detail::arity<decltype(Lambda)>().numbers>(),
                                           std::make_index_sequence<detail::arity<decltype(Lambda)>().choices>());

} // namespace hearthcell
