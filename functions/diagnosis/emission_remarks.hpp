#pragma once
// What EXPLAIN adds to the results of the functions of gases, hoods and rooms: what only their kernels know.

#include "functions/contract/kernel.hpp"

namespace hearthcell::diagnosis {

Remarks remark_on_carbon_balance(Given const& given, Language language);
Remarks remark_on_hood(Given const& given, Language language);

/// What the model of a room cannot tell.
Remarks remark_on_room(Given const& given, Language language);

} // namespace hearthcell::diagnosis
