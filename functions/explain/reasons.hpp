#pragma once
// What each reason means to a cell and to a person.

#include "functions/catalogue/catalogue.hpp"

namespace hearthcell {

struct Meaning {
    Reason reason;
    Error error;
    std::string_view sentence; ///< {argument}, {given} and {allowed} are filled in
};

std::span<Meaning const> meanings();
Meaning const& meaning_of(Reason reason);
inline Error error_of(Reason reason) {
    return meaning_of(reason).error;
}

} // namespace hearthcell
