#include "extension/archive/report/page.hpp"

#include <nlohmann/json.hpp>

namespace hearthcell::archive {

using nlohmann::json;

void to_json(json& out, PageCell const& cell) {
    out = json::array();
    if (auto const* const number = std::get_if<double>(&cell.value))
        out.push_back(*number);
    else if (auto const* const text = std::get_if<std::string>(&cell.value))
        out.push_back(*text);
    else
        out.push_back(nullptr);
    if (!cell.link.empty())
        out.push_back(cell.link);
}

void from_json(json const& in, PageCell& cell) {
    if (in.at(0).is_number())
        cell.value = in.at(0).get<double>();
    else if (in.at(0).is_string())
        cell.value = in.at(0).get<std::string>();
    if (in.size() > 1)
        in.at(1).get_to(cell.link);
}

NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(PageColumn, heading, look, width)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(PageTable, columns, rows)
NLOHMANN_DEFINE_TYPE_NON_INTRUSIVE(PageChart, shape, title, x_title, y_title, labels, series, of_points, height, days,
                                   last_is_line, low, high)

void to_json(json& out, Page const& page) {
    out = {{"name", page.name},   {"title", page.title},   {"words", page.words},  {"tables", page.tables},
           {"notes", page.notes}, {"charts", page.charts}, {"points", page.points}};
}

void from_json(json const& in, Page& page) {
    in.at("name").get_to(page.name);
    in.at("title").get_to(page.title);
    in.at("words").get_to(page.words);
    in.at("tables").get_to(page.tables);
    in.at("notes").get_to(page.notes);
    in.at("charts").get_to(page.charts);
    in.at("points").get_to(page.points);
}

std::filesystem::path as_deep_as(std::filesystem::path const& folder, std::filesystem::path const& below) {
    std::filesystem::path deep = below;
    for (auto const& level : folder.relative_path())
        deep /= level.empty() ? "" : "0";
    return deep;
}

void move_links(std::vector<Page>& pages, std::filesystem::path const& from, std::filesystem::path const& to) {
    for (Page& page : pages)
        for (PageTable& table : page.tables)
            for (auto& row : table.rows)
                for (PageCell& cell : row)
                    if (!cell.link.empty())
                        cell.link = (to / std::filesystem::path(cell.link).lexically_relative(from)).lexically_normal();
}

} // namespace hearthcell::archive
