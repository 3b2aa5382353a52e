#include "operands.hpp"

#include <algorithm>
#include <charconv>

namespace hearthcell::storm {
namespace {

constexpr std::array<char const*, 20> texts{
    "abc",         "",        "12",      "12.5",  "1e3",  " 12 ", "-5",    "TRUE",  "ISO",          "wet",
    "12 min 45 s", "1:08:20", "Größe μ", "mm:ss", "pine", "50%",  "steel", "WBT 3", "BOILINGPOINT", "STOVE.SERIES"};
constexpr CellError circular{522}, broken{524}, unknown{525};

double from_text(std::string const& text) {
    double number = 0;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

/// Few enough digits for Calc to read them exactly.
constexpr int digits_of_a_literal = 12;

std::string literal(Content const& content) {
    if (std::string const* const text = std::get_if<std::string>(&content))
        return "\"" + *text + "\"";
    return in_formula(std::get<double>(content), digits_of_a_literal);
}

} // namespace

Operands::Operands(Chance& chance, Ground& ground) : chance_(chance), ground_(ground) {
    for (int i = 0; i < 12; ++i)
        names_.push_back({"named_" + std::to_string(i), any_area(1 + (i % 3) * 10, 1 + i % 2)});
}

void Operands::start(int row) {
    row_ = row;
    own_ = own_there_ = 0;
    sheet_ = chance_.happens(0.5) ? data_sheet : other_sheet;
    first_reading_ = chance_.happens(0.5) ? 0 : chance_.below(20);
    count_ = 2 + chance_.below(data_rows - first_reading_ - 1);
    ragged_ = chance_.happens(0.1);
}

/// Calc does not read numbers that are all but 0 from a formula; from a cell it takes them.
Operand literal_number(double number) {
    std::string const text = in_formula(std::abs(number) < 1e-300 ? 0 : number, digits_of_a_literal);
    return {Written::number, text, from_text(text)};
}

Operand Operands::number(double number) {
    switch (chance_.below(6)) {
    case 0:
    case 1:
        return literal_number(number);
    case 2: {
        std::string const half = in_formula(std::abs(number) < 1e-300 ? 0 : number / 2, 10);
        return {Written::expression, "(" + half + "*2)", from_text(half) * 2};
    }
    case 3:
        return own_cell_there(in_formula(number, 17));
    default:
        return own_cell(in_formula(number, 17));
    }
}

Operand Operands::text(std::string const& text) {
    if (chance_.happens(0.5))
        return {Written::text, "\"" + text + "\"", text};
    if (chance_.happens(0.3))
        return {Written::expression, "(\"" + text + "\"&\"\")", text};
    return own_cell("=\"" + text + "\"");
}

Operand Operands::own_cell(std::string const& typed) {
    int const column = first_own_column + own_++ % own_columns;
    ground_.type(calls_sheet, row_, column, typed);
    Area const area{calls_sheet, row_, column, row_, column, true};
    return {Written::own_cell, address(area), area};
}

Operand Operands::own_cell_there(std::string const& typed) {
    int const column = ground_.columns() + own_there_++ % own_columns_there;
    ground_.type(other_sheet, row_, column, typed);
    return range({other_sheet, row_, column, row_, column, true}, Written::cell_of_another_sheet);
}

Operand Operands::range(Area const& area, Written how) {
    return {how, std::string(sheet_names[area.sheet]) + "." + address(area), area};
}

Operand Operands::row_of_own_cells(std::span<double const> values) {
    int const first = first_own_column + own_ % own_columns;
    auto const count = std::min<std::size_t>(values.size(), std::size_t(own_columns - own_ % own_columns));
    for (std::size_t i = 0; i < count; ++i)
        own_cell(std::isnan(values[i]) ? "" : in_formula(values[i], 17));
    Area const area{calls_sheet, row_, first, row_, first + int(count) - 1, false};
    return {Written::row_of_own_cells, address(area), area};
}

Operand Operands::readings(std::span<double const> example) {
    bool const complete = std::none_of(example.begin(), example.end(), [](double x) { return std::isnan(x); });
    if (complete && example.size() <= 8 && chance_.happens(0.2))
        return row_of_own_cells(example);
    if (complete && chance_.happens(0.1))
        return inline_array(example.size(), 1, {example.begin(), example.end()});
    int const column = ground_.column_like(example.data());
    if (chance_.happens(0.1)) // exactly the example's, where it has not been edited
        return range({data_sheet, 0, column, int(example.size()) - 1, column, false}, Written::range);
    int const count = ragged_ ? 1 + chance_.below(count_) : count_;
    Area const area{sheet_, first_reading_, column, first_reading_ + count - 1, column, false};
    return range(area, area.top == area.bottom ? Written::range_of_one_cell : Written::range);
}

Operand Operands::correlations() {
    auto const size = std::size_t(1 + chance_.below(4));
    std::vector<Content> cells(size * size, 0.0);
    for (std::size_t row = 0; row < size; ++row)
        for (std::size_t column = 0; column <= row; ++column) {
            double const one = row == column ? 1 : from_text(in_formula(chance_.between(-1, 1), 3));
            cells[row * size + column] = cells[column * size + row] = one;
        }
    return inline_array(size, size, cells);
}

Operand Operands::inline_array(std::size_t rows, std::size_t columns, std::vector<Content> cells) {
    std::string text = "{";
    for (std::size_t i = 0; i < cells.size(); ++i) {
        text += i == 0 ? "" : i % columns == 0 ? "|" : ";";
        text += literal(cells[i]);
        if (double* const number = std::get_if<double>(&cells[i]))
            *number = from_text(literal(*number));
    }
    return {Written::inline_array, text + "}", Matrix{rows, columns, std::move(cells)}};
}

Operand Operands::any_array() {
    auto const rows = std::size_t(1 + chance_.below(4)), columns = std::size_t(1 + chance_.below(3));
    std::vector<Content> cells;
    for (std::size_t i = 0; i < rows * columns; ++i)
        cells.push_back(chance_.happens(0.8) ? Content(chance_.between(-1, 100))
                                             : Content(std::string(chance_.one_of(texts))));
    return inline_array(rows, columns, std::move(cells));
}

/// Also partly below and right of what is filled.
Area Operands::any_area(int rows, int columns) {
    int const sheet = chance_.happens(0.5) ? data_sheet : other_sheet;
    int const top = chance_.below(data_rows + 5), left = chance_.below(ground_.columns() + 2);
    return {sheet, top, left, top + rows - 1, left + columns - 1, rows == 1 && columns == 1};
}

Operand Operands::any_named() {
    NamedArea const& named = chance_.one_of(names_);
    return {Written::through_a_name, named.name, named.area};
}

Operand Operands::through_indirect() {
    Operand operand = range(any_area(1 + chance_.below(3), 1), Written::through_indirect);
    operand.text = "INDIRECT(\"" + operand.text + "\")";
    operand.stays = true;
    return operand;
}

/// Of a column and a row: one cell, and one that is never deleted, since what Calc makes of half a reference is its
/// own.
Operand Operands::intersection() {
    Area cell = any_area(1, 1);
    cell.top = cell.bottom = moving_rows + 3 + cell.top % 15;
    Area column = cell, row = cell;
    column.one_cell = row.one_cell = false;
    column.bottom += 3;
    row.right += 2;
    return {Written::intersection,
            "(" + range(column, Written::range).text + "!" + range(row, Written::range).text + ")", cell};
}

Operand Operands::anything(Written how) {
    switch (how) {
    case Written::number:
        return number(chance_.happens(0.5) ? chance_.between(-2, 20) : std::exp(chance_.between(-700, 700)));
    case Written::text:
    case Written::expression:
        return text(chance_.one_of(texts));
    case Written::logical:
        return chance_.happens(0.5) ? Operand{how, "TRUE()", 1.0} : Operand{how, "FALSE()", 0.0};
    case Written::own_cell:
        return own_cell(anything_typed(chance_));
    case Written::cell_of_another_sheet:
        return chance_.happens(0.5) ? own_cell_there(anything_typed(chance_)) : range(any_area(1, 1), how);
    case Written::through_indirect:
        return through_indirect();
    case Written::through_a_name:
        return any_named();
    case Written::intersection:
        return intersection();
    case Written::range:
        return chance_.happens(0.3) ? range(any_area(1, 2 + chance_.below(5)), how)
                                    : range(any_area(2 + chance_.below(300), 1), how);
    case Written::range_of_one_cell: {
        Area area = any_area(1, 1);
        area.one_cell = false;
        return range(area, how);
    }
    case Written::block:
        return range(any_area(2 + chance_.below(10), 2 + chance_.below(6)), how);
    case Written::whole_column: {
        int const column = chance_.below(ground_.columns() + own_columns_there);
        return range({sheet_, 0, column, rows_of_a_sheet - 1, column, false}, how);
    }
    case Written::whole_row: {
        int const row = chance_.below(data_rows + 5);
        Area const area{sheet_, row, 0, row, columns_of_a_sheet - 1, false};
        std::string const number = std::to_string(row + 1);
        return {how, std::string(sheet_names[sheet_]) + "." + number + ":" + number, area};
    }
    case Written::row_of_own_cells: {
        std::array<double, 4> values{};
        for (double& value : values)
            value = chance_.between(0, 50);
        return row_of_own_cells(values);
    }
    case Written::inline_array:
        return any_array();
    case Written::several_ranges:
        return {how, "(Data.A900:A903~Other.B900)", some_error};
    case Written::broken_reference:
        return {how, "#REF!", broken};
    case Written::unknown_sheet:
        return {how, "Nowhere.A1", unknown};
    case Written::unknown_name:
        return {how, "no_such_name", unknown};
    case Written::itself:
        return {how, address(row_, call_column), circular};
    default:
        return {};
    }
}

} // namespace hearthcell::storm
