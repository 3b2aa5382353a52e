#include "ground.hpp"

#include <algorithm>
#include <stdexcept>

namespace hearthcell::storm {
namespace {

/// Errors of Calc's own, texts that look like numbers, names of tables, extremes. No times and dates: their cells are
/// saved as times, with fewer digits than a number has.
constexpr char const* odd_things[] = {"=1/0",     "=NA()",   "=SQRT(-1)", "=\"a\"+1", "=\"12\"",   "=\"\"",
                                      "abc",      "Größe μ", "pine",      "WBT 3",    "aluminium", "TRUE",
                                      "1E+308",   "-1E+308", "5E-324",    "0",        "-1",        "=\"12.5\"",
                                      "=\"1e3\"", "50%",     "=1=1",      "steel"};

/// Readings like those of an example, on and on: times go on rising, the others stay near what they are.
double reading_like(std::span<double const> example, std::size_t place, double wobble) {
    bool const rising = std::is_sorted(example.begin(), example.end()) && example.size() > 1;
    double const base = rising ? example[std::min(place, example.size() - 1)] : example[place % example.size()];
    if (!rising || place < example.size())
        return base * (1 + 0.02 * wobble);
    double const step = example.back() - example[example.size() - 2];
    return base + step * double(place - example.size() + 1);
}

} // namespace

std::string anything_typed(Chance& chance) {
    if (chance.happens(0.15))
        return "";
    if (chance.happens(0.5))
        return chance.one_of(odd_things);
    return in_formula(std::exp(chance.between(-12, 12)), 17);
}

Ground::Ground(Chance& chance) {
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (Example const& example : function.examples)
                for (hearthcell::Cell const& argument : example.arguments)
                    if (argument.kind == hearthcell::CellKind::column)
                        fill(chance, argument.column);
    for (int odd = 0; odd < 6; ++odd, ++columns_) // the first of them stays empty
        for (int sheet : {data_sheet, other_sheet})
            for (int row = 0; row < data_rows; ++row)
                if (odd > 0 && chance.happens(0.2 * odd))
                    cell(sheet, row, columns_).typed = anything_typed(chance);
}

void Ground::fill(Chance& chance, std::span<double const> example) {
    if (!column_of_.try_emplace(example.data(), columns_).second)
        return;
    for (int sheet : {data_sheet, other_sheet})
        for (int row = 0; row < data_rows; ++row) {
            double const wobble = sheet == data_sheet ? 0 : chance.between(-1, 1);
            double const reading = reading_like(example, std::size_t(row), wobble);
            bool const blank = std::isnan(reading) || chance.happens(0.002);
            cell(sheet, row, columns_).typed = blank ? "" : in_formula(reading, 17);
        }
    if (chance.happens(0.1))
        cell(data_sheet, 0, columns_).typed = "a heading";
    ++columns_;
}

Ground::Cell& Ground::cell(int sheet, int row, int column) {
    auto& rows = sheets_[std::size_t(sheet)];
    if (rows.size() <= std::size_t(row))
        rows.resize(std::size_t(row) + 1);
    Row& cells = rows[std::size_t(row)];
    if (cells.size() <= std::size_t(column))
        cells.resize(std::size_t(column) + 1);
    return cells[std::size_t(column)];
}

Content const& Ground::at(int sheet, int row, int column) const {
    static Content const nothing;
    auto const& rows = sheets_[std::size_t(sheet)];
    if (std::size_t(row) >= rows.size() || std::size_t(column) >= rows[std::size_t(row)].size())
        return nothing;
    return rows[std::size_t(row)][std::size_t(column)].content;
}

int Ground::column_like(double const* example) const {
    return column_of_.at(example);
}

void Ground::type(int sheet, int row, int column, std::string const& text) {
    cell(sheet, row, column).typed = text;
}

void Ground::write(office::Document const& document, int sheet, int left, int columns) {
    office::TextRows block;
    for (int row = 0; row < rows(sheet); ++row) {
        block.emplace_back();
        for (int column = left; column < left + columns; ++column)
            block.back().push_back(cell(sheet, row, column).typed);
    }
    document.sheet(sheet).formulas(address(0, left), block);
}

void Ground::write(office::Document const& document) {
    write(document, calls_sheet, first_own_column, own_columns);
    write(document, data_sheet, 0, columns_);
    write(document, other_sheet, 0, columns_ + own_columns_there);
    learn(document);
}

void Ground::edit(office::Document const& document, int sheet, int row, int column, std::string const& text) {
    document.sheet(sheet).formula(address(row, column), text);
    Cell& edited = cell(sheet, row, column);
    edited = {text, {}};
    edited.learn(document.sheet(sheet).value(address(row, column)));
}

double Ground::learn(office::Document const& document) {
    double change = 0;
    for (int sheet = 0; sheet < sheets; ++sheet) {
        int const left = sheet == calls_sheet ? first_own_column : 0;
        int const right = sheet == calls_sheet ? left + own_columns - 1 : columns_ + own_columns_there - 1;
        office::ValueRows const values =
            document.sheet(sheet).values(address({sheet, 0, left, rows(sheet) - 1, right, false}));
        for (int row = 0; row < rows(sheet); ++row)
            for (int column = left; column <= right; ++column)
                change = std::max(change, cell(sheet, row, column).learn(values[row][column - left]));
    }
    return change;
}

/// A file keeps 15 digits of a number or more, but no more than 20 decimals.
constexpr double all_decimals = 1e-5;

/// Gives the relative change of a number.
double Ground::Cell::learn(CellValue const& value) {
    double const* const before = std::get_if<double>(&content);
    double const* const now = std::get_if<double>(&value);
    double const change = before != nullptr && now != nullptr && *before != *now
                              ? std::abs(*now - *before) / std::max(std::abs(*before), all_decimals)
                              : 0;
    if (typed.empty() && value != CellValue(std::string()))
        throw std::logic_error("a cell that was left empty holds something");
    if (!typed.empty())
        content = content_of(value);
    return change;
}

void Ground::insert_rows(int sheet, int row, int count) {
    auto& rows = sheets_[std::size_t(sheet)];
    if (std::size_t(row) < rows.size())
        rows.insert(rows.begin() + row, std::size_t(count), Row());
}

void Ground::delete_rows(int sheet, int row, int count) {
    auto& rows = sheets_[std::size_t(sheet)];
    int const end = std::min(row + count, int(rows.size()));
    if (row < end)
        rows.erase(rows.begin() + row, rows.begin() + end);
}

} // namespace hearthcell::storm
