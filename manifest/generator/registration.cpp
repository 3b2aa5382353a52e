#include "manifest/generator/output.hpp"

namespace hearthcell::generator {
namespace {

std::string property(std::string_view name, std::string const& text) {
    return "<prop oor:name=\"" + std::string(name) + "\"><value xml:lang=\"en-US\">" + escaped(text) +
           "</value></prop>";
}

void write_function(std::ostream& out, Function const& function) {
    std::string const shown = "STOVE." + std::string(function.name);
    out << "    <node oor:name=\"" << function.stored << "\" oor:op=\"replace\">\n"
        << "     " << property("DisplayName", shown) << "\n"
        << "     " << property("Description", full_summary(function)) << "\n"
        << "     <prop oor:name=\"Category\"><value>Add-In</value></prop>\n"
        << "     " << property("CompatibilityName", shown) << "\n"
        << "     <node oor:name=\"Parameters\">\n";
    for (Argument const& argument : function.arguments)
        out << "      <node oor:name=\"" << identifier(argument.name) << "\" oor:op=\"replace\">\n"
            << "       " << property("DisplayName", std::string(argument.name)) << "\n"
            << "       " << property("Description", full_help(argument)) << "\n"
            << "      </node>\n";
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
