#include "extension/archive/records/finished.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/archive/files/whole_file.hpp"

#include <nlohmann/json.hpp>

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <fstream>
#include <system_error>

namespace hearthcell::archive {

using nlohmann::json;

namespace {

constexpr auto hashes_field = "copies";   // what the copies hash to that we put, or were about to put, in the place
constexpr auto list_of_copies = "copies"; // names of files may be any bytes but NUL, and so each ends with one
constexpr char name_ends = '\0';

/// Several workers do this at the same time. A NUL comes first, too: should the disk have filled up in the middle of a
/// name, the next one is whole again.
void add_to_list(std::filesystem::path const& list, std::string const& name) {
    std::string const entry = name_ends + name + name_ends;
    int const file = ::open(list.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0666);
    ssize_t const written = file < 0 ? -1 : ::write(file, entry.data(), entry.size());
    int const why = written < 0 ? errno : ENOSPC;
    if (file >= 0)
        ::close(file);
    if (written != static_cast<ssize_t>(entry.size()))
        throw std::system_error(why, std::generic_category(), list.string());
}

/// After a power failure it is done again: what is costly is to wait for the disk.
void write_rows(std::filesystem::path const& place, std::string const& rows) {
    WholeFile file(place);
    file.write(rows);
    file.put_in_place(false);
}

} // namespace

NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(Collected, value, unit, found)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(CheckRemark, sheet, cell, function, value, sentence, effect)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(CarriedOutcome, formulas, sheets)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(ReadOutcome, function, argument, values, lowest, median, highest)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(CheckOutcome, runs, clean, all, remarks)

void to_json(json& out, Finished const& finished) {
    out = {{"key", finished.key}, {"tally", finished.tally}};
    out["problems"] = json::array();
    for (Problem const& problem : finished.problems)
        out["problems"].push_back({{"reason", words(problem.reason)},
                                   {"detail", line_of(problem.detail, longest_detail)},
                                   {"attempts", problem.attempts}});
    if (!finished.collected.empty())
        out["collected"] = finished.collected;
    if (finished.check.runs > 0 || finished.check.all > 0)
        out["check"] = finished.check;
    if (finished.carried.sheets > 0)
        out["carried"] = finished.carried;
    if (!finished.read.empty())
        out["read"] = finished.read;
    if (!finished.compared.empty())
        out["compared"] = finished.compared;
    out["rows_size"] = finished.rows_size;
    if (finished.compared_size > 0)
        out["compared_size"] = finished.compared_size;
    out["source"] = finished.source;
    if (finished.copy_size)
        out["copy_size"] = *finished.copy_size;
}

void from_json(json const& in, Finished& finished) {
    in.at("key").get_to(finished.key);
    in.at("tally").get_to(finished.tally);
    for (json const& problem : in.at("problems"))
        finished.problems.push_back({reason_of(problem.at("reason").get<std::string>()),
                                     problem.at("detail").get<std::string>(), problem.at("attempts").get<int>()});
    if (in.contains("collected"))
        in["collected"].get_to(finished.collected);
    if (in.contains("check"))
        in["check"].get_to(finished.check);
    if (in.contains("carried"))
        in["carried"].get_to(finished.carried);
    if (in.contains("read"))
        in["read"].get_to(finished.read);
    if (in.contains("compared"))
        finished.compared = in["compared"].get<std::vector<bool>>();
    in.at("rows_size").get_to(finished.rows_size);
    finished.compared_size = in.value("compared_size", std::uint64_t{0});
    in.at("source").get_to(finished.source);
    if (in.contains("copy_size"))
        finished.copy_size = in["copy_size"].get<std::uint64_t>();
}

Records::Records(std::filesystem::path const& output) : output_(output), folder_(output / ".hearthcell-archive") {}

std::filesystem::path Records::place(std::string const& relative, char const* ending) const {
    // Two letters of the name are a folder, so that a million workbooks do not lie in one.
    std::string const name = hash_of(relative);
    return folder_ / name.substr(0, 2) / (name.substr(2) + ending);
}

std::filesystem::path Records::rows_of_changes(std::string const& relative) const {
    return place(relative, ".csv");
}

std::filesystem::path Records::rows_of_old_and_new(std::string const& relative) const {
    return place(relative, ".old-and-new.csv");
}

std::optional<Finished> Records::find(std::string const& relative) const {
    auto const text = content_of(place(relative, ".json"));
    if (!text)
        return std::nullopt;
    try {
        return json::parse(*text).get<Finished>();
    } catch (std::exception const&) { // torn when the power failed, or of another edition
        return std::nullopt;
    }
}

std::optional<Finished> Records::find(std::string const& relative, std::string const& key) const {
    auto finished = find(relative);
    std::error_code missing;
    if (!finished || finished->key != key ||
        std::filesystem::file_size(rows_of_changes(relative), missing) != finished->rows_size)
        return std::nullopt;
    if (finished->compared_size > 0 &&
        std::filesystem::file_size(rows_of_old_and_new(relative), missing) != finished->compared_size)
        return std::nullopt;
    if (finished->copy_size && std::filesystem::file_size(output_ / relative, missing) != *finished->copy_size)
        return std::nullopt;
    return finished;
}

std::vector<std::string> Records::hashes(std::string const& relative) const {
    auto const text = content_of(place(relative, ".json"));
    json const record = json::parse(text.value_or(""), nullptr, false);
    if (!record.is_object() || !record.contains(hashes_field))
        return {};
    return record[hashes_field].get<std::vector<std::string>>();
}

void Records::claim(std::string const& relative, std::string const& hash) const {
    // What is there now stays known until the new one is in its place, should we be cut off.
    auto known = hashes(relative);
    known.push_back(hash);
    add_to_list(folder_ / list_of_copies, relative);
    auto const facts = place(relative, ".json");
    std::filesystem::create_directories(facts.parent_path());
    WholeFile file(facts);
    file.write(json{{hashes_field, known}}.dump());
    file.put_in_place(false);
}

std::vector<std::string> Records::copies() const {
    std::vector<std::string> places;
    std::ifstream list(folder_ / list_of_copies, std::ios::binary);
    for (std::string one; std::getline(list, one, name_ends);)
        if (!one.empty())
            places.push_back(one);
    std::ranges::sort(places);
    auto const repeated = std::ranges::unique(places);
    places.erase(repeated.begin(), repeated.end());
    return places;
}

void Records::keep_copies(std::vector<std::string> const& places) const {
    WholeFile list(folder_ / list_of_copies);
    for (std::string const& one : places)
        list.write(one + name_ends);
    list.put_in_place(false);
}

Records::Removal Records::remove_copy(std::string const& relative) const {
    std::filesystem::path const copy = output_ / relative;
    if (!std::filesystem::is_regular_file(std::filesystem::symlink_status(copy)))
        return Removal::not_there;
    auto const ours = hashes(relative);
    if (std::ranges::find(ours, hash_of_file(copy)) == ours.end())
        return Removal::was_changed;
    std::filesystem::remove(copy);
    std::error_code not_empty;
    for (auto folder = copy.parent_path(); folder != output_ && !not_empty; folder = folder.parent_path())
        std::filesystem::remove(folder, not_empty);
    return Removal::done;
}

bool Records::claimed(std::string const& relative) const {
    return std::filesystem::exists(place(relative, ".json"));
}

void Records::keep(std::string const& relative, Finished const& finished, std::string const& rows,
                   std::string const& rows_of_old_and_new_csv) const {
    auto const facts = place(relative, ".json");
    std::filesystem::create_directories(facts.parent_path());
    write_rows(rows_of_changes(relative), rows);
    if (!rows_of_old_and_new_csv.empty())
        write_rows(rows_of_old_and_new(relative), rows_of_old_and_new_csv);
    WholeFile file(facts);
    json record(finished);
    auto known = hashes(relative);
    if (finished.copy_size && known.size() > 1) // the last one has taken the place of the others
        known.erase(known.begin(), known.end() - 1);
    record[hashes_field] = known;
    file.write(record.dump(-1, ' ', false, json::error_handler_t::replace));
    file.put_in_place(false);
}

} // namespace hearthcell::archive
