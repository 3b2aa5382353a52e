#include "extension/menu/commands.hpp"
#include "manifest/generator/output.hpp"

namespace hearthcell::generator {
namespace {

void write_separator(std::ostream& out, std::size_t place) {
    out << "     <node oor:name=\"" << place << "-above\" oor:op=\"replace\">\n"
        << "      <prop oor:name=\"URL\"><value>private:separator</value></prop>\n     </node>\n";
}

void write_entry(std::ostream& out, menu::Entry const& entry, std::size_t place) {
    out << "     <node oor:name=\"" << place << "-" << entry.name << "\" oor:op=\"replace\">\n"
        << "      <prop oor:name=\"URL\"><value>" << menu::url_of(entry) << "</value></prop>\n"
        << "      <prop oor:name=\"Title\">";
    for (menu::Language const language : menu::languages)
        out << "<value xml:lang=\"" << menu::tag_of(language) << "\">" << escaped(menu::text(entry.label, language))
            << "</value>";
    out << "</prop>\n      <prop oor:name=\"Target\"><value>_self</value></prop>\n     </node>\n";
}

} // namespace

void write_menu(std::ostream& out) {
    out << R"(<?xml version="1.0" encoding="UTF-8"?>
<oor:component-data xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema"
 oor:name="Addons" oor:package="org.openoffice.Office">
 <node oor:name="AddonUI">
  <node oor:name="OfficeMenuBar">
   <node oor:name="hearthcell" oor:op="replace">
    <prop oor:name="Context"><value>com.sun.star.sheet.SpreadsheetDocument</value></prop>
    <prop oor:name="Title"><value xml:lang="en-US">)"
        << menu::menu_name << R"(</value></prop>
    <node oor:name="Submenu">
)";
    // LibreOffice puts the entries into the order of their names, so that they begin with a number.
    for (std::size_t place = 0; place < menu::entries.size(); ++place) {
        if (menu::entries[place].begins_a_group)
            write_separator(out, place);
        write_entry(out, menu::entries[place], place);
    }
    out << "    </node>\n   </node>\n  </node>\n </node>\n</oor:component-data>\n";
}

} // namespace hearthcell::generator
