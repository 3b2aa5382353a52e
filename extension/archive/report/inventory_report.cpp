#include "extension/archive/report/inventory_report.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/archive/inventory/same_words.hpp"
#include "extension/archive/records/csv.hpp"
#include "extension/archive/records/report_file.hpp"

#include <fstream>
#include <utility>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_shown = 25; // rows of a page
constexpr auto words_file = "same-words.txt";

std::string number_of(std::optional<std::size_t> const& layout) {
    return layout ? std::to_string(*layout + 1) : std::string();
}

std::string methods_of(SheetFormula const& formula) {
    std::string text;
    for (std::string const& method : formula.methods)
        text += (text.empty() ? "" : " / ") + method;
    return text;
}

std::string part_of(SheetFormula const& formula) {
    return formula.is_part ? "part" : "whole";
}

/// Whether the user has written into the file of words: then it is theirs.
bool has_confirmed_words(std::filesystem::path const& file) {
    if (!std::filesystem::exists(file))
        return false;
    try {
        return !same_words_in(file).empty();
    } catch (std::exception const&) { // half written
        return true;
    }
}

} // namespace

void InventoryReport::remove(std::filesystem::path const& output) {
    for (char const* report : {"layouts.csv", "formulas.csv"})
        std::filesystem::remove(output / report);
    if (!has_confirmed_words(output / words_file))
        std::filesystem::remove(output / words_file);
}

void InventoryReport::workbook(Origin const& origin, std::filesystem::path const& facts) {
    std::ifstream lines(facts, std::ios::binary);
    for (std::string line; std::getline(lines, line);)
        builder_.add(origins_.size(), sheet_facts_in(line));
    origins_.push_back(origin);
}

void InventoryReport::finish() {
    inventory_ = builder_.finish();
}

InventoryCounts InventoryReport::counts() const {
    InventoryCounts counts{inventory_.sheets.size(), inventory_.layouts.size()};
    std::size_t last = ~std::size_t{0};
    for (Inventory::Sheet const& sheet : inventory_.sheets) {
        counts.formulas += sheet.formulas;
        counts.ours += sheet.ours;
        counts.with_ours += sheet.ours > 0 && std::exchange(last, sheet.workbook) != sheet.workbook ? 1 : 0;
    }
    for (Inventory::Formula const& formula : inventory_.formulas)
        counts.recognised[formula.first.function] += formula.cells;
    return counts;
}

void InventoryReport::put_in_place(std::filesystem::path const& output) const {
    ReportFile layouts(output / "layouts.csv"), formulas(output / "formulas.csv");
    layouts.add(csv_row(
        {"layout", "sheets", "workbooks", "labels", "example_file", "example_sheet", "near_layout", "differs"}));
    for (std::size_t at = 0; at < inventory_.layouts.size(); ++at) {
        Layout const& layout = inventory_.layouts[at];
        std::size_t const example = layout.sheets.front();
        layouts.add(csv_row({number_of(at), std::to_string(layout.sheets.size()),
                             std::to_string(inventory_.workbooks_of(layout)), std::to_string(layout.labels.size()),
                             shown(origin_of(example).relative), inventory_.sheets[example].name,
                             number_of(layout.near), layout.differs}));
    }
    formulas.add(csv_row({"layout", "function", "methods", "computes", "whole_or_part", "formula", "cells", "sheets",
                          "workbooks", "example_file", "example_sheet", "example_cell"}));
    for (Inventory::Formula const& one : inventory_.formulas)
        formulas.add(
            csv_row({number_of(one.layout), "STOVE." + one.first.function, methods_of(one.first), one.first.form,
                     part_of(one.first), one.first.formula, std::to_string(one.cells), std::to_string(one.sheets),
                     std::to_string(one.workbooks), shown(origin_of(one.sheet).relative),
                     inventory_.sheets[one.sheet].name, one.first.cell}));
    for (ReportFile* const file : {&layouts, &formulas})
        file->put_in_place();
    if (has_confirmed_words(output / words_file))
        return;
    ReportFile words(output / words_file);
    words.add(proposed_same_words(inventory_.layouts));
    words.put_in_place();
}

std::vector<Page> InventoryReport::pages(Summary const& summary) const {
    return {page_of_layouts(summary), page_of_formulas()};
}

Page InventoryReport::page_of_layouts(Summary const& summary) const {
    Page page{.name = "Layouts", .title = "Which layouts the sheets have"};
    page.words = opening_lines(summary);
    if (inventory_.layouts.empty())
        page.words.emplace_back("No sheet with labels was found.");
    PageTable table{{{"layout", Look::count, 16},
                     {"sheets", Look::count, 16},
                     {"workbooks", Look::count, 22},
                     {"one to open", Look::text, 76},
                     {"its sheet", Look::text, 36},
                     {"near", Look::count, 14},
                     {"differs in", Look::text, 88}},
                    {}};
    for (std::size_t at = 0; at < std::min(most_shown, inventory_.layouts.size()); ++at) {
        Layout const& layout = inventory_.layouts[at];
        std::size_t const example = layout.sheets.front();
        table.rows.push_back({count_cell(at + 1), count_cell(layout.sheets.size()),
                              count_cell(inventory_.workbooks_of(layout)), linked_cell(origin_of(example)),
                              text_cell(inventory_.sheets[example].name),
                              layout.near ? count_cell(*layout.near + 1) : PageCell{}, text_cell(layout.differs)});
    }
    add_more(page, inventory_.layouts.size(), table.rows.size(), "layouts", "layouts.csv");
    if (!table.rows.empty())
        page.tables.push_back(std::move(table));
    return page;
}

Page InventoryReport::page_of_formulas() const {
    Page page{.name = "Formulas", .title = "What hand-written formulas compute"};
    if (inventory_.formulas.empty())
        page.words.emplace_back(
            "No hand-written formula was recognised as one that a function of Hearthcell computes.");
    else
        page.words.emplace_back(
            "Recognised by their form and constants; methods are named from memory of their documents.");
    PageTable table{{{"layout", Look::count, 16},
                     {"function", Look::text, 58},
                     {"as in", Look::text, 42},
                     {"computes", Look::text, 64},
                     {"cells", Look::count, 16},
                     {"sheets", Look::count, 16},
                     {"one of them", Look::text, 70}},
                    {}};
    for (std::size_t at = 0; at < std::min(most_shown, inventory_.formulas.size()); ++at) {
        Inventory::Formula const& one = inventory_.formulas[at];
        table.rows.push_back(
            {one.layout ? count_cell(*one.layout + 1) : PageCell{},
             text_cell("STOVE." + one.first.function + (one.first.is_part ? " in a part" : "")),
             text_cell(methods_of(one.first)), text_cell(one.first.form), count_cell(one.cells), count_cell(one.sheets),
             text_cell(inventory_.sheets[one.sheet].name + "." + one.first.cell + ": " + one.first.formula)});
    }
    add_more(page, inventory_.formulas.size(), table.rows.size(), "formulas", "formulas.csv");
    if (!table.rows.empty())
        page.tables.push_back(std::move(table));
    return page;
}

} // namespace hearthcell::archive
