#include "manifest/generator/output.hpp"

namespace hearthcell::generator {
namespace {

/// What must be given is a block, be it of one cell: so a text is seen as a text and a range as a range. Where a number
/// or a text is declared, Calc makes the one of the other, by the office's language, and of a range the row it is in.
std::string_view idl_type(Argument const& argument) {
    if (argument.kind == ArgumentKind::rest)
        return "sequence<any>";
    return argument.optional ? "any" : "sequence<sequence<any> >";
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
