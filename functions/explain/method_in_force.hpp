#pragma once
// By which equation a call is computed, where its function knows several.

#include "functions/call/scalar.hpp"

namespace hearthcell {

/// The choice that decides which equation is computed: mostly whose method.
struct MethodInForce {
    std::size_t index = 0;
    std::string_view name;     ///< empty: the function knows no methods
    std::string_view argument; ///< what the choice is called
};

inline MethodInForce method_in_force(Function const& function, std::span<Value const> values) {
    for (std::size_t i = 0; i < function.arguments.size(); ++i) {
        Argument const& argument = function.arguments[i];
        bool const decides = argument.choices.size() == function.equations.size(); // not so a language
        if (argument.kind != ArgumentKind::choice || !decides)
            continue;
        Scalar const scalar = read_scalar(argument, value_at(values, i));
        if (scalar.reason == Reason::none)
            return {std::size_t(scalar.number), argument.choices[std::size_t(scalar.number)], argument.name};
    }
    return {};
}

/// Whether it is that of a published document, none of which was opened for this project.
inline bool is_published(MethodInForce const& method) {
    return method.argument == "method" && method.name != "properties";
}

} // namespace hearthcell
