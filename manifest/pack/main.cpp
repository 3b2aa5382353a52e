// hearthcell-pack FOLDER OUTPUT FILE…: packs files of a folder, named from it, in their order.

#include "manifest/pack/zip_file.hpp"

#include <fstream>
#include <iostream>
#include <sstream>
#include <stdexcept>
#include <vector>

namespace {

using namespace hearthcell::pack;

Entry read(std::filesystem::path const& folder, std::string const& path) {
    std::ifstream file(folder / path, std::ios::binary);
    std::ostringstream content;
    if (!(content << file.rdbuf()))
        throw std::runtime_error("cannot read " + (folder / path).string());
    // Libraries, which a linker makes like programs, are not run by themselves.
    auto const rights = std::filesystem::status(folder / path).permissions();
    bool const may_be_run = (rights & std::filesystem::perms::owner_exec) != std::filesystem::perms::none;
    return {path, content.str(), may_be_run && path.find(".so") == std::string::npos};
}

} // namespace

int main(int count, char** words) {
    if (count < 4) {
        std::cerr << "usage: hearthcell-pack FOLDER OUTPUT FILE…\n";
        return 2;
    }
    try {
        std::vector<Entry> entries;
        for (int i = 3; i < count; ++i)
            entries.push_back(read(words[1], words[i]));
        write_zip(entries, words[2]);
        return 0;
    } catch (std::exception const& trouble) {
        std::cerr << "hearthcell-pack: " << trouble.what() << '\n';
        return 1;
    }
}
