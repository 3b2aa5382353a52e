#include "extension/archive/find_office.hpp"

#include "extension/office/environment.hpp"

#include <dlfcn.h>

#include <algorithm>
#include <cctype>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

namespace hearthcell::archive {
namespace {

namespace fs = std::filesystem;

/// Each after those that it needs.
constexpr char const* libraries[] = {"libuno_sal.so.3", "libuno_salhelpergcc3.so.3", "libuno_cppu.so.3",
                                     "libuno_cppuhelpergcc3.so.3"};

/// An installation's folder `program`, without links: an office finds its own files from there.
std::optional<fs::path> program_in(fs::path const& folder) {
    std::error_code problem;
    for (fs::path const& place : {folder / "program", folder})
        if (fs::exists(place / "soffice.bin", problem) && fs::exists(place / libraries[0], problem))
            return fs::canonical(place, problem);
    return std::nullopt;
}

/// The folder of the soffice that a shell would start.
fs::path of_soffice_on_path() {
    std::error_code problem; // of one that is gone by now
    return fs::canonical(office::program_in(office::setting("PATH"), "soffice"), problem).parent_path();
}

/// The numbers in a name, so that 24.8 comes before 7.4.
std::vector<int> version_in(fs::path const& folder) {
    std::vector<int> numbers;
    bool in_number = false;
    for (char const letter : folder.filename().string()) {
        bool const digit = std::isdigit(static_cast<unsigned char>(letter)) != 0;
        if (digit && !in_number)
            numbers.push_back(0);
        if (digit && numbers.back() < 10000)
            numbers.back() = 10 * numbers.back() + (letter - '0');
        in_number = digit;
    }
    return numbers;
}

std::vector<fs::path> usual_places() {
    std::vector<fs::path> own;
    std::error_code problem;
    for (auto const& entry : fs::directory_iterator("/opt", problem))
        if (entry.path().filename().string().starts_with("libreoffice"))
            own.push_back(entry.path());
    std::sort(own.begin(), own.end(),
              [](fs::path const& a, fs::path const& b) { return version_in(a) > version_in(b); });
    std::vector<fs::path> places{of_soffice_on_path(), "/usr/lib/libreoffice", "/usr/lib64/libreoffice"};
    places.insert(places.end(), own.begin(), own.end());
    return places;
}

fs::path only(fs::path const& folder, std::string const& who_says_so) {
    if (auto const program = program_in(folder))
        return *program;
    throw std::runtime_error("there is no LibreOffice in " + folder.string() + ", which " + who_says_so + " names");
}

} // namespace

fs::path find_office(fs::path const& chosen) {
    if (!chosen.empty())
        return only(chosen, "--office");
    for (char const* variable : {"HEARTHCELL_OFFICE", "UNO_PATH"}) // the first is Calc's, for what it starts itself
        if (std::string const folder = office::setting(variable); !folder.empty())
            return only(folder, variable);
    for (fs::path const& place : usual_places())
        if (auto const program = place.empty() ? std::nullopt : program_in(place))
            return *program;
    throw std::runtime_error("no LibreOffice was found: not by soffice on the PATH, nor in /usr/lib/libreoffice, "
                             "/usr/lib64/libreoffice or /opt/libreoffice*; say where it is with --office DIR");
}

void load_libraries(fs::path const& program) {
    for (char const* library : libraries)
        if (::dlopen((program / library).c_str(), RTLD_NOW | RTLD_GLOBAL) == nullptr)
            throw std::runtime_error("LibreOffice's libraries cannot be loaded: " + std::string(::dlerror()));
}

} // namespace hearthcell::archive
