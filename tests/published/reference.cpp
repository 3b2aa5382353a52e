#include "reference.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <string>

namespace hearthcell::tests {

std::vector<Point> reference(std::string_view quantity, std::size_t least) {
    std::vector<Point> points;
    std::ifstream file(REFERENCE_FILE);
    for (std::string line; std::getline(file, line);) {
        std::size_t const first = line.find(';'), second = line.find(';', first + 1);
        if (second != std::string::npos && std::string_view(line).substr(0, first) == quantity)
            points.push_back({std::stod(line.substr(first + 1)), std::stod(line.substr(second + 1))});
    }
    EXPECT_GE(points.size(), least) << "of '" << quantity << "' in " << REFERENCE_FILE
                                    << "; reference.py writes it (ctest -R published_reference)";
    return points;
}

} // namespace hearthcell::tests
