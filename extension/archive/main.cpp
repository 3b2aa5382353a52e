// hearthcell-archive: recalculates archives of workbooks and lists every result that changed. Starts without an office,
// so that it can say what is missing; the rest is in a library that is loaded once the office's own are.

#include "extension/archive/files/shown.hpp"
#include "extension/archive/find_office.hpp"
#include "extension/archive/program.hpp"
#include "extension/archive/recalculation/command_line.hpp"

#include <dlfcn.h>

#include <csignal>
#include <cstdlib>
#include <iostream>
#include <new>

namespace {

using namespace hearthcell::archive;

constexpr int could_not_run = 2;

/// Beside this program, as it is built; or where it is installed.
std::filesystem::path place_of_library() {
    auto const folder = std::filesystem::read_symlink("/proc/self/exe").parent_path();
    for (char const* place : {"", "../lib/hearthcell"})
        if (auto const file = folder / place / program_library; std::filesystem::exists(file))
            return file;
    throw std::runtime_error(std::string(program_library) + " is not there; please install this program anew");
}

int run(Options const& options) {
    auto const office = find_office(options.office);
    ::setenv("HEARTHCELL_OFFICE", office.c_str(), 1); // for all that is started
    load_libraries(office);
    void* const library = ::dlopen(place_of_library().c_str(), RTLD_NOW);
    if (library == nullptr)
        throw std::runtime_error(::dlerror());
    auto const function = reinterpret_cast<decltype(&hearthcell_archive)>(::dlsym(library, program_function));
    if (function == nullptr)
        throw std::runtime_error(::dlerror());
    return function(options);
}

} // namespace

int main(int count, char** words) {
    std::signal(SIGPIPE, SIG_IGN); // whoever reads what we say may have gone: no reason to leave work half done
    // A file that may not grow any more is like a full disk: the write fails, and is listed.
    std::signal(SIGXFSZ, SIG_IGN);
    try {
        Read const read = read_options(count, words);
        return read.options ? run(*read.options) : read.status;
    } catch (std::bad_alloc const&) {
        std::cerr << "hearthcell-archive: there is not enough memory\n";
        return could_not_run;
    } catch (std::exception const& problem) {
        std::cerr << "hearthcell-archive: " << line_of(problem.what(), longest_detail) << "\n";
        return could_not_run;
    }
}
