#include "manifest/generator/output.hpp"

namespace hearthcell::generator {
namespace {

std::string_view cpp_type(Argument const& argument) {
    switch (argument.kind) {
    case ArgumentKind::number:
        return argument.optional ? "Any const&" : "double";
    case ArgumentKind::column:
    case ArgumentKind::mixed:
    case ArgumentKind::matrix:
        return argument.optional ? "Any const&" : "Cells const&";
    case ArgumentKind::text:
        return "OUString const&";
    case ArgumentKind::rest:
        return "Sequence<Any> const&";
    default:
        return "Any const&";
    }
}

std::string_view adapter(Function const& function) {
    if (std::holds_alternative<Numeric>(function.kernel))
        return "number";
    return gives_number(function) ? "one_number" : "anything";
}

} // namespace

void write_methods(std::ostream& out) {
    out << "// The methods of the add-in, made from the catalogue: each hands its arguments to the adapter.\n";
    for (Group const& group : catalogue()) {
        for (std::size_t place = 0; place < group.functions.size(); ++place) {
            Function const& function = group.functions[place];
            out << (gives_number(function) ? "double" : "Any") << " SAL_CALL " << function.stored << "(";
            std::string_view comma;
            for (Argument const& argument : function.arguments) {
                out << comma << cpp_type(argument) << " " << identifier(argument.name);
                comma = ", ";
            }
            out << ") override {\n    return adapter::" << adapter(function) << "(hearthcell::" << group.accessor
                << "()[" << place << "]";
            for (Argument const& argument : function.arguments)
                out << ", " << identifier(argument.name);
            out << ");\n}\n";
        }
    }
}

} // namespace hearthcell::generator
