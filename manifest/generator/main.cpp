// hearthcell-generate WHAT FILE: writes one of the things that are made from the catalogue.

#include "manifest/generator/output.hpp"

#include <cstring>
#include <fstream>
#include <iostream>

namespace {

struct Output {
    char const* what;
    void (*write)(std::ostream&);
};

constexpr Output outputs[] = {{"idl", hearthcell::generator::write_idl},
                              {"methods", hearthcell::generator::write_methods},
                              {"registration", hearthcell::generator::write_registration},
                              {"readme-table", hearthcell::generator::write_readme_table},
                              {"acceptance-sheet", hearthcell::generator::write_acceptance_sheet}};

int usage() {
    std::cerr << "usage: hearthcell-generate WHAT FILE, where WHAT is one of";
    for (Output const& output : outputs)
        std::cerr << " " << output.what;
    std::cerr << "\n";
    return 2;
}

} // namespace

int main(int count, char** arguments) {
    if (count != 3)
        return usage();
    for (Output const& output : outputs) {
        if (std::strcmp(output.what, arguments[1]) != 0)
            continue;
        std::ofstream file(arguments[2]);
        output.write(file);
        file.close();
        if (file)
            return 0;
        std::cerr << "hearthcell-generate: cannot write " << arguments[2] << "\n";
        return 1;
    }
    return usage();
}
