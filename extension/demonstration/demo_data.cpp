#include "extension/demonstration/demo_data.hpp"

#include <fstream>
#include <nlohmann/json.hpp>

namespace hearthcell {
namespace {

using Json = nlohmann::json;

/// {"choice": 2} is the second word of a cell's list, in the language of the workbook.
office::CellValue value_of(Json const& typed, std::vector<std::string> const& choices) {
    if (typed.is_null())
        return "";
    if (typed.is_object())
        return choices.at(typed.at("choice").get<std::size_t>() - 1);
    return typed.is_number() ? office::CellValue(typed.get<double>()) : typed.get<std::string>();
}

/// The cells of a block share their list.
office::ValueRows rows_of(Json const& typed, std::vector<std::string> const& choices) {
    if (!typed.is_array())
        return {{value_of(typed, choices)}};
    office::ValueRows rows;
    for (Json const& row : typed) {
        rows.emplace_back();
        for (Json const& cell : row)
            rows.back().push_back(value_of(cell, choices));
    }
    return rows;
}

} // namespace

void fill(office::Document const& workbook, std::filesystem::path const& data) {
    std::ifstream stream(data);
    Json const content = Json::parse(stream);
    int place = 0;
    workbook.follow_typing(false);
    for (Json const& entry : content.at("sheets")) {
        office::Sheet sheet = workbook.sheet(place++);
        for (auto const& [where, what] : entry.at("cells").items())
            sheet.type(where, rows_of(what, sheet.choices(where)));
    }
    workbook.follow_typing(true);
}

} // namespace hearthcell
