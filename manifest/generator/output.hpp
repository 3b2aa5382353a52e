#pragma once
// Everything that is made from the catalogue, one function a file.

#include "functions/catalogue/catalogue.hpp"
#include "functions/explain/phrases.hpp"

#include <ostream>
#include <string>
#include <vector>

namespace hearthcell::generator {

void write_idl(std::ostream& out);
void write_registration(std::ostream& out);
void write_menu(std::ostream& out);
void write_readme_table(std::ostream& out);
void write_readme_names(std::ostream& out);
void write_guide(std::ostream& out, Language language);

/// The README with its function table made anew; empty where the marks around it are missing.
std::string with_function_table(std::string const& readme);

/// "sea-level pressure" as IDL calls it: seaLevelPressure.
std::string identifier(std::string_view words);

/// An argument as Calc is told of it.
struct Declared {
    Argument const* argument;
    std::string identifier;
    std::size_t number; ///< among those that an open end stands for; 0: by itself
};

/// A method's arguments. What an open end stands for is declared one by one and then as any number of further ones: in
/// an array formula Calc goes cell by cell through a range that it has only the open end to put into, a call each.
std::vector<Declared> declared_arguments(Function const& function);

/// Whether a method can return a plain double: no text and no block can come out.
bool gives_number(Function const& function);

/// A text with every `key` in it replaced.
std::string filled(std::string_view text, std::string_view key, std::string_view value);

/// Text made safe for XML.
std::string escaped(std::string_view text);

/// What the wizard says of a function: summary, unit of the result, parts of a block, caution.
std::string full_summary(Function const& function, Language language);

/// What the wizard says of an argument: unit, help, range, options, default.
std::string full_help(Function const& function, Argument const& argument, Language language);

/// The texts that an argument may be, each between quotation marks, and what is not listed for its length.
std::string options(Function const& function, Argument const& argument, Language language);

/// The part that leaving the argument out gives, or the word for all.
std::string_view part_unless_named(Function const& function, Language language);

/// "mean, n, lower limit": the parts of a result in their order. Empty for a single value.
std::string parts(Function const& function, Language language);

/// A source's title, with an asterisk where it is from memory.
std::string marked(Source const& source, Language language);

/// What a row of a table answers to besides its name in one language, each once.
std::string other_names(Named const& row, Language language);

/// "0.12 MJ/kg", with the decimal separator of the language.
std::string amount(double number, Measure measure, Language language);

using hearthcell::shown_name;

/// "STOVE.BOILINGPOINT(altitude; [sea-level pressure])".
std::string signature(Function const& function, Language language);

inline constexpr std::string_view service = "hearthcell.Stove";

/// "HEARTHCELL.STOVE.BOILINGPOINT": as files name it in formulas.
std::string stored_name(Function const& function);

} // namespace hearthcell::generator
