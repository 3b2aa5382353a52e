#include "extension/formulas/reads.hpp"

#include "extension/formulas/letters.hpp"
#include "extension/formulas/number.hpp"
#include "extension/formulas/quotes.hpp"

#include <algorithm>

namespace hearthcell::formulas {
namespace {

/// What is relative in a name moves along with the cell, and from one end of the sheet to the other.
int moved(int place, int by, int last) {
    int const size = last + 1;
    return ((place + by) % size + size) % size;
}

Corner moved(Corner corner, Place const& from, Place const& to) {
    if (corner.row && !corner.row_fixed)
        corner.row = moved(*corner.row, to.row - from.row, last_row);
    if (corner.column && !corner.column_fixed)
        corner.column = moved(*corner.column, to.column - from.column, last_column);
    return corner;
}

bool is_operand(Token const& token) {
    return token.kind == TokenKind::reference || token.kind == TokenKind::name || token.kind == TokenKind::table;
}

} // namespace

Reads::Reads(std::vector<std::string> const& sheets, Names const& names, std::vector<Table> const& tables)
    : sheets_(sheets), names_(names) {
    for (std::size_t at = 0; at < sheets.size(); ++at)
        sheet_numbers_[folded(sheets[at])] = int(at);
    for (Table const& table : tables)
        tables_[folded(table.name)] = &table;
}

std::vector<Range> Reads::of(std::string_view formula, Place const& cell) const {
    std::vector<Token> const tokens = tokens_without_blanks(formula);
    std::vector<Range> found;
    std::vector<std::size_t> names; // that are used, each once
    std::set<std::size_t> known;
    auto const read = [&](Seen const& seen) {
        for (std::size_t at = 0; at < seen.tokens.size(); ++at) {
            if (!is_operand(seen.tokens[at]))
                continue;
            if (auto const range = between(seen, at, at + 2)) {
                found.push_back(*range);
                at += 2;
            } else if (auto const name = name_meant(seen, seen.tokens[at])) {
                if (known.insert(*name).second)
                    names.push_back(*name);
            } else {
                std::vector<Range> const cells = cells_at(seen, seen.tokens[at]);
                found.insert(found.end(), cells.begin(), cells.end());
            }
        }
    };
    read({tokens, cell});
    for (std::size_t done = 0; done < names.size(); ++done)
        read({names_.content(names[done]), cell, &names_.definition(names[done])});
    return found;
}

std::optional<double> Reads::number_named(Token const& name, Place const& cell) const {
    auto const meant = names_.meant(name, sheets_.at(std::size_t(cell.sheet)));
    if (!meant)
        return std::nullopt;
    std::vector<Token> content = names_.content(*meant);
    std::erase_if(content, [](Token const& token) { return token.kind == TokenKind::start; });
    bool const is_number = content.size() == 1 && content[0].kind == TokenKind::number;
    return is_number ? number_in(content[0].text) : std::nullopt;
}

std::string_view Reads::sheet_of(Seen const& seen) const {
    return seen.definition != nullptr ? std::string_view(seen.definition->sheet)
                                      : sheets_.at(std::size_t(seen.cell.sheet));
}

std::optional<std::size_t> Reads::name_meant(Seen const& seen, Token const& token) const {
    return names_.meant(token, sheet_of(seen));
}

std::vector<Range> Reads::cells_at(Seen const& seen, Token const& token) const {
    if (auto const name = name_meant(seen, token)) { // only of a name that stands for a reference and nothing more
        std::vector<Token> const& content = names_.content(*name);
        if (content.size() != 1 || content[0].kind != TokenKind::reference ||
            name_meant({content, seen.cell, &names_.definition(*name)}, content[0]))
            return {};
        return cells_at({content, seen.cell, &names_.definition(*name)}, reference_of(content[0]));
    }
    if (token.kind == TokenKind::reference)
        return cells_at(seen, reference_of(token));
    if (token.kind != TokenKind::table)
        return {};
    TableReference const reference = table_reference_of(token);
    auto const table = tables_.find(folded(reference.table));
    return table == tables_.end() ? std::vector<Range>() : std::vector{cells_of(*table->second, reference, seen.cell)};
}

std::vector<Range> Reads::cells_at(Seen const& seen, Reference const& written) const {
    if (!written.file.empty())
        return {};
    Reference reference = written;
    Place const from = seen.definition != nullptr ? seen.definition->seen_from : seen.cell;
    reference.first = moved(written.first, from, seen.cell);
    reference.last = moved(written.last, from, seen.cell);
    auto const sheet = [&](Corner const& corner, int otherwise) {
        if (corner.sheet.empty())
            return otherwise;
        auto const known = sheet_numbers_.find(folded(unquoted(corner.sheet)));
        if (known == sheet_numbers_.end())
            return -1;
        return known->second + (corner.sheet_fixed ? 0 : seen.cell.sheet - from.sheet);
    };
    int const first = sheet(reference.first, seen.cell.sheet), last = sheet(reference.last, first);
    auto const [top, left, bottom, right] = block_of(reference);
    std::vector<Range> ranges;
    if (first >= 0 && last < int(sheets_.size()))
        for (int at = first; at <= last; ++at)
            ranges.push_back({{at, top, left}, {at, bottom, right}});
    return ranges;
}

/// Between two operands with a colon between them: first:last, A1:last.
std::optional<Range> Reads::between(Seen const& seen, std::size_t first, std::size_t last) const {
    if (last >= seen.tokens.size() || seen.tokens[first + 1].text != ":" || !is_operand(seen.tokens[last]))
        return std::nullopt;
    std::vector<Range> const a = cells_at(seen, seen.tokens[first]), b = cells_at(seen, seen.tokens[last]);
    if (a.size() != 1 || b.size() != 1 || a[0].first.sheet != b[0].first.sheet)
        return std::nullopt;
    int const sheet = a[0].first.sheet;
    return Range{{sheet, std::min(a[0].first.row, b[0].first.row), std::min(a[0].first.column, b[0].first.column)},
                 {sheet, std::max(a[0].last.row, b[0].last.row), std::max(a[0].last.column, b[0].last.column)}};
}

} // namespace hearthcell::formulas
