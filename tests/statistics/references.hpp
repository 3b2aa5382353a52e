#pragma once
// Files that references.py and references.R wrote. A test that cannot read one fails.

#include "functions/number/reason.hpp"

#include <gtest/gtest.h>

#include <charconv>
#include <fstream>
#include <string>
#include <vector>

namespace hearthcell::tests {

inline std::vector<std::string> lines_of(std::string const& file) {
    std::ifstream input(REFERENCES "/" + file);
    EXPECT_TRUE(input.is_open()) << "run the tests through ctest, which computes " << file << " first";
    std::vector<std::string> lines;
    for (std::string line; std::getline(input, line);)
        lines.push_back(line);
    return lines;
}

inline std::vector<std::string> split(std::string const& text, char at) {
    std::vector<std::string> fields(1);
    for (char const c : text) {
        if (c == at)
            fields.emplace_back();
        else
            fields.back() += c;
    }
    return fields;
}

/// Numbers set apart by blanks; NA is one that is absent.
inline std::vector<double> numbers_of(std::string const& text) {
    std::vector<double> numbers;
    for (std::string const& field : split(text, ' ')) {
        double number = absent;
        auto const [end, error] = std::from_chars(field.data(), field.data() + field.size(), number);
        EXPECT_TRUE(field == "NA" || (error == std::errc() && end == field.data() + field.size())) << field;
        numbers.push_back(field == "NA" ? absent : number);
    }
    return numbers;
}

} // namespace hearthcell::tests
