#pragma once
// What a kernel itself has to say on a call that has succeeded.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

Remarks remarks_on(Function const& function, std::span<Value const> values, Language language);

} // namespace hearthcell
