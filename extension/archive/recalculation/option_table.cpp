#include "extension/archive/recalculation/option_table.hpp"

#include "functions/edition.hpp"

#include <CLI/CLI.hpp>

#include <map>
#include <thread>

namespace hearthcell::archive {
namespace {

constexpr int least_memory = 300; // MiB; an office that has done nothing yet holds half of that

} // namespace

char const* const description =
    "Recalculates archives of workbooks (.ods, .fods, .xlsx, .xls) with Hearthcell and lists "
    "every result that changed. Originals are never touched.";

char const* const footer = R"(In the output folder:
  a recalculated copy of every workbook at the same relative path
  changes.csv    every result that is another one now
  collected.csv  with --collect: one row a workbook, or a row for each of a block
  old-and-new.csv with --compare: new results beside old ones
  problems.csv   what could not be done, and why
  remarks.csv    with --check: what looks wrong or odd in the workbooks
  layouts.csv    with --inventory: which layouts the sheets have, and in what they differ
  formulas.csv   with --inventory: hand-written formulas, and the functions that take their place
  same-words.txt with --inventory: labels that may mean the same
  carried.csv    with --example: what is carried, and what is not
  constants.csv  with --example: values that go into every sheet
  pairs.csv      with --example: old results, and the new cells over or beside them
  read.csv       with --example: lowest, median, highest value that each argument read; what is ten times off
  summary.txt    what is also printed at the end
  summary.ods    the same and more on pages to be looked at and printed, with charts
  .hearthcell-archive  what is finished: the same command goes on where it was stopped

Exit status: 0 all well, 1 finished with problems, 2 could not run, 130 or 143 stopped by a signal.

Examples:
  hearthcell-archive results --output recalculated
  hearthcell-archive 2018 2019 --output check --dry-run --collect efficiency,Summary.C7
  hearthcell-archive 2019 --output check --dry-run --check
  hearthcell-archive old-sheets --inventory --output inventory
  hearthcell-archive old-sheets --example new.ods --of old-sheets/2014/run.ods --try --output trial
  hearthcell-archive --merge /mnt/one/out /mnt/two/out --output joined
  find results -name '*2019*' -print0 | hearthcell-archive --null --output o --set calorific_value=18.2
)";

void describe(CLI::App& app, Raw& raw) {
    Options& options = raw.options;
    options.workers = std::max(1U, std::thread::hardware_concurrency());
    app.add_option(
        "INPUT", raw.inputs,
        "Workbooks, and folders that hold them at any depth. A list of them is read from standard input when "
        "there is none or where it is '-', one a line.");
    app.add_option("--output", raw.output, "Folder for the copies and the reports; outside the inputs")
        ->type_name("DIR");
    app.add_option("--base", raw.base,
                   "Paths in the output are relative to this folder instead of the folder that holds all inputs; for "
                   "lists that are parts of one archive")
        ->type_name("DIR");
    app.add_flag("--null", options.null_separated, "The list on standard input is separated by NUL, not by lines");
    app.add_option("--collect", raw.collect,
                   "Defined names, cells (Sheet.B4) or blocks of cells (Season.A5:P14, a row of the sheet a row of the "
                   "table), separated by commas, whose results go into collected.csv; repeatable")
        ->type_name("NAME,…")
        ->allow_extra_args(false);
    app.add_option("--set", raw.set,
                   "Puts a number, a text or a formula (B5==A1*2) into a defined name or cell of every workbook before "
                   "it is recalculated; repeatable")
        ->type_name("NAME=VALUE")
        ->allow_extra_args(false);
    app.add_option("--compare", raw.compare,
                   "Sets a new cell, column or name (Run.C20) against an old result (Run.B20), as it was saved: "
                   "old-and-new.csv, a page of the summary with a chart, and which published method the old numbers "
                   "follow; repeatable")
        ->type_name("NEW=OLD")
        ->allow_extra_args(false);
    app.add_flag("--values", options.values,
                 "Copies for sharing: formulas with Hearthcell's functions become values, and notes of their cells");
    app.add_flag("--dry-run", options.dry_run, "Reports only, no copies");
    app.add_flag("--check", options.check,
                 "Puts every call of a function of ours to STOVE.EXPLAIN and holds rows against their neighbours: "
                 "remarks.csv and a page of the summary");
    app.add_flag("--strict", options.strict, "With remarks of --check the exit status is 1, as with problems");
    app.add_flag("--inventory", options.inventory,
                 "Recalculates nothing, but says which layouts the sheets have and what their hand-written formulas "
                 "compute: layouts.csv, formulas.csv. For old sheets without functions of ours");
    app.add_option(
           "--example", raw.example,
           "An old sheet into which functions were typed, over its formulas or beside them. The same is done on "
           "every sheet with the same labels. Repeatable, each with its --of")
        ->type_name("NEW")
        ->allow_extra_args(false);
    app.add_option("--of", raw.of, "That sheet as it was: what differs in NEW is carried")
        ->type_name("OLD")
        ->allow_extra_args(false);
    app.add_flag("--plan", options.plan,
                 "With --example: says only what would be carried (carried.csv, constants.csv, pairs.csv)");
    app.add_flag("--yes", options.yes,
                 "With --example: the constants that go into every sheet, and what no sheet shows, are right");
    app.add_flag("--try", options.a_few,
                 "With --example: only five workbooks that it fits, the oldest, the newest and three between");
    app.add_flag("--partly", options.partly,
                 "With --example: also sheets that it fits only in a part get what fits; the rest is listed");
    app.add_option(
           "--values-by-folder", raw.values_by_folder,
           "With --example: other values of its constants, a line 'folder,argument,value' for each folder, year "
           "or workbook")
        ->type_name("FILE");
    app.add_option(
           "--same-words", raw.same_words,
           "With --inventory or --example: words that mean the same on labels, a line 'word = word' for each pair; "
           "same-words.txt in the output of an inventory proposes some")
        ->type_name("FILE");
    app.add_flag(
        "--merge", options.merge,
        "Joins the reports of several runs: INPUT are their output folders, on this machine or reached through "
        "it. They must have had the same package, options and base");
    app.add_flag("--no-summary{false}", options.summary, "Without summary.ods");
    app.add_option("--workers", options.workers, "LibreOffice processes side by side")
        ->type_name("N")
        ->capture_default_str()
        ->check(CLI::Range(1, 1024).description(""));
    app.add_option("--time-limit", options.time_limit, "For one workbook; then its process is ended and replaced")
        ->type_name("SECONDS")
        ->capture_default_str()
        ->check(CLI::Range(1e-3, 1e6).description(""));
    app.add_option("--recycle", options.recycle, "A process is started anew after so many workbooks")
        ->type_name("FILES")
        ->capture_default_str()
        ->check(CLI::Range(1, 1000000).description(""));
    app.add_option(
           "--size-limit", options.size_limit,
           "A workbook that is larger, that unpacks to more, or whose results fill more than half of that in memory, "
           "is not opened")
        ->type_name("MIB")
        ->capture_default_str()
        ->check(CLI::Range(1, 1 << 20).description(""));
    app.add_option(
           "--memory-limit", options.memory_limit,
           "Of memory for one process and the LibreOffice beside it; then they are ended and replaced. 4GiB is the "
           "same as 4096")
        ->type_name("MIB")
        ->capture_default_str()
        ->transform(CLI::AsNumberWithUnit(std::map<std::string, std::uint64_t>{{"mib", 1}, {"gib", 1024}},
                                          CLI::AsNumberWithUnit::CASE_INSENSITIVE, "")
                        .description(""))
        ->check(CLI::Range(least_memory, 1 << 24).description(""));
    app.add_option(
           "--package", raw.package,
           "Hearthcell's package, or the folder of an unpacked one; else hearthcell.oxt beside this program or in "
           "../share/hearthcell, or the package that this program lies in")
        ->type_name("FILE");
    app.add_option("--office", raw.office,
                   "Folder of the LibreOffice to work with; else the one that UNO_PATH names, that of soffice on the "
                   "PATH, /usr/lib/libreoffice, or the newest /opt/libreoffice*")
        ->type_name("DIR");
    app.add_flag("--quiet", options.quiet, "No progress and no summary");
    app.add_flag("--json", options.json, "The summary as JSON, on standard output");
    app.add_flag("--progress-lines", options.progress_lines,
                 "For programs that start this one: how far it is, as lines of JSON on standard error");
    app.set_version_flag("--version", std::string(edition), "Prints the edition");
    app.footer(footer);
}

} // namespace hearthcell::archive
