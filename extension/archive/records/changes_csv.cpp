#include "extension/archive/records/changes_csv.hpp"

#include "extension/archive/files/shown.hpp"

namespace hearthcell::archive {

std::vector<std::string> headings_of_changes() {
    std::vector<std::string> headings;
    for (ChangeColumn const& column : change_columns)
        headings.emplace_back(column.heading);
    return headings;
}

std::vector<std::string> fields_of(std::string const& file, Change const& change) {
    ChangeRow const row{.file = shown(file),
                        .sheet = change.sheet,
                        .cell = cell_name(change.place),
                        .formula = change.formula,
                        .before = written(change.before),
                        .after = written(change.after),
                        .relative_change = change.relative ? written_relative(*change.relative) : "",
                        .kind = std::string(words(change.kind)),
                        .changes_by_itself = std::string(words(change.volatility))};
    std::vector<std::string> fields;
    for (ChangeColumn const& column : change_columns)
        fields.push_back(row.*column.field);
    return fields;
}

std::optional<ChangeRow> change_row(std::vector<std::string> const& fields) {
    if (fields.size() != change_columns.size())
        return std::nullopt;
    ChangeRow row;
    for (std::size_t at = 0; at < fields.size(); ++at)
        row.*change_columns.at(at).field = fields[at];
    return row;
}

bool counts(ChangeRow const& row) {
    return row.changes_by_itself == words(Volatility::none) && row.kind != words(ChangeKind::last_digits);
}

} // namespace hearthcell::archive
