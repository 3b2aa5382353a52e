#include "extension/archive/files/xlsx_sheet.hpp"

#include "extension/archive/files/xlsx_formula.hpp"
#include "extension/archive/files/xlsx_package.hpp"
#include "extension/formulas/moved.hpp"

#include <charconv>
#include <optional>

namespace hearthcell::archive {
namespace {

/// Takes "BC12" apart; false when it is no cell.
bool read_cell(std::string_view text, int& row, int& column) {
    int letters = 0;
    std::size_t at = 0;
    for (; at < text.size() && text[at] >= 'A' && text[at] <= 'Z' && at < 3; ++at)
        letters = letters * 26 + (text[at] - 'A' + 1);
    int number = 0;
    auto const [end, problem] = std::from_chars(text.data() + at, text.data() + text.size(), number);
    if (letters == 0 || problem != std::errc() || number < 1)
        return false;
    row = number - 1;
    column = letters - 1;
    return true;
}

struct Corners {
    int top, left, bottom, right;
};
std::optional<Corners> corners_in(std::string_view range) {
    Corners corners{};
    auto const colon = range.find(':');
    bool const are_two = colon != std::string_view::npos &&
                         read_cell(range.substr(0, colon), corners.top, corners.left) &&
                         read_cell(range.substr(colon + 1), corners.bottom, corners.right);
    return are_two ? std::optional(corners) : std::nullopt;
}

} // namespace

void XlsxSheet::opened(std::string_view full_name, Attributes const& attributes) {
    std::string_view const name = local(full_name);
    if (name == "row") {
        open_row(attributes);
    } else if (name == "c") {
        open_cell(attributes);
    } else if (name == "f") {
        open_formula(attributes);
    } else if (name == "v") {
        in_ = In::value;
        has_value_ = true;
    } else if (name == "t" && all_ && type_ == "inlineStr") {
        in_ = In::value;
        has_value_ = true;
    } else if (name == "mergeCell" && all_) {
        if (auto const merged = corners_in(attributes.ending("ref")))
            sink_.merged({{sheet_, merged->top, merged->left}, {sheet_, merged->bottom, merged->right}});
    }
}

void XlsxSheet::open_row(Attributes const& attributes) {
    int number = 0;
    auto const text = attributes.ending("r");
    std::from_chars(text.data(), text.data() + text.size(), number);
    row_ = number > 0 ? number - 1 : row_ + 1;
    column_ = -1;
    std::erase_if(arrays_, [&](Area const& area) { return area.bottom < row_; });
}

void XlsxSheet::open_cell(Attributes const& attributes) {
    if (!read_cell(attributes.ending("r"), row_, column_))
        ++column_;
    type_ = attributes.ending("t");
    is_array_ = is_result_ = in_array();
    room_.give_back(growing * (value_.size() + formula_.size()));
    value_.clear();
    formula_.clear();
    shared_.clear();
    has_value_ = false;
}

void XlsxSheet::open_formula(Attributes const& attributes) {
    is_result_ = true;
    is_array_ = is_array_ || attributes.ending("t") == "array";
    if (is_array_)
        if (auto const area = corners_in(attributes.ending("ref"))) {
            room_.take(2 * sizeof(Area));
            arrays_.push_back({area->top, area->left, area->bottom, area->right});
        }
    if (!all_)
        return;
    in_ = In::formula;
    if (attributes.ending("t") == "shared")
        shared_ = attributes.ending("si");
}

void XlsxSheet::closed(std::string_view full_name) {
    std::string_view const name = local(full_name);
    if (name == "v" || name == "f" || name == "t")
        in_ = In::nothing;
    else if (name == "c" && (is_result_ || (all_ && has_value_)))
        close_cell();
}

void XlsxSheet::text(std::string_view letters) {
    if (in_ == In::nothing)
        return;
    room_.take(growing * letters.size());
    (in_ == In::value ? value_ : formula_) += letters;
}

void XlsxSheet::close_cell() {
    std::string const whole = all_ && is_result_ ? formula() : std::string();
    sink_.cell({{sheet_, row_, column_}, value(), is_result_, whole, false, false, is_array_});
}

/// The formula of the cell, also where only another cell holds it.
std::string XlsxSheet::formula() {
    if (!formula_.empty()) {
        std::string whole = in_the_way_of_calc(formula_);
        if (!shared_.empty()) {
            room_.take(sizeof(std::pair<std::string, Shared>) + shared_.size() + whole.size());
            shared_formulas_[shared_] = {whole, row_, column_};
        }
        return whole;
    }
    auto const known = shared_.empty() ? shared_formulas_.end() : shared_formulas_.find(shared_);
    if (known == shared_formulas_.end())
        return {};
    return formulas::moved(known->second.formula, row_ - known->second.row, column_ - known->second.column);
}

bool XlsxSheet::in_array() const {
    for (Area const& area : arrays_)
        if (row_ >= area.top && row_ <= area.bottom && column_ >= area.left && column_ <= area.right)
            return true;
    return false;
}

Value XlsxSheet::value() const {
    if (type_ == "str" || type_ == "inlineStr")
        return value_;
    if (!has_value_)
        return {};
    if (type_ == "e")
        return Fault{error_code(value_), value_};
    double number = 0;
    auto const [end, problem] = std::from_chars(value_.data(), value_.data() + value_.size(), number);
    if (type_ == "s") { // a formula's text is never in the table of shared texts
        bool const is_known = !is_result_ && problem == std::errc() && number >= 0 && number < double(texts_.size());
        return is_known ? Value(texts_[std::size_t(number)]) : Value();
    }
    return problem == std::errc() ? Value(number) : Value();
}

} // namespace hearthcell::archive
