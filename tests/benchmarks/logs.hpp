#pragma once

#include "office/document.hpp"

#include <string>
#include <vector>

namespace hearthcell::benchmarks {

/// One function of a log over a million readings, against an empty call that is handed the same columns.
struct LogTiming {
    std::string name;
    double milliseconds, empty_milliseconds;
};
std::vector<LogTiming> measure_logs(office::Office& office, int readings);

} // namespace hearthcell::benchmarks
