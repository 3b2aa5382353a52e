#pragma once

#include <nlohmann/json.hpp>

#include <optional>

namespace hearthcell::archive {

// Scheduler and workers talk in small JSON texts over a socket that keeps texts apart. A worker is a fork of the
// scheduler and knows the list of workbooks, so that only numbers of it travel.

/// False when the other side is gone.
bool send(int socket, nlohmann::json const& message);

/// Waits. Nothing when the other side is gone.
std::optional<nlohmann::json> receive(int socket);

} // namespace hearthcell::archive
