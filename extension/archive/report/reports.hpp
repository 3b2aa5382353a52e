#pragma once
// The CSV files and summary.txt.

#include "extension/archive/records/report_file.hpp"
#include "extension/archive/records/run_index.hpp"
#include "extension/archive/report/agreement.hpp"
#include "extension/archive/report/inventory_report.hpp"
#include "extension/archive/report/read_report.hpp"
#include "extension/archive/report/summary.hpp"

#include <optional>
#include <system_error>

namespace hearthcell::archive {

/// Where a run keeps its records and copies, and where its originals are.
struct RunPlace {
    std::filesystem::path output;
    std::filesystem::path base;
};

/// changes.csv, collected.csv, old-and-new.csv, problems.csv, remarks.csv and summary.txt, written from one workbook
/// after the other in the order of their names: nothing is held that grows with their number but the files themselves.
class Reports {
public:
    Reports(std::filesystem::path const& output, RunFacts const& facts, SameWords const& same_words = {});

    /// A workbook of which there is a record.
    void finished(std::string const& relative, RunPlace const& place, Finished const& finished);
    /// One that could not be done, or something that is no workbook.
    void failed(std::string const& relative, RunPlace const& place, Problem const& problem, bool workbook = true);
    /// Something else that has to be said: of a report itself, for example.
    void list(std::string const& file, Problem const& problem);
    void list_of_workbook(Origin const& origin, Problem const& problem);
    void in_several_runs() { ++summary_.in_several_runs; }

    [[nodiscard]] Summary const& summary() const { return summary_; }
    /// What stands on the pages of the summary, when all is there.
    [[nodiscard]] std::vector<Page> pages() const;
    void complete(); // all are there; before pages and put_in_place

    void put_in_place();

private:
    void add_collected(std::string const& relative, std::vector<CollectedRow> const& rows);
    void add_remarks(std::string const& relative, CheckOutcome const& check);
    void put_changes_in_place();
    void add_old_and_new(std::string const& relative, std::filesystem::path const& rows);
    void add_changes(Origin const& origin, std::filesystem::path const& rows);

    std::filesystem::path output_;
    Summary summary_;
    Findings findings_;
    WholeFile changes_;
    ReportFile collected_, problems_, remarks_, old_and_new_;
    std::optional<std::system_error> no_changes_;
    std::optional<InventoryReport> inventory_;
    ReadReport read_;
    Agreement agreement_;
};

} // namespace hearthcell::archive
