// hearthcell-benchmark PACKAGE EMPTY-TWIN [--markdown] [--only PART] [--against OTHER-PACKAGE] [ROWS]
// PART is functions, cells, rows, logs or sheets. With another package it measures only that.

#include "parts.hpp"

#include <cstdio>
#include <cstdlib>
#include <exception>
#include <fstream>
#include <stdexcept>
#include <string_view>
#include <thread>

namespace {

using namespace hearthcell;
using namespace hearthcell::benchmarks;

struct Options {
    std::filesystem::path package, twin, other;
    bool markdown = false;
    std::string only;
    int rows = 20000;
};

std::string processor() {
    std::ifstream info("/proc/cpuinfo");
    for (std::string line; std::getline(info, line);)
        if (line.starts_with("model name"))
            return line.substr(line.find(':') + 2);
    return "unknown processor";
}

void run(Options const& options) {
    office::Settings settings{.package = options.package, .further_packages = {options.twin}};
    office::Office office(settings);
    if (office.functions("STOVE.").empty() || office.functions("EMPTY.").empty())
        throw std::runtime_error("LibreOffice did not load both packages");
    Report report(options.markdown);
    report.note(processor() + ", " + std::to_string(std::thread::hardware_concurrency()) + " cores; " +
                std::to_string(options.rows) + " rows, hard recalculation, medians of calls measured in turn");
    if (!options.other.empty())
        return measure_against_package(office, {.package = options.other}, report, options.rows);
    auto const wanted = [&](std::string_view part) { return options.only.empty() || options.only == part; };
    if (wanted("functions"))
        measure_functions(office, report, options.rows);
    if (wanted("cells"))
        measure_against_cells(office, report, options.rows);
    if (wanted("rows"))
        measure_each_row(office, report);
    if (wanted("logs"))
        measure_logs(office, report);
    if (wanted("sheets"))
        measure_sheets(settings, report);
}

Options read(int count, char** words) {
    if (count < 3)
        throw std::runtime_error("usage: hearthcell-benchmark PACKAGE EMPTY-TWIN [--markdown] [--only PART] "
                                 "[--against OTHER-PACKAGE] [ROWS]");
    Options options;
    options.package = words[1];
    options.twin = words[2];
    for (int i = 3; i < count; ++i) {
        if (std::string_view(words[i]) == "--markdown")
            options.markdown = true;
        else if (std::string_view(words[i]) == "--only" && i + 1 < count)
            options.only = words[++i];
        else if (std::string_view(words[i]) == "--against" && i + 1 < count)
            options.other = words[++i];
        else
            options.rows = std::atoi(words[i]);
    }
    if (options.rows < 10 || options.rows > 1000000)
        throw std::runtime_error("rows must be 10 to 1000000");
    return options;
}

} // namespace

int main(int count, char** words) {
    try {
        run(read(count, words));
        return 0;
    } catch (std::exception const& error) {
        std::fprintf(stderr, "hearthcell-benchmark: %s\n", error.what());
        return 1;
    }
}
