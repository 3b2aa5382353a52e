#pragma once
// The one source of truth: what every cell function is called, takes, gives, computes and where that comes from.
// IDL, C++ methods, wizard texts, the README's table, the argument checks and the function guide are all made
// from these entries. To add a function, see DEVELOPERS.md.

#include "functions/catalogue/argument.hpp"
#include "functions/catalogue/example.hpp"

namespace hearthcell {

/// One value of a block that a function gives.
struct Part {
    Wording name{}; ///< a term of the glossary where it is there; held by a test
    Measure measure = Measure::ratio;
};

/// A single value with its range; or several, when it has parts. Those of a list head its columns. Of others a cell is
/// given one, which the argument `part` names: the first, where that is left out; or all side by side in one row.
struct Result {
    Wording name;
    Measure measure = Measure::ratio;
    double low = 0, high = 0;
    List<Part, 8> parts{};
    bool list = false;             ///< as many rows of parts, or single values where it has none, as are found
    bool all_unless_named = false; ///< no part of it says much by itself: without `part` it gives all
};

struct Function {
    std::string_view name;          ///< after "STOVE."
    std::string_view stored;        ///< the name in files; never changes once released
    std::string_view once_called{}; ///< an earlier name, which the stored one follows: .xls files know it
    Wording summary;
    List<Argument, most_arguments> arguments{};
    Result result{};
    Kernel kernel{};
    List<Label, 5> equations{}; ///< one, or one a method in the order of the choices
    List<Source, 4> sources{};
    Wording caution{}; ///< what has to be said with every result, a sentence
    List<Example, 6> examples{};
};

/// Whether it takes any number of further arguments.
inline bool is_open_ended(Function const& function) {
    return !function.arguments.empty() && function.arguments[function.arguments.size() - 1].kind == ArgumentKind::rest;
}

/// Whether a cell is given one of several results, or all of them.
inline bool has_parts_to_choose(Function const& function) {
    return !function.result.parts.empty() && !function.result.list;
}

/// The equation that uncertainty can be carried through: one of single numbers that does not move in steps; else null.
inline Numeric const* differentiable_equation(Function const& function) {
    Columnar const* const columnar = std::get_if<Columnar>(&function.kernel);
    Numeric const* const equation = columnar != nullptr ? columnar->equation : std::get_if<Numeric>(&function.kernel);
    return equation != nullptr && equation->gradient != nullptr ? equation : nullptr;
}

inline bool is_differentiable(Function const& function) {
    return differentiable_equation(function) != nullptr;
}

} // namespace hearthcell
