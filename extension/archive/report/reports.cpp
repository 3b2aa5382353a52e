#include "extension/archive/report/reports.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/archive/records/changes_csv.hpp"
#include "extension/archive/records/csv.hpp"
#include "extension/archive/records/read_csv.hpp"

namespace hearthcell::archive {
namespace {

std::vector<std::string> headings_of_collected(std::vector<CollectedColumn> const& columns) {
    std::vector<std::string> headings{"file"};
    for (CollectedColumn const& column : columns) {
        headings.push_back(column.heading);
        if (!column.row_number)
            headings.push_back(column.heading + " unit");
    }
    return headings;
}

void put_or_remove(ReportFile& report, bool is_wanted, std::filesystem::path const& file) {
    if (is_wanted)
        report.put_in_place();
    else
        std::filesystem::remove(file); // of an earlier run with other options
}

} // namespace

Reports::Reports(std::filesystem::path const& output, RunFacts const& facts, SameWords const& same_words)
    : output_(output), changes_(output / "changes.csv"), collected_(output / "collected.csv"),
      problems_(output / "problems.csv"), remarks_(output / "remarks.csv"), old_and_new_(output / "old-and-new.csv"),
      agreement_(facts.compare) {
    summary_.edition = facts.edition;
    summary_.remarks.asked = facts.check;
    summary_.example.asked = facts.example;
    summary_.example.confirmed = facts.confirmed;
    remarks_.add(csv_row({"file", "sheet", "cell", "function", "value", "remark", "effect"}));
    if (facts.inventory)
        inventory_.emplace(same_words);
    for (std::string const& name : facts.collect)
        summary_.collected.emplace_back(name, 0);
    summary_.collected_columns = columns_of(facts.collect);
    summary_.compare = facts.compare;
    summary_.compared_in.resize(2 * facts.compare.size());
    old_and_new_.add(csv_row(headings_of_old_and_new()));
    problems_.add(csv_row({"file", "reason", "detail", "attempts"}));
    collected_.add(csv_row(headings_of_collected(columns_of(facts.collect))));
    try {
        changes_.write(csv_row(headings_of_changes()));
    } catch (std::system_error const& problem) {
        no_changes_ = problem;
    }
}

void Reports::finished(std::string const& relative, RunPlace const& place, Finished const& finished) {
    ++summary_.workbooks;
    summary_.add(finished);
    read_.add(relative, finished.read);
    Origin const origin{relative, (finished.copy_size ? place.output : place.base) / relative};
    findings_.workbook(origin, finished);
    for (Problem const& problem : finished.problems)
        list_of_workbook(origin, problem);
    if (inventory_)
        return inventory_->workbook(origin, Records(place.output).rows_of_changes(relative));
    add_collected(relative, finished.collected);
    add_remarks(relative, finished.check);
    if (finished.compared_size > 0)
        add_old_and_new(relative, Records(place.output).rows_of_old_and_new(relative));
    if (finished.rows_size > 0)
        add_changes(origin, Records(place.output).rows_of_changes(relative));
}

void Reports::add_collected(std::string const& relative, std::vector<CollectedRow> const& rows) {
    auto const& columns = summary_.collected_columns;
    for (CollectedRow const& row : rows) {
        std::vector<std::string> fields{shown(relative)};
        for (std::size_t column = 0; column < columns.size() && column < row.size(); ++column) {
            fields.push_back(row[column].value);
            if (!columns[column].row_number)
                fields.push_back(row[column].unit);
        }
        collected_.add(csv_row(fields));
    }
}

void Reports::add_remarks(std::string const& relative, CheckOutcome const& check) {
    for (CheckRemark const& one : check.remarks)
        remarks_.add(
            csv_row({shown(relative), one.sheet, one.cell, one.function, one.value, one.sentence, one.effect}));
    if (check.all > check.remarks.size())
        remarks_.add(csv_row({shown(relative), "", "", "", "",
                              "and " + std::to_string(check.all - check.remarks.size()) + " more", ""}));
}

void Reports::add_old_and_new(std::string const& relative, std::filesystem::path const& rows) {
    CsvReader reader([&](std::vector<std::string> const& fields) {
        if (auto const row = old_and_new_row(fields))
            agreement_.add(relative, *row);
    });
    read_pieces(rows, [&](std::string_view piece) {
        old_and_new_.add(piece);
        reader.feed(piece);
    });
}

void Reports::add_changes(Origin const& origin, std::filesystem::path const& rows) {
    CsvReader reader([&](std::vector<std::string> const& fields) {
        if (auto const row = change_row(fields))
            findings_.change(origin, *row);
    });
    try {
        read_pieces(rows, [&](std::string_view piece) {
            if (!no_changes_)
                changes_.write(piece);
            reader.feed(piece);
        });
    } catch (std::system_error const& problem) {
        no_changes_ = problem;
    }
}

void Reports::failed(std::string const& relative, RunPlace const& place, Problem const& problem, bool workbook) {
    summary_.workbooks += workbook ? 1 : 0;
    list_of_workbook({relative, place.base / relative}, problem);
}

void Reports::list_of_workbook(Origin const& origin, Problem const& problem) {
    findings_.problem(origin, problem);
    list(origin.relative, problem);
}

void Reports::list(std::string const& file, Problem const& problem) {
    ++summary_.problems[std::string(words(problem.reason))];
    problems_.add(csv_row({shown(file), std::string(words(problem.reason)), line_of(problem.detail, longest_detail),
                           std::to_string(problem.attempts)}));
}

void Reports::complete() {
    summary_.example.odd = read_.oddities();
    for (std::string const& name : names_nowhere(summary_))
        list(name, {Reason::nowhere, "no workbook has a cell or name that is called so", 1});
    summary_.compared = lines_of(agreement_);
    if (!inventory_)
        return;
    inventory_->finish();
    summary_.inventory = inventory_->counts();
}

std::vector<Page> Reports::pages() const {
    if (!inventory_)
        return pages_of(summary_, findings_, agreement_);
    std::vector<Page> pages = inventory_->pages(summary_);
    pages.push_back(page_of_problems(summary_, findings_));
    return pages;
}

void Reports::put_in_place() {
    if (inventory_) {
        inventory_->put_in_place(output_);
        std::filesystem::remove(output_ / "changes.csv"); // of an earlier run with other options
    } else {
        put_changes_in_place();
        InventoryReport::remove(output_);
    }
    put_or_remove(collected_, !summary_.collected.empty(), output_ / "collected.csv");
    put_or_remove(old_and_new_, !summary_.compare.empty(), output_ / "old-and-new.csv");
    put_or_remove(remarks_, summary_.remarks.asked, output_ / "remarks.csv");
    if (summary_.example.asked) {
        ReportFile read(output_ / "read.csv");
        read.add(read_.csv());
        read.put_in_place();
    } else
        for (char const* report : {"read.csv", "carried.csv", "constants.csv", "pairs.csv"}) // of an earlier run
            std::filesystem::remove(output_ / report);
    problems_.put_in_place();
    ReportFile text(output_ / "summary.txt");
    text.add(text_of(summary_));
    text.put_in_place();
}

void Reports::put_changes_in_place() {
    // The largest first: when it finds no room, the others can still say so.
    try {
        if (!no_changes_)
            changes_.put_in_place();
    } catch (std::system_error const& problem) {
        no_changes_ = problem;
    }
    if (no_changes_)
        list("changes.csv", {Reason::not_written, no_changes_->code().message(), 1});
}

} // namespace hearthcell::archive
