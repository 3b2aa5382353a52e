#pragma once
// How scheduler and workers talk: small JSON texts over a socket that keeps texts apart.
// A worker is a fork of the scheduler and knows the list of workbooks, so that only numbers of it travel.

#include <nlohmann/json_fwd.hpp>

#include <optional>

namespace hearthcell::archive {

/// False when the other side is gone.
bool send(int socket, nlohmann::json const& message);

/// Waits. Nothing when the other side is gone.
std::optional<nlohmann::json> receive(int socket);

} // namespace hearthcell::archive
