#include "manifest/generator/output.hpp"

namespace hearthcell::generator {
namespace {

std::string value(Language language, std::string const& text) {
    return "<value xml:lang=\"" + std::string(tag_of(language)) + "\">" + escaped(text) + "</value>";
}

/// A name: the same in every language, since LibreOffice takes English where it finds no other.
void write_name(std::ostream& out, std::string_view name, std::string const& text) {
    out << "<prop oor:name=\"" << name << "\">" << value(Language::english, text) << "</prop>\n";
}

/// A description in every language, made by full_summary or full_help.
template <class Entry>
void write_description(std::ostream& out, Entry const& entry, std::string (*text)(Entry const&, Language)) {
    out << "<prop oor:name=\"Description\">";
    for (Language const language : languages)
        out << value(language, text(entry, language));
    out << "</prop>\n";
}

void write_function(std::ostream& out, Function const& function) {
    std::string const shown = "STOVE." + std::string(function.name);
    out << "    <node oor:name=\"" << function.stored << "\" oor:op=\"replace\">\n     ";
    write_name(out, "DisplayName", shown);
    out << "     ";
    write_description(out, function, full_summary);
    out << "     <prop oor:name=\"Category\"><value>Add-In</value></prop>\n     ";
    write_name(out, "CompatibilityName", shown);
    out << "     <node oor:name=\"Parameters\">\n";
    for (Argument const& argument : function.arguments) {
        out << "      <node oor:name=\"" << identifier(argument.name) << "\" oor:op=\"replace\">\n       ";
        write_name(out, "DisplayName", std::string(argument.name));
        out << "       ";
        write_description(out, argument, full_help);
        out << "      </node>\n";
    }
    out << "     </node>\n    </node>\n";
}

} // namespace

void write_registration(std::ostream& out) {
    out << R"(<?xml version="1.0" encoding="UTF-8"?>
<oor:component-data xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema"
 oor:name="CalcAddIns" oor:package="org.openoffice.Office">
 <node oor:name="AddInInfo">
  <node oor:name=")"
        << service << R"(" oor:op="replace">
   <node oor:name="AddInFunctions">
)";
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            write_function(out, function);
    out << "   </node>\n  </node>\n </node>\n</oor:component-data>\n";
}

} // namespace hearthcell::generator
