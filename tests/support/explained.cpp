#include "support/explained.hpp"

#include "support/calls.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {

void expect_words(std::initializer_list<Said> calls) {
    for (Said const& said : calls) {
        std::span<Cell const> const arguments(said.arguments.begin(), said.arguments.size());
        std::string const sentence = explained(said.function, arguments);
        EXPECT_NE(sentence.find(said.words), std::string::npos)
            << in_words(said.function, arguments) << "\n  says:       " << sentence << "\n  must say: … " << said.words;
    }
}

} // namespace hearthcell::tests
