#pragma once
// What a kernel itself has to say on a call that has succeeded.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

Sentences remarks_on(Function const& function, std::span<Value const> values);

/// Whether a sentence of a kernel warns; and the sentence without the word that says so.
bool is_odd(std::string_view remark);
std::string without_odd(std::string_view remark);

} // namespace hearthcell
