#include "extension/demonstration/demo_data.hpp"

#include <fstream>
#include <nlohmann/json.hpp>

namespace hearthcell {
namespace {

using Json = nlohmann::json;

office::CellValue value_of(Json const& typed) {
    if (typed.is_null())
        return "";
    return typed.is_number() ? office::CellValue(typed.get<double>()) : typed.get<std::string>();
}

office::ValueRows rows_of(Json const& typed) {
    if (!typed.is_array())
        return {{value_of(typed)}};
    office::ValueRows rows;
    for (Json const& row : typed) {
        rows.emplace_back();
        for (Json const& cell : row)
            rows.back().push_back(value_of(cell));
    }
    return rows;
}

} // namespace

void fill(office::Document const& workbook, std::filesystem::path const& data) {
    std::ifstream stream(data);
    Json const content = Json::parse(stream);
    int place = 0;
    for (Json const& entry : content.at("sheets")) {
        office::Sheet sheet = workbook.sheet(place++);
        for (auto const& [where, what] : entry.at("cells").items())
            sheet.type(where, rows_of(what));
    }
}

} // namespace hearthcell
