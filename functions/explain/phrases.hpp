#pragma once
// What sentences are made from: a quantity with its unit, what an argument allows, gaps that are filled in.

#include "functions/catalogue/function.hpp"
#include "functions/number/in_words.hpp"

namespace hearthcell {

/// A number with the unit of its measure: 95.8503 °C.
std::string in_words(double number, Measure measure);

/// An argument's name as it is shown: in square brackets where it may be left out.
std::string shown_name(Argument const& argument, Language language);

/// A source as it is cited: what is from memory says so.
std::string cited(Source const& source);

/// The names that an ambiguous one may stand for, each between quotation marks.
std::string candidates(Argument const& argument, std::string_view name);

/// "0 to 0.75", with the unit.
std::string range_of(Argument const& argument);

/// What an argument allows: a range with unit, or a list of texts.
std::string allowed_words(Function const& function, Argument const& argument);

/// Every "{key}" in a sentence replaced.
std::string filled(std::string_view sentence, std::string_view key, std::string_view value);

} // namespace hearthcell
