// Prints the manual page of hearthcell-archive, for the build.

#include "extension/archive/recalculation/options.hpp"

#include <iostream>

int main() {
    std::cout << hearthcell::archive::manual_page();
}
