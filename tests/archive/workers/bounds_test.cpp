// One workbook costs one workbook: its memory, its time and its size are bounded, and what passes a bound is listed.

#include "tests/archive/runs/archive_runs.hpp"

#include "tests/archive/made/flat_odf.hpp"
#include "tests/archive/made/good_workbooks.hpp"

#include <gsf/gsf-outfile-msole.h>
#include <gsf/gsf-outfile.h>
#include <gsf/gsf-output-stdio.h>
#include <sys/resource.h>

#include <chrono>
#include <fstream>

namespace hearthcell::tests::archive {
namespace {

std::filesystem::path folder_with_a_good_one(std::string const& name) {
    std::filesystem::path const folder = fresh_folder(name) / "input";
    std::filesystem::create_directories(folder);
    write_odf(good_workbook(0), folder / "good.fods");
    return folder;
}

Row only_problem(Ended const& ended) {
    std::vector<Row> const rows = read_csv(ended.output / "problems.csv");
    EXPECT_EQ(rows.size(), 1U);
    return rows.empty() ? Row{} : rows.front();
}

/// A record of a workbook of 1997: kind, size, bytes.
std::string record(unsigned kind, std::string const& bytes) {
    std::string const head{char(kind & 0xFFU), char(kind >> 8U), char(bytes.size() & 0xFFU), char(bytes.size() >> 8U)};
    return head + bytes;
}

/// Sheets without number that all begin at the same place, and each is long.
void write_sheets_at_one_place(std::filesystem::path const& file) {
    constexpr unsigned sheets = 200'000, records = 20'000;
    constexpr unsigned begin = 0x0809, end = 0x000A, sheet = 0x0085, any = 0x0200;
    std::string const start = record(begin, std::string(16, '\0'));
    std::string const one = record(sheet, std::string(8, '\0'));
    auto const place = static_cast<unsigned>(start.size() + sheets * one.size() + 4);
    std::string address;
    for (unsigned byte = 0; byte < 4; ++byte)
        address += static_cast<char>(place >> (8 * byte) & 0xFFU);
    std::string stream = start;
    for (unsigned number = 0; number < sheets; ++number)
        stream += record(sheet, address + std::string(4, '\0'));
    stream += record(end, "") + start;
    for (unsigned number = 0; number < records; ++number)
        stream += record(any, "");
    stream += record(end, "");

    GsfOutput* const disk = gsf_output_stdio_new(file.c_str(), nullptr);
    GsfOutfile* const container = gsf_outfile_msole_new(disk);
    GsfOutput* const workbook = gsf_outfile_new_child(container, "Workbook", 0);
    gsf_output_write(workbook, stream.size(), reinterpret_cast<guint8 const*>(stream.data()));
    gsf_output_close(workbook);
    gsf_output_close(GSF_OUTPUT(container)); // and what it writes to
    for (GsfOutput* const part : {workbook, GSF_OUTPUT(container), disk})
        g_object_unref(part);
}

} // namespace

TEST(ABound, OfMemoryEndsAnOfficeThatGrows) {
    auto const folder = folder_with_a_good_one("memory");
    write_odf(
        {.path = {},
         .sheets =
             {{.name = "Data",
               .rows = {{{.stored = 0.0, .formula = "=HEARTHCELL.STOVE.SERIES([.A10:.XFD1048576])", .now = {}}}}}},
         .names = {}},
        folder / "wide.fods");
    Ended const ended = run("memory", {folder, "--output", output_of("memory"), "--workers", "2", "--memory-limit",
                                       "500", "--no-summary", "--time-limit", "300"});
    EXPECT_EQ(ended.status, 1) << ended.complained;
    Row const problem = only_problem(ended);
    EXPECT_EQ(problem.at("file"), "wide.fods");
    EXPECT_EQ(problem.at("reason"), "memory limit");
    EXPECT_EQ(problem.at("detail"), "more than 500 MiB");
    EXPECT_EQ(problem.at("attempts"), "2");
    EXPECT_EQ(copies(ended.output), std::set<std::string>{"good.fods"});
    EXPECT_EQ(ended.left_behind, Words{});
}

TEST(ABound, OfTimeHoldsForOurOwnReaders) {
    auto const folder = folder_with_a_good_one("sheets");
    write_sheets_at_one_place(folder / "sheets.xls");
    Ended const ended =
        run("sheets", {folder, "--output", output_of("sheets"), "--workers", "1", "--time-limit", "5", "--no-summary"});
    EXPECT_EQ(ended.status, 1) << ended.complained;
    Row const problem = only_problem(ended);
    EXPECT_EQ(problem.at("file"), "sheets.xls");
    EXPECT_EQ(problem.at("reason"), "timed out");
    EXPECT_EQ(problem.at("detail"), "longer than 5 s");
    EXPECT_EQ(copies(ended.output), std::set<std::string>{"good.fods"});
    EXPECT_EQ(ended.left_behind, Words{});
}

TEST(ABound, OfSizeIsLookedAtBeforeTheFileIsRead) {
    auto const folder = folder_with_a_good_one("sizes");
    write_odf(good_workbook(0), folder / "long.fods");
    std::ofstream(folder / "long.fods", std::ios::app) << std::string(5 << 20, ' ');
    std::ofstream(folder / "sparse.ods") << "PK";
    std::filesystem::resize_file(folder / "sparse.ods", std::uint64_t{10} << 30);
    Ended const ended =
        run("sizes", {folder, "--output", output_of("sizes"), "--workers", "1", "--size-limit", "1", "--no-summary"});
    EXPECT_EQ(ended.status, 1) << ended.complained;
    std::map<std::string, std::set<std::string>> const expected{{"long.fods", {"too large"}},
                                                                {"sparse.ods", {"too large"}}};
    EXPECT_EQ(problems(ended.output), expected);
    EXPECT_EQ(copies(ended.output), std::set<std::string>{"good.fods"});
}

TEST(ABound, OfMemoryThatTheMachineSetsIsOneWorkbooksProblem) {
    auto const folder = folder_with_a_good_one("machine");
    std::string const cell = R"(<table:table-row><table:table-cell table:formula="of:=1" office:value-type="string" )"
                             R"(table:number-columns-repeated="16000"><text:p>)" +
                             std::string(5 << 20, 'x') + "</text:p></table:table-cell></table:table-row>";
    write_odf({.path = {}, .sheets = {{.name = "Data", .rows = {}, .more_rows = cell}}, .names = {}},
              folder / "text.ods");
    // Less than what the readers of two workers might take by the limit of size.
    Setting const setting{.limits = {{RLIMIT_AS, std::uint64_t{2'000'000} << 10}}};
    Words const words{folder,         "--output", output_of("machine"), "--workers", "2",
                      "--size-limit", "8000",     "--memory-limit",     "8GiB",      "--no-summary"};
    for (int attempt = 0; attempt < 2; ++attempt) {
        Ended const ended = run("machine", words, setting);
        EXPECT_EQ(ended.status, 1) << ended.complained;
        EXPECT_EQ(only_problem(ended).at("reason"), "too large") << only_problem(ended).at("detail");
        EXPECT_EQ(copies(ended.output), std::set<std::string>{"good.fods"});
    }
}

TEST(ABound, OfTheSizeOfFilesIsListedOrSaid) {
    auto const folder = folder_with_a_good_one("file size");
    Words const words{folder, "--output", output_of("file size"), "--workers", "1", "--no-summary"};
    Ended const none = run("file size", words, {.limits = {{RLIMIT_FSIZE, 10 << 10}}});
    EXPECT_EQ(none.status, 2);
    EXPECT_NE(none.complained.find("File too large"), std::string::npos) << none.complained;
    EXPECT_EQ(none.left_behind, Words{});
    // Room for what the package holds, and none for a longer copy.
    write_odf(good_workbook(1), folder / "long.fods");
    std::ofstream(folder / "long.fods", std::ios::app) << std::string(12 << 20, ' ');
    Ended const one = run("file size", words, {.limits = {{RLIMIT_FSIZE, 8 << 20}}});
    EXPECT_EQ(one.status, 1) << one.complained;
    EXPECT_EQ(only_problem(one).at("file"), "long.fods");
    EXPECT_EQ(only_problem(one).at("reason"), "output not written");
    EXPECT_EQ(copies(one.output), std::set<std::string>{"good.fods"});
}

} // namespace hearthcell::tests::archive
