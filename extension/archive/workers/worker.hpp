#pragma once
// What a worker process does.

#include "extension/archive/workers/task.hpp"

#include <filesystem>

namespace hearthcell::archive {

/// The life of a worker: a process of its own with one warm office. Takes numbers of workbooks from the scheduler,
/// does them one after the other, and ends when it is told so. A worker that dies takes nobody with it, and its office
/// dies with it; that is why it is a process and no thread.
[[noreturn]] void work(Task const& task, int scheduler, std::filesystem::path const& scratch);

} // namespace hearthcell::archive
