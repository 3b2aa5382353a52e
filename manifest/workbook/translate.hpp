#pragma once
// From an English template to one of another language.

#include "manifest/workbook/texts.hpp"

#include <pugixml.hpp>

namespace hearthcell::workbook {

/// Puts a flat ODF spreadsheet into the language of the texts: cells, notes, headings, messages, charts, names of
/// sheets and texts within formulas. Defined names stay, since archives are collected by them. `@EDITION@` becomes the
/// edition.
void translate(pugi::xml_document& sheet, Texts& texts);

} // namespace hearthcell::workbook
