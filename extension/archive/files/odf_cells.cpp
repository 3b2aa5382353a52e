#include "extension/archive/files/odf_cells.hpp"

#include "extension/archive/files/odf_values.hpp"
#include "extension/archive/files/problem.hpp"
#include "extension/formulas/reference.hpp"

#include <algorithm>
#include <charconv>
#include <utility>

namespace hearthcell::archive {
namespace {

constexpr int spreadsheet_depth = 3; // document, body, spreadsheet
constexpr std::uint64_t growing = 2; // a text that is added to has room to grow, and is moved when it has none
constexpr int most_rows = 1 << 20, most_columns = 1 << 14;

/// "urn:oasis:names:tc:opendocument:xmlns:table:1.0 table-cell" → "table:1.0 table-cell"
std::string_view shortened(std::string_view name) {
    constexpr std::string_view all_odf = "xmlns:";
    auto const found = name.find(all_odf);
    return found == std::string_view::npos ? name : name.substr(found + all_odf.size());
}

int count(std::string_view text, int at_most) {
    int number = 1;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return std::clamp(number, 1, at_most);
}

bool holds_no_cells(std::string_view name) {
    return name.starts_with("drawing:1.0 ") || name.starts_with("dr3d:1.0 ") || name == "table:1.0 shapes" ||
           name == "office:1.0 annotation" || name == "office:1.0 forms" || name == "table:1.0 tracked-changes";
}

} // namespace

void OdfCells::opened(std::string_view full_name, Attributes const& attributes) {
    ++depth_;
    if (ignored_ != 0)
        return;
    std::string_view const name = shortened(full_name);
    if (depth_ == 1)
        media_type_ = attributes.ending("office:1.0 mimetype");
    else if (holds_no_cells(name))
        ignored_ = depth_;
    else if (name == "table:1.0 null-date") {
        if (auto const days = days_since_1970(attributes.ending("table:1.0 date-value")); days && !null_date_known_) {
            null_date_ = *days;
            null_date_known_ = true;
        }
    } else if (name == "table:1.0 table" && depth_ == spreadsheet_depth + 1) {
        open_sheet(attributes);
    } else if (name == "table:1.0 named-range" || name == "table:1.0 named-expression") {
        open_name(name, attributes);
    } else if (table_ == 0) {
        return;
    } else if (name == "table:1.0 table-row" && row_ == 0) {
        row_ = depth_;
        row_repeated_ = count(attributes.ending("table:1.0 number-rows-repeated"), most_rows);
        next_column_ = 0;
        cells_.clear();
    } else if (row_ != 0 && cell_ == 0 && (name == "table:1.0 table-cell" || name == "table:1.0 covered-table-cell")) {
        cell_ = depth_;
        open_cell(attributes, name == "table:1.0 covered-table-cell");
    } else if (cell_ != 0 && open_.wanted) {
        open_in_cell(name, attributes);
    }
}

void OdfCells::open_sheet(Attributes const& attributes) {
    table_ = depth_;
    ++sheet_;
    next_row_ = 0;
    areas_.clear();
    if (!all_)
        return;
    auto const name = attributes.ending("table:1.0 name");
    room_.take(2 * sizeof(std::string) + name.size());
    sheet_names_.emplace_back(name);
    sink_.sheet(name);
}

void OdfCells::open_name(std::string_view name, Attributes const& attributes) {
    if (!all_)
        return;
    Place from;
    if (auto const base = formulas::address_in(attributes.ending("table:1.0 base-cell-address"))) {
        auto const sheet = std::ranges::find(sheet_names_, base->sheet);
        from = {sheet == sheet_names_.end() ? 0 : int(sheet - sheet_names_.begin()), base->block.top, base->block.left};
    }
    bool const is_range = name == "table:1.0 named-range";
    sink_.named({std::string(attributes.ending("table:1.0 name")), table_ == 0 ? std::string() : sheet_names_.back(),
                 std::string(attributes.ending(is_range ? "table:1.0 cell-range-address" : "table:1.0 expression")),
                 from});
}

void OdfCells::open_cell(Attributes const& attributes, bool covered) {
    open_ = {};
    open_.repeated = count(attributes.ending("table:1.0 number-columns-repeated"), most_columns);
    auto const array_rows = attributes.ending("table:1.0 number-matrix-rows-spanned");
    auto const array_columns = attributes.ending("table:1.0 number-matrix-columns-spanned");
    open_.is_array = !array_rows.empty();
    if (!array_rows.empty() && !array_columns.empty() && (array_rows != "1" || array_columns != "1")) {
        room_.take(sizeof(Area));
        areas_.push_back({next_row_, next_column_, count(array_rows, most_rows), count(array_columns, most_columns)});
    }
    open_.is_result = attributes.has_ending("table:1.0 formula") || in_array(next_column_);
    open_.wanted = open_.is_result || (all_ && !covered);
    if (!open_.wanted)
        return;
    if (all_) {
        open_.formula = attributes.ending("table:1.0 formula");
        int const rows = count(attributes.ending("table:1.0 number-rows-spanned"), most_rows);
        int const columns = count(attributes.ending("table:1.0 number-columns-spanned"), most_columns);
        if (rows > 1 || columns > 1)
            sink_.merged(
                {{sheet_, next_row_, next_column_}, {sheet_, next_row_ + rows - 1, next_column_ + columns - 1}});
    }
    open_.type = attributes.ending("office:1.0 value-type");
    open_.fault = attributes.ending("calcext:1.0 value-type") == "error";
    if (attributes.has_ending("office:1.0 string-value"))
        open_.string_value = attributes.ending("office:1.0 string-value");
    for (char const* name :
         {"office:1.0 value", "office:1.0 date-value", "office:1.0 time-value", "office:1.0 boolean-value"})
        if (open_.raw.empty())
            open_.raw = attributes.ending(name);
    hold(open_.formula.size() + open_.type.size() + open_.raw.size() +
         (open_.string_value ? open_.string_value->size() : 0));
}

void OdfCells::open_in_cell(std::string_view name, Attributes const& attributes) {
    if (name == "text:1.0 p" && paragraph_ == 0) {
        paragraph_ = depth_;
        if (open_.paragraphs++ > 0)
            open_.shown += '\n';
    } else if (name == "text:1.0 s") {
        auto const blanks = static_cast<std::size_t>(count(attributes.ending("text:1.0 c"), most_columns));
        hold(growing * blanks);
        open_.shown.append(blanks, ' ');
    } else if (name == "text:1.0 tab") {
        open_.shown += '\t';
    } else if (name == "text:1.0 line-break") {
        open_.shown += '\n';
    }
}

void OdfCells::text(std::string_view letters) {
    if (paragraph_ == 0 || ignored_ != 0)
        return;
    hold(growing * letters.size());
    for (char const letter : letters) { // white space in XML that somebody has laid out is one blank at most
        bool const white = letter == ' ' || letter == '\n' || letter == '\t' || letter == '\r';
        bool const repeated = open_.shown.empty() || open_.shown.back() == ' ' || open_.shown.back() == '\n';
        if (!white)
            open_.shown += letter;
        else if (!repeated)
            open_.shown += ' ';
    }
}

void OdfCells::closed(std::string_view) {
    if (ignored_ != 0) {
        if (ignored_ == depth_)
            ignored_ = 0;
    } else if (depth_ == paragraph_) {
        paragraph_ = 0;
    } else if (depth_ == cell_) {
        close_cell();
        cell_ = 0;
    } else if (depth_ == row_) {
        close_row();
        row_ = 0;
    } else if (depth_ == table_) {
        table_ = 0;
    }
    --depth_;
}

void OdfCells::close_cell() {
    if (open_.wanted) {
        OdfCell const cell{open_.type,  open_.raw,   open_.string_value,
                           open_.shown, open_.fault, null_date_known_ ? null_date_ : usual_null_date};
        Value value = value_of(cell);
        if (open_.is_result || !std::holds_alternative<std::monostate>(value)) {
            hold(sizeof(Cell) + open_.shown.size());
            bool const clock = open_.type == "date" || open_.type == "time";
            cells_.push_back({next_column_, open_.repeated, std::move(value), open_.is_result, clock, open_.is_array,
                              std::move(open_.formula)});
        }
    }
    next_column_ += open_.repeated;
}

void OdfCells::close_row() {
    for (int row = 0; row < row_repeated_ && !cells_.empty(); ++row)
        for (Cell const& cell : cells_)
            for (int column = 0; column < cell.repeated; ++column)
                sink_.cell({{sheet_, next_row_ + row, cell.column + column},
                            cell.value,
                            cell.is_result,
                            cell.formula,
                            cell.clock,
                            false,
                            cell.is_array});
    cells_.clear();
    room_.give_back(std::exchange(held_, 0));
    next_row_ += row_repeated_;
    std::erase_if(areas_, [&](Area const& area) { return area.row + area.rows <= next_row_; });
}

void OdfCells::hold(std::uint64_t bytes) {
    room_.take(bytes);
    held_ += bytes;
}

bool OdfCells::in_array(int column) const {
    return std::any_of(areas_.begin(), areas_.end(),
                       [&](Area const& area) { return column >= area.column && column < area.column + area.columns; });
}

} // namespace hearthcell::archive
