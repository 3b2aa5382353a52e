#pragma once
// The list of all files of a run, kept with their records.

#include "extension/archive/files/problem.hpp"
#include "extension/archive/records/report_file.hpp"

#include <filesystem>
#include <fstream>
#include <optional>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// What a run was about, kept with its records so that its reports can be joined with others'.
struct RunFacts {
    std::string edition;        // of the package
    std::string key_of_options; // see Task
    std::vector<std::string> collect, compare;
    std::filesystem::path base; // that the paths in the reports are relative to
    bool check = false;         // whether the workbooks were checked
    bool inventory = false;     // else a recalculation
    bool example = false;       // whether one was carried
    std::string confirmed = {}; // what was said of its constants
};

/// A line of the reports, in the order of the files.
struct RunEntry {
    std::string relative;
    bool workbook = true;           // else something that was given or found and is none
    std::optional<Problem> problem; // why it is not finished; nothing: there is a record of it
};

/// Writes what a run came to, in the order of the files. It is in its place only when the run came to its end.
class IndexWriter {
public:
    IndexWriter(std::filesystem::path const& output, RunFacts const& facts);
    void add(RunEntry const& entry);
    void put_in_place() { file_.put_in_place(); }

    static void remove(std::filesystem::path const& output); // a run begins

private:
    ReportFile file_;
};

/// Reads it again, entry by entry.
class IndexReader {
public:
    explicit IndexReader(std::filesystem::path const& output); // throws std::exception where there is no finished run
    std::optional<RunEntry> next();

    RunFacts facts;

private:
    std::string output_;
    std::ifstream file_;
};

} // namespace hearthcell::archive
