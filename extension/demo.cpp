// Recalculates a workbook in a fresh LibreOffice that has the package, and prints the blocks that it names print_….

#include "guide_verdict.hpp"
#include "office/document.hpp"
#include "text_table.hpp"

#include <algorithm>
#include <iostream>
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
        std::cout << title(block.name) << "\n" << draw(table_of(sheet.shown_rows(block.range), values)) << "\n";
        ++printed;
        errors += errors_in(values);
    }
    if (printed == 0)
        throw std::runtime_error("the workbook names no block " + marker + "… to print");
    if (errors > 0)
        throw std::runtime_error(std::to_string(errors) + " of the printed cells show an error");
}

void demonstrate(std::filesystem::path const& package, std::filesystem::path const& source,
                 std::filesystem::path const& output) {
    office::Office office({.package = package});
    if (office.functions("STOVE.").empty())
        throw std::runtime_error("LibreOffice did not load the package " + package.string());
    office::Document workbook = office::Document::open(office, source);
    workbook.recalculate();
    print_blocks(workbook);

    std::filesystem::create_directories(output);
    for (char const* extension : {".ods", ".pdf"}) {
        auto const copy = output / source.filename().replace_extension(extension);
        workbook.save(copy);
        std::cout << (copy.extension() == ".pdf" ? "As PDF:        " : "Recalculated:  ") << copy.string() << "\n";
    }
    std::cout << "Function guide: " << guide_verdict(office, package) << "\n";
}

} // namespace

int main(int count, char** words) {
    if (count != 4) {
        std::cerr << "usage: hearthcell-demo PACKAGE.oxt WORKBOOK.fods OUTPUT-FOLDER\n";
        return 2;
    }
    try {
        demonstrate(words[1], words[2], words[3]);
        return 0;
    } catch (std::exception const& problem) {
        std::cerr << "hearthcell-demo: " << problem.what() << "\n";
        return 1;
    }
}
