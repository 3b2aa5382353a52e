#include "templates.hpp"

#include "extension/office/process.hpp"
#include "functions/catalogue/glossary.hpp"
#include "functions/catalogue/tables.hpp"

#include <algorithm>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <regex>
#include <sstream>

namespace hearthcell::tests {
namespace {

using Json = nlohmann::json;

/// Read once: thousands of texts are looked up in each.
Json const& texts_of(std::string const& name) {
    static std::map<std::string, Json> all;
    auto const [texts, is_new] = all.try_emplace(name);
    if (is_new) {
        std::ifstream stream(std::filesystem::path(SAMPLE_SHEETS) / "texts" / (name + ".json"));
        texts->second = Json::parse(stream);
    }
    return texts->second;
}

bool has_letters(std::string const& text) {
    return std::ranges::any_of(text, [](char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); });
}

/// What stands in the catalogue's glossary or among its names of fuels and materials; else empty.
std::string of_the_catalogue(std::string const& english, std::string_view language) {
    if (Wording const* const term = find_term(english))
        return std::string(term->in(language_of(language)));
    for (NameTable const* const table : name_tables)
        for (Named const& row : table->rows)
            if (row.name.english == english)
                return std::string(row.name.in(language_of(language)));
    return "";
}

} // namespace

std::vector<std::string> template_names() {
    std::vector<std::string> names;
    for (auto const& entry : std::filesystem::directory_iterator(SAMPLE_SHEETS))
        if (entry.path().extension() == ".fods")
            names.push_back(entry.path().stem().string());
    std::ranges::sort(names);
    return names;
}

std::filesystem::path template_file(std::string_view language, std::string const& name) {
    return std::filesystem::path(TEMPLATES) / language / (name + ".ots");
}

std::filesystem::path demo_data(std::string const& name) {
    return std::filesystem::path(SAMPLE_SHEETS) / "demo" / (name + ".json");
}

std::string said(std::string const& english, std::string_view language, std::string const& name) {
    if (!has_letters(english))
        return english;
    for (std::string const& file : {name, std::string("common")})
        for (Json const& entry : texts_of(file)) {
            if (entry.value("all", "") == english)
                return english;
            if (entry.value("en", "") == english)
                return entry.at(std::string(language)).get<std::string>();
        }
    if (std::string const term = of_the_catalogue(english, language); !term.empty())
        return term;
    ADD_FAILURE() << name << " in " << language << ": not among the texts: " << english;
    return english;
}

double number_named(office::Document const& workbook, std::string const& name) {
    for (office::NamedBlock const& block : workbook.named_blocks())
        if (block.name == name)
            return number(workbook.sheet(block.sheet).value(block.range));
    ADD_FAILURE() << "no cell is named " << name;
    return 0;
}

namespace {

std::string said_by(char const* program, std::vector<std::string> const& arguments, std::filesystem::path const& log) {
    office::Process reader(program, arguments, log);
    if (reader.wait(std::chrono::seconds(20)) != 0)
        return "";
    std::ifstream stream(log);
    std::ostringstream all;
    all << stream.rdbuf();
    return all.str();
}

} // namespace

int pages_of(std::filesystem::path const& pdf) {
    auto const text = said_by("/usr/bin/pdfinfo", {pdf.string()}, std::filesystem::path(pdf).replace_extension(".txt"));
    std::smatch match;
    return std::regex_search(text, match, std::regex("Pages:\\s+(\\d+)")) ? std::stoi(match[1]) : -1;
}

std::string text_of_page(std::filesystem::path const& pdf, int page) {
    std::string const number = std::to_string(page);
    return said_by("/usr/bin/pdftotext", {"-f", number, "-l", number, pdf.string(), "-"},
                   std::filesystem::path(pdf).replace_extension(".txt"));
}

} // namespace hearthcell::tests
