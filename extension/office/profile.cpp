#include "extension/office/profile.hpp"

#include "extension/office/file_url.hpp"
#include "extension/office/process.hpp"
#include "extension/office/text.hpp"

#include <stdlib.h>

#include <cerrno>
#include <fstream>
#include <sstream>
#include <system_error>

namespace hearthcell::office {
namespace {

constexpr auto unpacking_time = std::chrono::seconds(60);

std::filesystem::path fresh_folder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "hearthcell-XXXXXX").string();
    if (::mkdtemp(pattern.data()) == nullptr)
        throw std::system_error(errno, std::generic_category(), "no temporary folder " + pattern);
    return pattern;
}

std::string property(std::string_view path, std::string_view name, std::string_view value) {
    std::ostringstream item;
    item << "<item oor:path=\"/org.openoffice." << path << "\"><prop oor:name=\"" << name
         << "\" oor:op=\"fuse\"><value>" << value << "</value></prop></item>\n";
    return item.str();
}

std::string configuration(Settings const& settings) {
    constexpr std::string_view loading = "Office.Calc/Formula/Load";
    std::string text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                       "<oor:items xmlns:oor=\"http://openoffice.org/2001/registry\">\n";
    text += property("Setup/L10N", "ooSetupSystemLocale", settings.locale);
    // Where its profile is from an older version, an office tries its graphics first at every start: 3 s of 4.
    text += property("Setup/Product", "ooSetupLastVersion", "9999.0");
    if (settings.windows) // no greeting on top of them
        text += property("Office.Common/Misc", "ShowTipOfTheDay", "false");
    if (!settings.menus.empty()) // also one that the office has no language pack for: what is ours appears in it
        text += property("Office.Linguistic/General", "UILocale", settings.menus) +
                "<item oor:path=\"/org.openoffice.Setup/Office/InstalledLocales\"><node oor:name=\"" + settings.menus +
                "\" oor:op=\"replace\"/></item>\n";
    if (settings.opening_ods)
        text += property(loading, "ODFRecalcMode", std::to_string(static_cast<int>(*settings.opening_ods)));
    if (settings.opening_xlsx)
        text += property(loading, "OOXMLRecalcMode", std::to_string(static_cast<int>(*settings.opening_xlsx)));
    for (Preference const& preference : settings.preferences)
        text += property(preference.path, preference.name, preference.value);
    return text + "</oor:items>\n";
}

void unpack(std::filesystem::path const& package, std::filesystem::path const& into, std::filesystem::path const& log) {
    std::filesystem::create_directories(into);
    if (std::filesystem::is_directory(package)) {
        std::filesystem::copy(package, into, std::filesystem::copy_options::recursive);
        return;
    }
    if (!std::filesystem::is_regular_file(package))
        throw std::runtime_error("there is no package " + package.string());
    Process unzip("/usr/bin/unzip", {"-q", package.string(), "-d", into.string()}, log);
    if (unzip.wait(unpacking_time) != 0)
        throw std::runtime_error("could not unpack " + package.string());
}

} // namespace

Profile::Profile(Settings const& settings) : folder_(fresh_folder()) {
    try {
        std::filesystem::create_directories(folder_ / "profile/user");
        std::filesystem::create_directories(temporary());
        std::ofstream file(folder_ / "profile/user/registrymodifications.xcu");
        file << configuration(settings);
        if (!file.flush()) // an office without it would do what it must not
            throw std::runtime_error("could not write the settings of LibreOffice into " + folder_.string());
        // A package that lies unpacked in the folder of bundled extensions counts as installed: no unopkg, works as
        // root.
        std::filesystem::create_directories(folder_ / "bundled");
        if (!settings.package.empty())
            unpack(settings.package, folder_ / "bundled" / settings.package.stem(), log());
        for (std::filesystem::path const& package : settings.further_packages)
            unpack(package, folder_ / "bundled" / package.stem(), log());
    } catch (...) {
        std::error_code ignored;
        std::filesystem::remove_all(folder_, ignored);
        throw;
    }
}

Profile::~Profile() {
    std::error_code ignored; // a folder that cannot be deleted is no reason to end the program
    std::filesystem::remove_all(folder_, ignored);
}

std::string Profile::url() const {
    return narrow(file_url(folder_ / "profile"));
}

std::vector<std::string> Profile::arguments() const {
    return {"-env:UserInstallation=" + url(), "-env:BUNDLED_EXTENSIONS=" + narrow(file_url(folder_ / "bundled"))};
}

} // namespace hearthcell::office
