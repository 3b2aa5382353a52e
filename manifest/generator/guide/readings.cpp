#include "manifest/generator/guide/readings.hpp"

#include "manifest/generator/guide/words.hpp"
#include "manifest/generator/output.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::generator::guide {
namespace {

constexpr int rows_above = 5; ///< title, introduction, blank, names of the columns, users

} // namespace

Readings::Cells Readings::cells(std::span<double const> column, Function const& user) {
    auto found =
        std::ranges::find_if(columns, [&](Column const& known) { return known.values.data() == column.data(); });
    if (found == columns.end())
        found = columns.insert(columns.end(), {column, {}});
    if (std::ranges::find(found->users, user.name) == found->users.end())
        found->users.push_back(user.name);
    std::string const letters = column_name(std::size_t(found - columns.begin()));
    return {letters + std::to_string(rows_above + 1), letters + std::to_string(rows_above + column.size())};
}

Sheet Readings::sheet() const {
    Sheet sheet(std::string(word(Word::readings_sheet, language)), std::vector<double>(columns.size(), 2.7));
    int const all = int(columns.size());
    sheet.add({text("subject", word(Word::readings_sheet, language), all)});
    sheet.add({text("prose", word(Word::readings_intro, language), all)});
    sheet.space(0.3);
    std::vector<Entry> letters, users;
    std::size_t rows = 0;
    for (std::size_t place = 0; place < columns.size(); ++place) {
        letters.push_back(text("column", column_name(place)));
        std::string names;
        for (std::string_view const user : columns[place].users)
            names += (names.empty() ? "" : ", ") + std::string(user);
        users.push_back(text("users", filled(word(Word::used_by, language), "%1", names)));
        rows = std::max(rows, columns[place].values.size());
    }
    sheet.add(letters);
    sheet.add(users);
    sheet.freeze();
    for (std::size_t row = 0; row < rows; ++row) {
        std::vector<Entry> entries;
        for (Column const& column : columns) {
            bool const is_there = row < column.values.size() && !std::isnan(column.values[row]);
            entries.push_back(is_there ? number("reading", column.values[row]) : nothing("reading"));
        }
        sheet.add(entries);
    }
    return sheet;
}

} // namespace hearthcell::generator::guide
