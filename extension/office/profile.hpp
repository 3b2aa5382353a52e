#pragma once
// An office's settings, and the folder that it finds them in.

#include "extension/office/confining.hpp"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace hearthcell::office {

/// What Calc does with the results stored in a file when it opens the file: its own numbering.
enum class Recalculation { always = 0, never = 1, ask = 2 };

/// One value of the office's configuration: {"Office.Common/Save/Document", "GenerateThumbnail", "false"}.
struct Preference {
    std::string path;
    std::string name;
    std::string value;
};

struct Settings {
    std::filesystem::path package = {}; // an .oxt, or the folder of one that is unpacked; none when empty
    std::vector<std::filesystem::path> further_packages = {};
    std::string locale = "en-US";                   // of numbers and dates
    std::string menus = {};                         // language of the menus, "fr"; as the office has it when empty
    bool windows = false;                           // shown on the display of the environment, else headless
    std::optional<Recalculation> opening_ods = {};  // as the office has it when absent
    std::optional<Recalculation> opening_xlsx = {}; // likewise
    std::vector<Preference> preferences = {};       // further ones
    Confining const* confining = nullptr;           // shut in by it: no network, and of files only those in
    std::filesystem::path only_folder = {};         // this folder
};

/// A user profile in a temporary folder of its own, deleted with this object.
class Profile {
public:
    explicit Profile(Settings const& settings);
    ~Profile();
    Profile(Profile const&) = delete;
    Profile& operator=(Profile const&) = delete;

    [[nodiscard]] std::filesystem::path const& folder() const { return folder_; }
    [[nodiscard]] std::filesystem::path log() const { return log_in(folder_); }
    [[nodiscard]] std::filesystem::path temporary() const { return folder_ / "tmp"; }

    [[nodiscard]] std::string url() const; // of what the office takes as its user's folder

    /// What the office must be told on its command line to use this profile.
    [[nodiscard]] std::vector<std::string> arguments() const;

    /// The log of the office whose profile lies in this folder.
    static std::filesystem::path log_in(std::filesystem::path const& folder) { return folder / "office.log"; }

private:
    std::filesystem::path folder_;
};

} // namespace hearthcell::office
