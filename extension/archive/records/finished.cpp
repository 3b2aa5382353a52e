#include "extension/archive/records/finished.hpp"

#include "extension/archive/files/whole_file.hpp"
#include "extension/archive/records/csv.hpp"

#include <nlohmann/json.hpp>

namespace hearthcell::archive {

using nlohmann::json;

void to_json(json& out, Finished const& finished) {
    out = {{"key", finished.key}, {"tally", finished.tally}};
    out["problems"] = json::array();
    for (Problem const& problem : finished.problems)
        out["problems"].push_back(
            {{"reason", words(problem.reason)}, {"detail", as_utf8(problem.detail)}, {"attempts", problem.attempts}});
    out["collected"] = json::array();
    for (Collected const& one : finished.collected)
        out["collected"].push_back({{"value", one.value}, {"unit", one.unit}, {"found", one.found}});
    out["rows_size"] = finished.rows_size;
    if (finished.copy_size)
        out["copy_size"] = *finished.copy_size;
}

void from_json(json const& in, Finished& finished) {
    in.at("key").get_to(finished.key);
    in.at("tally").get_to(finished.tally);
    for (json const& problem : in.at("problems"))
        finished.problems.push_back({reason_of(problem.at("reason").get<std::string>()),
                                     problem.at("detail").get<std::string>(), problem.at("attempts").get<int>()});
    for (json const& one : in.at("collected"))
        finished.collected.push_back(
            {one.at("value").get<std::string>(), one.at("unit").get<std::string>(), one.at("found").get<bool>()});
    in.at("rows_size").get_to(finished.rows_size);
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
    if (finished->copy_size && std::filesystem::file_size(output_ / relative, missing) != *finished->copy_size)
        return std::nullopt;
    return finished;
}

void Records::claim(std::string const& relative) const {
    if (claimed(relative))
        return;
    auto const facts = place(relative, ".json");
    std::filesystem::create_directories(facts.parent_path());
    WholeFile(facts).put_in_place(false);
}

bool Records::claimed(std::string const& relative) const {
    return std::filesystem::exists(place(relative, ".json"));
}

void Records::keep(std::string const& relative, Finished const& finished, std::string const& rows) const {
    auto const facts = place(relative, ".json");
    std::filesystem::create_directories(facts.parent_path());
    WholeFile changes(rows_of_changes(relative));
    changes.write(rows);
    changes.put_in_place(false); // after a power failure it is done again: what is costly is to wait for the disk
    WholeFile file(facts);
    file.write(json(finished).dump());
    file.put_in_place(false);
}

} // namespace hearthcell::archive
