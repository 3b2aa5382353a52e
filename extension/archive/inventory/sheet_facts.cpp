#include "extension/archive/inventory/sheet_facts.hpp"

#include <nlohmann/json.hpp>

namespace hearthcell::archive {

using nlohmann::json;

NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(SheetText, row, column, text, is_value, in_run)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(SheetFormula, function, form, formula, cell, methods, is_part, cells)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(SheetFacts, name, texts, recognised, formulas, ours, merged)

std::string written(std::vector<SheetFacts> const& sheets) {
    std::string lines;
    for (SheetFacts const& sheet : sheets)
        lines += json(sheet).dump(-1, ' ', false, json::error_handler_t::replace) + "\n";
    return lines;
}

SheetFacts sheet_facts_in(std::string_view line) {
    return json::parse(line).get<SheetFacts>();
}

} // namespace hearthcell::archive
