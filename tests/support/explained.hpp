#pragma once
// What EXPLAIN must say.

#include "functions/catalogue/catalogue.hpp"

#include <initializer_list>

namespace hearthcell::tests {

/// A call, and words that EXPLAIN must use of it.
struct Said {
    std::string_view function;
    List<Cell, most_arguments> arguments;
    std::string_view words;
};

void expect_words(std::initializer_list<Said> calls);

} // namespace hearthcell::tests
