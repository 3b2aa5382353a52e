// Stands in for extension/addin/cell_call.cpp in the empty twin: is handed the same and computes nothing.

#include "extension/addin/cell_call.hpp"

namespace hearthcell::addin {

void call_from_cell(Function const&, Call const& call, Results const& results) noexcept {
    if (call.method.pReturnTypeRef->eTypeClass == typelib_TypeClass_DOUBLE)
        *static_cast<double*>(call.result) = 1;
    else
        results.make(1.0, static_cast<uno_Any*>(call.result));
}

} // namespace hearthcell::addin
