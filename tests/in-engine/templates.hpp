#pragma once
// The templates as tests find and read them.

#include "calc.hpp"

#include <array>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace hearthcell::tests {

inline constexpr std::array<std::string_view, 4> template_languages{"en", "fr", "es", "sw"};

/// Names of the templates, by their sources.
std::vector<std::string> template_names();

std::filesystem::path template_file(std::string_view language, std::string const& name);

/// Invented data for it, of which there are none for some.
std::filesystem::path demo_data(std::string const& name);

/// What a text of a template is in a language, by the template's own texts and those that all share. Fails the test
/// where it is not among them.
std::string said(std::string const& english, std::string_view language, std::string const& name);

/// One text that a person reads in a workbook, and where it stands.
struct ReadText {
    std::string where;
    std::string text;
};

/// Names of sheets, texts of cells that are no formula, messages of validations, titles of charts: in an order that is
/// the same in every language.
std::vector<ReadText> read_texts(office::Document const& workbook);

/// What a printed sheet says at its foot; the office joins the paragraphs.
std::string footer_of(office::Document const& workbook, int sheet);

/// The cells of a sheet that show an error; empty when none does.
std::string errors_on(office::Document const& workbook, int sheet);

/// A sheet without is for the pen: it works nothing out, and says nothing of Hearthcell.
bool has_formulas(office::Document const& workbook, int sheet);

/// The heights of the first rows of a sheet, in hundredths of a millimetre.
std::vector<int> heights_of_rows(office::Document const& workbook, int sheet, int rows);

/// What is wrong with the protection of a sheet, empty when nothing is: formulas are locked, a number that a person
/// types has a validation with a message, and no password is needed to lift it (which this does).
std::string faults_of_protection(office::Document const& workbook, int sheet);

/// The number in the cell that a workbook names so; fails the test where there is none.
double number_named(office::Document const& workbook, std::string const& name);

int pages_of(std::filesystem::path const& pdf);

/// What stands on one page of a PDF.
std::string text_of_page(std::filesystem::path const& pdf, int page);

} // namespace hearthcell::tests
