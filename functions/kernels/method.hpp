#pragma once
// The published definitions that an old sheet may have used. The table of what each computes is in README.md;
// the WBT and ISO constants are from memory until someone has opened the documents.

#include "functions/contract/choice.hpp"

namespace hearthcell {

enum class Method { properties, iso_19867_1, wbt_4_2_3, wbt_3 };

constexpr Method method_of(Choice choice) {
    return Method(choice.index);
}

constexpr bool is_wbt(Method method) {
    return method == Method::wbt_4_2_3 || method == Method::wbt_3;
}

} // namespace hearthcell
