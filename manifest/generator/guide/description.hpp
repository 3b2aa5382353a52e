#pragma once
// What the guide says of a function's arguments and result, in words.

#include "functions/catalogue/catalogue.hpp"
#include "manifest/generator/guide/words.hpp"

namespace hearthcell::generator::guide {

/// A word in which %1 is this value.
std::string with_value(Word which, std::string_view value, Language language);

/// "local boiling point (°C)", or the parts of a block.
std::string name_of_result(Function const& function, Language language);

/// The same with its range: "local boiling point: 60 to 106 °C".
std::string what_it_gives(Function const& function, Language language);

/// "0 to 0.75", "a column or row: 0 to 105", the texts or names that it can be.
std::string what_is_allowed(Function const& function, Argument const& argument, Language language);

/// "required", or what counts instead.
std::string what_leaving_out_means(Function const& function, Argument const& argument, Language language);

/// The argument that chooses between the equations of a function that has several.
Argument const& choice_of_equation(Function const& function);

} // namespace hearthcell::generator::guide
