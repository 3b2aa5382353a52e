#include "extension/addin/identity.hpp"

namespace hearthcell::addin {

char const service[] = "hearthcell.Stove";
char const cell_functions[] = "hearthcell.XStove";

} // namespace hearthcell::addin
