#include "parts.hpp"
#include "timing.hpp"

#include <fstream>
#include <stdexcept>
#include <unistd.h>

namespace hearthcell::benchmarks {
namespace {

/// Mebibytes of memory that a process holds.
double resident(pid_t process) {
    std::ifstream statm("/proc/" + std::to_string(process) + "/statm");
    double all = 0, held = 0;
    statm >> all >> held;
    if (!statm)
        throw std::runtime_error("cannot tell how much memory the office holds");
    return held * double(sysconf(_SC_PAGESIZE)) / (1 << 20);
}

struct Grown {
    double microseconds, bytes; // a row
};

/// In an office of its own, since memory that is given back stays with the process.
Grown measure(office::Settings const& settings, std::string const& formula, int rows) {
    office::Office office(settings);
    Subject(office, {formula}, {1240}, 100).measure(); // what the first call loads
    double const before = resident(office.process_id());
    Subject subject(office, {formula}, {1240}, rows);
    subject.measure();
    double const after = resident(office.process_id());
    return {subject.measure(), (after - before) * (1 << 20) / rows};
}

} // namespace

void measure_sheets(office::Settings const& settings, Report& report) {
    report.note("A sheet of many rows, each with a number and a formula that reads it (an office for each line):");
    report.head({"formula", "rows", "µs a row", "bytes a row"});
    for (char const* const formula : {"=A1", "=EMPTY.BOILINGPOINT(A1)", "=STOVE.BOILINGPOINT(A1)"})
        for (int rows : {100000, 1000000}) {
            Grown const grown = measure(settings, formula, rows);
            report.row(formula, {std::to_string(rows), figure(grown.microseconds, 2), figure(grown.bytes, 0)});
        }
}

} // namespace hearthcell::benchmarks
