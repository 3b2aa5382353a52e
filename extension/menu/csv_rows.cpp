#include "extension/menu/csv_rows.hpp"

#include <fstream>

namespace hearthcell::menu {
namespace {

constexpr std::size_t longest_file = 4 << 20; // more than anybody would read through in a dialog

/// One backslash off at the front of a field and behind each semicolon, tab, bar and line end in it.
std::string without_marks(std::string const& field) {
    std::string plain;
    bool at_front = true;
    for (char const c : field) {
        if (!(at_front && c == '\\'))
            plain += c;
        at_front = c == ';' || c == '\t' || c == '|' || c == '\r' || c == '\n';
    }
    return plain;
}

/// The fields of the record that begins at a place, which is moved behind it.
std::vector<std::string> next_record(std::string_view text, std::size_t& at) {
    std::vector<std::string> fields(1);
    bool quoted = false;
    for (; at < text.size(); ++at) {
        char const c = text[at];
        if (quoted && c == '"' && at + 1 < text.size() && text[at + 1] == '"')
            fields.back() += text[++at];
        else if (c == '"')
            quoted = !quoted;
        else if (!quoted && c == ',')
            fields.emplace_back();
        else if (!quoted && c == '\n')
            break;
        else if (quoted || c != '\r')
            fields.back() += c;
    }
    ++at;
    for (std::string& field : fields)
        field = without_marks(field);
    return fields;
}

} // namespace

std::vector<CsvRow> csv_rows(std::string_view text) {
    std::size_t at = 0;
    std::vector<std::string> const columns = next_record(text, at);
    std::vector<CsvRow> rows;
    while (at < text.size()) {
        std::vector<std::string> const fields = next_record(text, at);
        CsvRow row;
        for (std::size_t place = 0; place < fields.size() && place < columns.size(); ++place)
            row[columns[place]] = fields[place];
        rows.push_back(row);
    }
    return rows;
}

std::vector<CsvRow> csv_rows_of(std::string const& path) {
    std::ifstream file(path, std::ios::binary);
    std::string text(longest_file, '\0');
    file.read(text.data(), std::streamsize(text.size()));
    text.resize(std::size_t(file.gcount()));
    if (text.size() == longest_file)
        text.resize(text.rfind('\n') + 1); // whole rows only
    return csv_rows(text);
}

std::string_view in_column(CsvRow const& row, std::string_view column) {
    auto const found = row.find(column);
    return found == row.end() ? std::string_view() : found->second;
}

} // namespace hearthcell::menu
