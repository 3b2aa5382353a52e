#pragma once
// The names that the add-in goes by: of its service, which is its implementation's name, too, and of its interface.

namespace hearthcell::addin {

extern char const service[];
extern char const cell_functions[];

} // namespace hearthcell::addin
