#include "manifest/generator/output.hpp"

namespace hearthcell::generator {
namespace {

/// What must be given is a block, be it of one cell: so a text is seen as a text and a range as a range. Where a number
/// or a text is declared, Calc makes the one of the other, by the office's language, and of a range the row it is in.
std::string_view idl_type(Declared const& declared) {
    if (declared.argument->kind == ArgumentKind::rest)
        return declared.number > 0 ? "any" : "sequence<any>";
    return declared.argument->optional ? "any" : "sequence<sequence<any> >";
}

} // namespace

std::vector<Declared> declared_arguments(Function const& function) {
    std::vector<Declared> declared;
    for (Argument const& argument : function.arguments) {
        std::string const name = identifier(argument.name);
        for (std::size_t number = 1; argument.kind == ArgumentKind::rest && number <= most_arguments; ++number)
            declared.push_back({&argument, name + std::to_string(number), number});
        declared.push_back({&argument, name, 0});
    }
    return declared;
}

void write_idl(std::ostream& out) {
    out << "module hearthcell {\n\ninterface XStove : com::sun::star::uno::XInterface {\n";
    for (Group const& group : catalogue()) {
        for (Function const& function : group.functions) {
            out << "    " << (gives_number(function) ? "double " : "any ") << function.stored << "(";
            std::string_view comma;
            for (Declared const& declared : declared_arguments(function)) {
                out << comma << "[in] " << idl_type(declared) << " " << declared.identifier;
                comma = ", ";
            }
            out << ");\n";
        }
    }
    out << "};\n\nservice Stove : XStove;\n\n};\n";
}

} // namespace hearthcell::generator
