// make_seeds FILE CALLS TEXTS: turns the seeds of a file, and the catalogue's examples, into files of bytes in two folders.

#include "robustness/calls/written_call.hpp"
#include "call_bytes.hpp"
#include "support/cells.hpp"

#include <cstdio>
#include <filesystem>
#include <fstream>

namespace {

using namespace hearthcell;

void write(std::filesystem::path const& folder, std::string const& bytes) {
    static int number = 0;
    std::ofstream(folder / std::to_string(++number), std::ios::binary) << bytes;
}

void write_examples(std::filesystem::path const& folder) {
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (Example const& example : function.examples)
                write(folder, tests::bytes_of(function, tests::values_of({example.arguments.begin(),
                                                                          example.arguments.end()})));
}

} // namespace

int main(int count, char** arguments) {
    if (count != 4) {
        std::fputs("make_seeds FILE CALLS TEXTS\n", stderr);
        return 2;
    }
    std::ifstream file(arguments[1]);
    std::filesystem::path const calls = arguments[2], texts = arguments[3];
    std::filesystem::create_directories(calls);
    std::filesystem::create_directories(texts);
    write_examples(calls);
    int seeds = 0;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.starts_with('#'))
            continue;
        ++seeds;
        if (line.size() > 2 && line[1] == ' ') { // a letter and a text
            write(texts, line[0] + line.substr(2));
            continue;
        }
        tests::WrittenCall const call = tests::read_call(line);
        if (call.function == nullptr) {
            std::fprintf(stderr, "no call: %s\n", line.c_str());
            return 1;
        }
        write(calls, tests::bytes_of(*call.function, call.values));
    }
    return seeds > 0 ? 0 : 1;
}
