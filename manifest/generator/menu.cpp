#include "extension/menu/commands.hpp"
#include "manifest/generator/output.hpp"

namespace hearthcell::generator {
namespace {

/// LibreOffice puts the lines into the order of their names, shorter ones first: all have the same length.
std::string name_of(std::size_t line) {
    return {'m', char('0' + line / 10), char('0' + line % 10)};
}

void begin_line(std::ostream& out, std::size_t line, std::string const& url) {
    out << "     <node oor:name=\"" << name_of(line) << "\" oor:op=\"replace\">\n"
        << "      <prop oor:name=\"URL\"><value>" << url << "</value></prop>\n";
}

void write_title(std::ostream& out, menu::Text title) {
    out << "<prop oor:name=\"Title\">";
    for (Language const language : languages)
        out << "<value xml:lang=\"" << tag_of(language) << "\">" << escaped(menu::text(title, language)) << "</value>";
    out << "</prop>\n";
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
    )";
    write_title(out, menu::Text::menu_title);
    out << "    <node oor:name=\"Submenu\">\n";
    std::size_t line = 0;
    for (menu::Entry const& entry : menu::entries) {
        if (entry.begins_a_group) {
            begin_line(out, line++, "private:separator");
            out << "     </node>\n";
        }
        begin_line(out, line++, menu::url_of(entry));
        out << "      ";
        write_title(out, entry.label);
        out << "      <prop oor:name=\"Target\"><value>_self</value></prop>\n     </node>\n";
    }
    out << "    </node>\n   </node>\n  </node>\n </node>\n</oor:component-data>\n";
}

} // namespace hearthcell::generator
