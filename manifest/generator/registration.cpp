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

/// A text in every language.
template <class Text> void write_texts(std::ostream& out, std::string_view name, Text const& text) {
    out << "<prop oor:name=\"" << name << "\">";
    for (Language const language : languages)
        out << value(language, text(language));
    out << "</prop>\n";
}

/// What an .xls file holds, and English formulas in a program. A file with an earlier name is understood, too: any
/// language's name is looked for there, and none is used that no office speaks. "zxx" is no language.
void write_compatibility_names(std::ostream& out, Function const& function) {
    out << "<prop oor:name=\"CompatibilityName\">" << value(Language::english, "STOVE." + std::string(function.name));
    if (!function.once_called.empty())
        out << "<value xml:lang=\"zxx\">STOVE." << function.once_called << "</value>";
    out << "</prop>\n";
}

void write_function(std::ostream& out, Function const& function) {
    std::string const shown = "STOVE." + std::string(function.name);
    out << "    <node oor:name=\"" << function.stored << "\" oor:op=\"replace\">\n     ";
    write_name(out, "DisplayName", shown);
    out << "     ";
    write_texts(out, "Description", [&](Language language) { return full_summary(function, language); });
    out << "     <prop oor:name=\"Category\"><value>Add-In</value></prop>\n     ";
    write_compatibility_names(out, function);
    out << "     <node oor:name=\"Parameters\">\n";
    for (auto const& [given, identifier, number] : declared_arguments(function)) {
        Argument const& argument = *given;
        std::string const which = number > 0 ? " " + std::to_string(number) : "";
        out << "      <node oor:name=\"" << identifier << "\" oor:op=\"replace\">\n       ";
        write_texts(out, "DisplayName", [&](Language language) { return shown_name(argument, language, which); });
        out << "       ";
        write_texts(out, "Description", [&](Language language) { return full_help(function, argument, language); });
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
