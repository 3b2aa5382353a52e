#include "functions/explain/method_in_force.hpp"

#include "functions/call/scalar.hpp"

namespace hearthcell {

MethodInForce method_in_force(Function const& function, std::span<Value const> values) {
    for (std::size_t i = 0; i < function.arguments.size(); ++i) {
        Argument const& argument = function.arguments[i];
        if (argument.kind != ArgumentKind::choice)
            continue;
        Scalar const scalar = read_scalar(argument, value_at(values, i));
        if (scalar.reason == Reason::none)
            return {std::size_t(scalar.number), argument.choices[std::size_t(scalar.number)], argument.name};
    }
    return {};
}

} // namespace hearthcell
