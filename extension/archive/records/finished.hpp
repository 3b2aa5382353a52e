#pragma once
// Records: what is kept of a workbook in the output folder, so that it need not be done again.

#include "extension/archive/recalculation/outcome.hpp"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// A workbook that need not be done again, and all that the reports say of it but its rows of changes.csv and
/// old-and-new.csv.
struct Finished : Outcome {
    std::string key;                        // content, package and options that it was done with
    std::optional<std::uint64_t> copy_size; // nothing: no copy was made
    std::uint64_t rows_size = 0;            // bytes of its rows of changes.csv
    std::uint64_t compared_size = 0;        // of those of old-and-new.csv
    std::string source;                     // state of the original, see state_of
};

void to_json(nlohmann::json& json, Finished const& finished);
void from_json(nlohmann::json const& json, Finished& finished);

/// What is finished, in a folder within the output: two small files a workbook, or three, written whole or not at all.
class Records {
public:
    explicit Records(std::filesystem::path const& output);

    /// Nothing when the workbook is not finished, or was with another key, or its copy is not there.
    [[nodiscard]] std::optional<Finished> find(std::string const& relative, std::string const& key) const;
    [[nodiscard]] std::optional<Finished> find(std::string const& relative) const; // with any key

    /// Says that the copy at this place will be ours, and what its content will hash to; to be called before it is put
    /// there.
    void claim(std::string const& relative, std::string const& hash) const;
    [[nodiscard]] bool claimed(std::string const& relative) const;

    /// The places of all copies that were ever claimed, sorted.
    [[nodiscard]] std::vector<std::string> copies() const;
    void keep_copies(std::vector<std::string> const& places) const; // these and no others from now on

    /// Takes a copy away, with folders that are empty then; but not when it is another one than we put there.
    enum class Removal { done, not_there, was_changed };
    Removal remove_copy(std::string const& relative) const; // throws std::system_error

    void keep(std::string const& relative, Finished const& finished, std::string const& rows_of_changes,
              std::string const& rows_of_old_and_new = {}) const;

    [[nodiscard]] std::filesystem::path rows_of_changes(std::string const& relative) const;
    [[nodiscard]] std::filesystem::path rows_of_old_and_new(std::string const& relative) const;
    [[nodiscard]] std::filesystem::path const& folder() const { return folder_; }

private:
    [[nodiscard]] std::vector<std::string> hashes(std::string const& relative) const; // of copies of ours
    [[nodiscard]] std::filesystem::path place(std::string const& relative, char const* ending) const;

    std::filesystem::path output_, folder_;
};

} // namespace hearthcell::archive
