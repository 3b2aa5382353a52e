#pragma once
// Programs without a network that see only their own folders and what programs are made of.

#include "extension/office/confining.hpp"

namespace hearthcell::office {

/// Bubblewrap, where it is installed and the kernel allows it what it needs (tried once); else null.
Confining const* confining();

} // namespace hearthcell::office
