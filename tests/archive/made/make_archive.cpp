// Makes the test archive: make_archive FOLDER [NUMBER OF WORKBOOKS]. Does nothing when the folder is newer than this
// program.

#include "good_workbooks.hpp"
#include "test_archive.hpp"

#include <cstdlib>
#include <fstream>
#include <iostream>

int main(int argc, char** argv) {
    namespace archive = hearthcell::tests::archive;
    if (argc < 2 || argc > 3) {
        std::cerr << "usage: make_archive FOLDER [NUMBER OF WORKBOOKS]\n";
        return 2;
    }
    try {
        archive::TestArchive const made{std::filesystem::absolute(argv[1])};
        int const count = argc == 3 ? std::atoi(argv[2]) : archive::good_count;
        std::filesystem::path const stamp = made.folder / "complete";
        std::error_code missing;
        auto const when = std::filesystem::last_write_time(stamp, missing);
        if (!missing && when > std::filesystem::last_write_time("/proc/self/exe"))
            return 0;
        made.make(count);
        std::ofstream(stamp) << count << '\n';
    } catch (std::exception const& problem) {
        std::cerr << "make_archive: " << problem.what() << '\n';
        return 1;
    }
    return 0;
}
