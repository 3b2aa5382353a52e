// Fills the templates with invented data in a fresh LibreOffice that has the package, prints the blocks that they name
// print_…, and lists the templates that this LibreOffice offers.

#include "extension/demonstration/demo_data.hpp"
#include "extension/office/document.hpp"
#include "extension/office/templates.hpp"
#include "extension/terminal/text_table.hpp"

#include <algorithm>
#include <iostream>
#include <map>
#include <sstream>
#include <stdexcept>

namespace {

using namespace hearthcell;

std::string const marker = "print_";

/// print_results_of_each_run → Results of each run
std::string title(std::string name) {
    name.erase(0, marker.size());
    std::replace(name.begin(), name.end(), '_', ' ');
    if (!name.empty() && name[0] >= 'a' && name[0] <= 'z')
        name[0] = static_cast<char>(name[0] - 'a' + 'A');
    return name;
}

bool holds_number(std::vector<office::CellValue> const& row) {
    return std::any_of(row.begin(), row.end(), [](auto const& cell) { return std::holds_alternative<double>(cell); });
}

TextTable table_of(office::TextRows shown, office::ValueRows const& values) {
    auto const first_with_number = std::find_if(values.begin(), values.end(), holds_number);
    bool const only_words = first_with_number == values.end();
    TextTable table{std::move(shown), only_words ? 1 : static_cast<std::size_t>(first_with_number - values.begin()),
                    std::vector<bool>(values.front().size(), false)};
    for (auto const& row : values)
        for (std::size_t column = 0; column < row.size(); ++column)
            if (std::holds_alternative<double>(row[column]))
                table.numeric[column] = true;
    return table;
}

/// A sentence in lines that fit a terminal.
std::string in_lines(std::string const& sentence) {
    constexpr std::size_t width = 100;
    std::istringstream words(sentence);
    std::string text, line, word;
    while (words >> word) {
        if (!line.empty() && line.size() + 1 + word.size() > width) {
            text += line + "\n";
            line = "   ";
        }
        line += (line.empty() ? "  " : " ") + word;
    }
    return line.empty() ? "" : text + line + "\n";
}

std::string paragraphs(office::TextRows const& rows) {
    std::string text;
    for (auto const& row : rows)
        text += in_lines(row.front());
    return text;
}

int errors_in(office::ValueRows const& values) {
    int count = 0;
    for (auto const& row : values)
        for (auto const& cell : row)
            count += std::holds_alternative<office::CellError>(cell) ? 1 : 0;
    return count;
}

void print_blocks(office::Document const& workbook) {
    int printed = 0;
    int errors = 0;
    for (office::NamedBlock const& block : workbook.named_blocks()) {
        if (!block.name.starts_with(marker))
            continue;
        office::Sheet const sheet = workbook.sheet(block.sheet);
        auto const values = sheet.values(block.range);
        auto const shown = sheet.shown_rows(block.range);
        bool const sentences = shown.front().size() == 1;
        std::cout << title(block.name) << "\n"
                  << (sentences ? paragraphs(shown) : draw(table_of(shown, values))) << "\n";
        ++printed;
        errors += errors_in(values);
    }
    if (printed == 0)
        throw std::runtime_error("the workbook names no block " + marker + "… to print");
    if (errors > 0)
        throw std::runtime_error(std::to_string(errors) + " of the printed cells show an error");
}

void demonstrate(office::Office& office, std::filesystem::path const& source, std::filesystem::path const& data,
                 std::filesystem::path const& output) {
    office::Document workbook = office::Document::open(office, source, office::Access::read_write);
    fill(workbook, data);
    workbook.recalculate();
    print_blocks(workbook);

    for (char const* extension : {".ods", ".pdf"}) {
        auto const copy = output / source.filename().replace_extension(extension);
        workbook.save(copy);
        std::cout << (copy.extension() == ".pdf" ? "As PDF:        " : "Recalculated:  ") << copy.string() << "\n";
    }
    std::cout << "\n";
}

/// "Hearthcell (français)" → français
std::string language_of(std::string const& group) {
    auto const opening = group.find('(');
    return opening == std::string::npos ? "" : group.substr(opening + 1, group.find(')') - opening - 1);
}

void list_templates(office::Office& office) {
    std::map<std::string, std::vector<std::string>> rows; // by the name of the file
    for (office::OfferedTemplate const& offered : office::offered_templates(office, "Hearthcell")) {
        auto& row = rows[offered.file];
        row.resize(3);
        row[0] = offered.file;
        std::string const language = language_of(offered.group);
        if (language == "English")
            row[1] = offered.title;
        row[2] += (row[2].empty() ? "" : ", ") + language;
    }
    if (rows.empty())
        throw std::runtime_error("LibreOffice offers no template of the package");
    TextTable table{{{"template", "title in English", "languages"}}, 1, {false, false, false}};
    for (auto const& [name, row] : rows)
        table.rows.push_back(row);
    std::cout << "Templates in Calc's Template Manager\n" << draw(table);
}

/// What the packaged function guide says in this office of all its examples. Throws where they do not all agree.
std::string guide_verdict(office::Office& office, std::filesystem::path const& package) {
    office::Document guide =
        office::Document::open(office, office.folder() / "bundled" / package.stem() / "guide" / "en.ods");
    guide.recalculate();
    std::map<std::string, std::string> shown;
    for (office::NamedBlock const& block : guide.named_blocks())
        shown[block.name] = guide.sheet(block.sheet).shown(block.range);
    if (shown.at("checks_that_agree") != shown.at("checks_in_all"))
        throw std::runtime_error("the function guide says: " + shown.at("guide_verdict"));
    return shown.at("guide_verdict");
}

void demonstrate_all(std::filesystem::path const& package, std::filesystem::path const& templates,
                     std::filesystem::path const& data, std::filesystem::path const& output) {
    office::Office office({.package = package});
    if (office.functions("STOVE.").empty())
        throw std::runtime_error("LibreOffice did not load the package " + package.string());
    std::filesystem::create_directories(output);
    std::vector<std::filesystem::path> files{std::filesystem::directory_iterator(data), {}};
    std::ranges::sort(files);
    for (auto const& file : files)
        demonstrate(office, templates / file.filename().replace_extension(".ots"), file, output);
    list_templates(office);
    std::cout << "Function guide: " << guide_verdict(office, package) << "\n";
}

} // namespace

int main(int count, char** words) {
    if (count != 5) {
        std::cerr << "usage: hearthcell-demo PACKAGE.oxt FOLDER-OF-TEMPLATES FOLDER-OF-DATA OUTPUT-FOLDER\n";
        return 2;
    }
    try {
        demonstrate_all(words[1], words[2], words[3], words[4]);
        return 0;
    } catch (std::exception const& problem) {
        std::cerr << "hearthcell-demo: " << problem.what() << "\n";
        return 1;
    }
}
