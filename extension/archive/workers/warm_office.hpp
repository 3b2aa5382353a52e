#pragma once
// The office of a worker: started once for many workbooks.

#include "extension/archive/workers/watchdog.hpp"
#include "extension/office/office.hpp"

#include <filesystem>
#include <memory>
#include <stdexcept>

namespace hearthcell::archive {

/// No office with Hearthcell can be had: nothing that a workbook is to blame for.
class NoOffice : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// One office that is kept running, renewed now and then so that its memory stays flat, and replaced when it died.
class WarmOffice {
public:
    WarmOffice(std::filesystem::path package, unsigned files_each, Watchdog& watchdog);
    ~WarmOffice();

    office::Office& get(); // for the next workbook

    /// Ends it at once: it hangs, or it died, or nobody knows what a workbook did to it.
    void drop();

private:
    void start();

    std::filesystem::path package_;
    unsigned files_each_, files_ = 0;
    Watchdog& watchdog_;
    std::unique_ptr<office::Office> office_;
};

} // namespace hearthcell::archive
