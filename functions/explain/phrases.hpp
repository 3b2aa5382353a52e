#pragma once
// What sentences are made from: a quantity with its unit, an argument's name, what an argument allows.

#include "functions/catalogue/function.hpp"
#include "functions/words/speaker.hpp"

namespace hearthcell {

/// A number with the unit of its measure: 95.8503 °C.
std::string quantity(Speaker const& say, double number, Measure measure);

/// An argument's name as it is shown: in square brackets where it may be left out; and which of several of that name.
std::string shown_name(Argument const& argument, Language language, std::string_view which = {});

/// An argument's name within a sentence.
std::string named_in_sentence(Speaker const& say, Argument const& argument);

/// A list with one more in it.
std::string with_next(Speaker const& say, std::string const& list, std::string next);

std::string in_quotes(std::string_view text);

/// A source as it is cited: what is from memory says so.
std::string cited(Speaker const& say, Source const& source);

/// The names that an ambiguous one may stand for, each between quotation marks.
std::string candidates(Speaker const& say, Argument const& argument, std::string_view name);

/// "0 to 0.75", with the unit of the measure.
std::string range_in_words(Speaker const& say, double low, double high, Measure measure);

/// What an argument allows: a range with unit, or a list of texts.
std::string allowed_words(Speaker const& say, Function const& function, Argument const& argument);

} // namespace hearthcell
