#include "pages.hpp"

#include "tests/archive/made/zip_writer.hpp"

#include <pugixml.hpp>

#include <stdexcept>

namespace hearthcell::tests::archive {
namespace {

constexpr int most_repeated = 100; // more of them are the emptiness around what is written

PageCell cell_in(pugi::xml_node const& node) {
    PageCell cell;
    if (pugi::xml_attribute const value = node.attribute("office:value"))
        cell.value = value.as_double();
    else if (pugi::xml_attribute const day = node.attribute("office:date-value"))
        cell.value = std::string(day.value());
    else if (pugi::xml_node const paragraph = node.child("text:p")) {
        std::string text;
        for (pugi::xpath_node const& piece : paragraph.select_nodes(".//text()"))
            text += piece.node().value();
        cell.value = text;
    }
    cell.link = node.select_node(".//text:a").node().attribute("xlink:href").value();
    return cell;
}

std::vector<PageCell> row_in(pugi::xml_node const& node) {
    std::vector<PageCell> row;
    for (pugi::xml_node const& cell : node.children("table:table-cell")) {
        int const times = cell.attribute("table:number-columns-repeated").as_int(1);
        for (int time = 0; time < times && times < most_repeated; ++time)
            row.push_back(cell_in(cell));
    }
    return row;
}

bool is_filled(PageCell const& cell) {
    return !std::holds_alternative<std::monostate>(cell.value);
}

} // namespace

std::map<std::string, PageRows> pages_of(std::filesystem::path const& file) {
    std::string const content = unzipped(file).at("content.xml");
    pugi::xml_document xml;
    if (!xml.load_buffer(content.data(), content.size(), pugi::parse_full))
        throw std::runtime_error("no XML in " + file.string());
    std::map<std::string, PageRows> pages;
    for (pugi::xpath_node const& table : xml.select_nodes("//office:spreadsheet/table:table")) {
        PageRows& page = pages[table.node().attribute("table:name").value()];
        for (pugi::xpath_node const& row : table.node().select_nodes(".//table:table-row")) {
            int const times = row.node().attribute("table:number-rows-repeated").as_int(1);
            for (int time = 0; time < times && times < most_repeated; ++time)
                page.push_back(row_in(row.node()));
        }
    }
    return pages;
}

PageRows table_below(PageRows const& page, std::string const& heading) {
    PageRows rows;
    std::size_t columns = 0;
    for (auto const& row : page) {
        if (columns == 0 && !row.empty() && text_in(row[0]) == heading) {
            while (columns < row.size() && is_filled(row[columns]))
                ++columns;
        } else if (columns > 0) {
            bool const inside =
                row.size() >= columns && is_filled(row[0]) && (is_filled(row[1]) || (columns > 2 && is_filled(row[2])));
            if (!inside)
                return rows;
            rows.emplace_back(row.begin(), row.begin() + std::ptrdiff_t(columns));
        }
    }
    return rows;
}

std::string text_in(PageCell const& cell) {
    std::string const* const text = std::get_if<std::string>(&cell.value);
    return text == nullptr ? std::string() : *text;
}

double number_in(PageCell const& cell) {
    if (double const* const number = std::get_if<double>(&cell.value))
        return *number;
    throw std::runtime_error("no number where one must be: '" + text_in(cell) + "'");
}

bool says_on_page(PageRows const& page, std::string const& words) {
    for (auto const& row : page)
        for (PageCell const& cell : row)
            if (text_in(cell).find(words) != std::string::npos)
                return true;
    return false;
}

} // namespace hearthcell::tests::archive
