#pragma once
// What the independent libraries said: the file that reference.py wrote.

#include <string_view>
#include <vector>

namespace hearthcell::tests {

struct Point {
    double input, value;
};

/// All points of a quantity; fails the running test where the file is missing or has fewer than `least`.
std::vector<Point> reference(std::string_view quantity, std::size_t least);

} // namespace hearthcell::tests
