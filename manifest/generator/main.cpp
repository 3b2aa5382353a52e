// hearthcell-generate WHAT FILE: writes one of the things that are made from the catalogue. `readme` does not write a
// file anew but renews the function table between two marks in it.

#include "manifest/generator/output.hpp"

#include <cstring>
#include <fstream>
#include <iostream>
#include <sstream>

namespace {

struct Output {
    char const* what;
    void (*write)(std::ostream&);
};

template <hearthcell::Language language> void guide(std::ostream& out) {
    hearthcell::generator::write_guide(out, language);
}

constexpr Output outputs[] = {{"idl", hearthcell::generator::write_idl},
                              {"registration", hearthcell::generator::write_registration},
                              {"menu", hearthcell::generator::write_menu},
                              {"guide-en", guide<hearthcell::Language::english>},
                              {"guide-fr", guide<hearthcell::Language::french>},
                              {"guide-es", guide<hearthcell::Language::spanish>},
                              {"guide-sw", guide<hearthcell::Language::swahili>}};

int usage() {
    std::cerr << "usage: hearthcell-generate WHAT FILE, where WHAT is readme or one of";
    for (Output const& output : outputs)
        std::cerr << " " << output.what;
    std::cerr << "\n";
    return 2;
}

int write(std::string const& text, char const* path) {
    std::ofstream file(path);
    file << text;
    file.close();
    if (file)
        return 0;
    std::cerr << "hearthcell-generate: cannot write " << path << "\n";
    return 1;
}

int renew_readme(char const* path) {
    std::ifstream file(path);
    std::stringstream text;
    text << file.rdbuf();
    std::string const renewed = hearthcell::generator::with_function_table(text.str());
    if (!file || renewed.empty()) {
        std::cerr << "hearthcell-generate: " << path << " has no marks for the function table\n";
        return 1;
    }
    return write(renewed, path);
}

} // namespace

int main(int count, char** arguments) {
    if (count != 3)
        return usage();
    if (std::strcmp(arguments[1], "readme") == 0)
        return renew_readme(arguments[2]);
    for (Output const& output : outputs) {
        if (std::strcmp(output.what, arguments[1]) != 0)
            continue;
        std::ostringstream text;
        output.write(text);
        return write(text.str(), arguments[2]);
    }
    return usage();
}
