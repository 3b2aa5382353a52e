#include "extension/archive/records/old_and_new_csv.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/archive/recalculation/change.hpp"

namespace hearthcell::archive {
namespace {

struct Column {
    char const* heading;
    std::string OldAndNewRow::*field;
};

/// The results by each method stand before the last one.
constexpr std::array columns{
    Column{"workbook", &OldAndNewRow::workbook},
    Column{"compared", &OldAndNewRow::compared},
    Column{"sheet", &OldAndNewRow::sheet},
    Column{"row", &OldAndNewRow::row},
    Column{"new_cell", &OldAndNewRow::new_cell},
    Column{"old_cell", &OldAndNewRow::old_cell},
    Column{"old", &OldAndNewRow::old_result},
    Column{"new", &OldAndNewRow::new_result},
    Column{"factor", &OldAndNewRow::factor},
    Column{"difference", &OldAndNewRow::difference},
    Column{"relative_difference", &OldAndNewRow::relative_difference},
    Column{"remark", &OldAndNewRow::remark},
};
constexpr std::size_t before_methods = columns.size() - 1, width = columns.size() + methods.size();

std::string written_or_empty(std::optional<double> const& number) {
    return number ? written(*number) : std::string();
}

} // namespace

std::vector<std::string> headings_of_old_and_new() {
    std::vector<std::string> headings;
    for (Column const& column : columns)
        headings.emplace_back(column.heading);
    headings.insert(headings.begin() + before_methods, methods.begin(), methods.end());
    return headings;
}

std::string words(ComparedPair const& pair) {
    return pair.now + "=" + pair.old;
}

std::vector<std::string> fields_of(std::string const& workbook, ComparedPair const& pair, ComparedRow const& row) {
    OldAndNewRow const all{.workbook = shown(workbook),
                           .compared = words(pair),
                           .sheet = row.sheet,
                           .row = std::to_string(row.row),
                           .new_cell = row.now_cell,
                           .old_cell = row.old_cell,
                           .old_result = written(row.before),
                           .new_result = written(row.after),
                           .factor = row.in_per_cent ? "100" : "",
                           .difference = written_or_empty(row.difference),
                           .relative_difference = row.relative ? written_relative(*row.relative) : "",
                           .remark = row.remark,
                           .by_methods = {}};
    std::vector<std::string> fields;
    for (Column const& column : columns)
        fields.push_back(all.*column.field);
    std::vector<std::string> numbers;
    for (auto const& number : row.by_methods)
        numbers.push_back(written_or_empty(number));
    fields.insert(fields.begin() + before_methods, numbers.begin(), numbers.end());
    return fields;
}

std::optional<OldAndNewRow> old_and_new_row(std::vector<std::string> const& fields) {
    if (fields.size() != width)
        return std::nullopt;
    OldAndNewRow row;
    for (std::size_t at = 0; at < columns.size(); ++at)
        row.*columns.at(at).field = fields[at < before_methods ? at : at + methods.size()];
    for (std::size_t method = 0; method < methods.size(); ++method)
        row.by_methods.at(method) = fields[before_methods + method];
    return row;
}

} // namespace hearthcell::archive
