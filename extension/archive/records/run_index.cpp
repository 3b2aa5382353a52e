#include "extension/archive/records/run_index.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/archive/records/finished.hpp"

#include <nlohmann/json.hpp>

namespace hearthcell::archive {
namespace {

using nlohmann::json;

// Names of files may be any bytes but NUL, and JSON only holds UTF-8: so NAME NUL JSON, one after the other. The first
// name is that of the base.
constexpr char name_ends = '\0', line_ends = '\n';

std::filesystem::path place(std::filesystem::path const& output) {
    return Records(output).folder() / "files";
}

std::string line(std::string const& name, json const& rest) {
    return name + name_ends + rest.dump(-1, ' ', false, json::error_handler_t::replace) + line_ends;
}

} // namespace

IndexWriter::IndexWriter(std::filesystem::path const& output, RunFacts const& facts) : file_(place(output)) {
    file_.add(line(facts.base.string(), {{"edition", facts.edition},
                                         {"options", facts.key_of_options},
                                         {"collect", facts.collect},
                                         {"compare", facts.compare},
                                         {"check", facts.check},
                                         {"inventory", facts.inventory},
                                         {"example", facts.example},
                                         {"confirmed", facts.confirmed}}));
}

void IndexWriter::add(RunEntry const& entry) {
    json rest = json::object();
    if (!entry.workbook)
        rest["workbook"] = false;
    if (entry.problem)
        rest["problem"] = {{"reason", words(entry.problem->reason)},
                           {"detail", line_of(entry.problem->detail, longest_detail)},
                           {"attempts", entry.problem->attempts}};
    file_.add(line(entry.relative, rest));
}

void IndexWriter::remove(std::filesystem::path const& output) {
    std::filesystem::remove(place(output));
}

IndexReader::IndexReader(std::filesystem::path const& output)
    : output_(output.string()), file_(place(output), std::ios::binary) {
    std::string base, rest;
    if (!std::getline(file_, base, name_ends) || !std::getline(file_, rest, line_ends))
        throw std::runtime_error("there is no finished run in " + output_);
    json const header = json::parse(rest);
    facts = {header.at("edition").get<std::string>(),
             header.at("options").get<std::string>(),
             header.at("collect").get<std::vector<std::string>>(),
             header.value("compare", std::vector<std::string>()),
             base,
             header.value("check", false),
             header.value("inventory", false),
             header.value("example", false),
             header.value("confirmed", std::string())};
}

std::optional<RunEntry> IndexReader::next() {
    RunEntry entry;
    std::string rest;
    if (!std::getline(file_, entry.relative, name_ends))
        return std::nullopt;
    if (!std::getline(file_, rest, line_ends))
        throw std::runtime_error("the list of the files in " + output_ + " is cut off");
    json const facts_of_file = json::parse(rest);
    entry.workbook = facts_of_file.value("workbook", true);
    if (facts_of_file.contains("problem")) {
        json const& problem = facts_of_file["problem"];
        entry.problem = Problem{reason_of(problem.at("reason").get<std::string>()),
                                problem.at("detail").get<std::string>(), problem.at("attempts").get<int>()};
    }
    return entry;
}

} // namespace hearthcell::archive
