#include "extension/formulas/table.hpp"

#include "extension/formulas/letters.hpp"

#include <algorithm>
#include <tuple>

namespace hearthcell::formulas {
namespace {

/// What stands in innermost brackets. An apostrophe lets the next letter stand for itself.
struct Item {
    std::string text;
    bool is_word_of_calc = false; // #All, #This Row, @
};

std::vector<Item> items_in(std::string_view brackets) {
    std::vector<Item> items;
    Item item;
    for (std::size_t at = 0; at < brackets.size(); ++at) {
        char const c = brackets[at];
        if (c == '[' || c == ']') {
            if (c == ']' && !item.text.empty())
                items.push_back(item);
            item = {};
        } else if (c == '\'' && at + 1 < brackets.size()) {
            item.text += brackets[++at];
        } else {
            item.is_word_of_calc = item.is_word_of_calc || (item.text.empty() && (c == '#' || c == '@'));
            item.text += c;
        }
    }
    return items;
}

} // namespace

TableReference table_reference_of(Token const& token) {
    std::size_t const bracket = token.text.find('[');
    TableReference reference{std::string(token.text.substr(0, bracket)), {}, false};
    for (Item const& item : items_in(token.text.substr(bracket))) {
        if (!item.is_word_of_calc) {
            reference.columns.push_back(item.text);
        } else if (item.text[0] == '@') {
            reference.this_row = true;
            if (item.text.size() > 1)
                reference.columns.push_back(item.text.substr(1));
        } else if (is_same_name(item.text, "#This Row")) {
            reference.this_row = true;
        }
    }
    return reference;
}

Range cells_of(Table const& table, TableReference const& reference, Place const& cell) {
    Range range = table.cells;
    if (reference.this_row)
        range.first.row = range.last.row = cell.row;
    if (reference.columns.empty())
        return range;
    auto const column = [&](std::string const& heading, int otherwise) {
        auto const found = std::find_if(table.columns.begin(), table.columns.end(),
                                        [&](std::string const& one) { return is_same_name(one, heading); });
        return found == table.columns.end() ? otherwise : table.cells.first.column + int(found - table.columns.begin());
    };
    std::tie(range.first.column, range.last.column) =
        std::minmax({column(reference.columns.front(), table.cells.first.column),
                     column(reference.columns.back(), table.cells.last.column)});
    return range;
}

} // namespace hearthcell::formulas
