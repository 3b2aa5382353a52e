#include "manifest/generator/output.hpp"

namespace hearthcell::generator {
namespace {

/// A required number is a double, so that Calc itself runs the function for every element of an array formula.
std::string_view idl_type(Argument const& argument) {
    switch (argument.kind) {
    case ArgumentKind::number:
        return argument.optional ? "any" : "double";
    case ArgumentKind::column:
    case ArgumentKind::mixed:
    case ArgumentKind::matrix:
        return argument.optional ? "any" : "sequence<sequence<any> >";
    case ArgumentKind::text:
        return "string";
    case ArgumentKind::rest:
        return "sequence<any>";
    default:
        return "any";
    }
}

} // namespace

void write_idl(std::ostream& out) {
    out << "module hearthcell {\n\ninterface XStove : com::sun::star::uno::XInterface {\n";
    for (Group const& group : catalogue()) {
        for (Function const& function : group.functions) {
            out << "    " << (gives_number(function) ? "double " : "any ") << function.stored << "(";
            std::string_view comma;
            for (Argument const& argument : function.arguments) {
                out << comma << "[in] " << idl_type(argument) << " " << identifier(argument.name);
                comma = ", ";
            }
            out << ");\n";
        }
    }
    out << "};\n\nservice Stove : XStove;\n\n};\n";
}

} // namespace hearthcell::generator
