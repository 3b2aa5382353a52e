#include "extension/archive/recalculation/collected_columns.hpp"

#include "extension/formulas/reference.hpp"

#include <stdexcept>

namespace hearthcell::archive {
namespace {

constexpr int most_columns = 256;

/// "A5:A14", and of whole columns "A".
std::string column_of(formulas::Block const& block, int column) {
    if (block.bottom == formulas::last_row && block.top == 0) {
        std::string const letters = formulas::cell_name(column, 0);
        return letters.substr(0, letters.size() - 1);
    }
    return formulas::cell_name(column, block.top) + ":" + formulas::cell_name(column, block.bottom);
}

} // namespace

std::vector<CollectedColumn> columns_of(std::vector<std::string> const& names) {
    std::vector<CollectedColumn> columns;
    for (std::size_t number = 0; number < names.size(); ++number) {
        std::string const& name = names[number];
        auto const address = formulas::address_in(name);
        if (!address || (address->block.top == address->block.bottom && address->block.left == address->block.right)) {
            columns.push_back({name, number});
            continue;
        }
        auto const& block = address->block;
        if (block.right - block.left >= most_columns)
            throw std::invalid_argument(name + " is " + std::to_string(block.right - block.left + 1) +
                                        " columns wide; a table of what is collected takes at most " +
                                        std::to_string(most_columns));
        columns.push_back({name + " row", number, true});
        for (int column = block.left; column <= block.right; ++column)
            columns.push_back({address->sheet + "." + column_of(block, column), number});
    }
    return columns;
}

} // namespace hearthcell::archive
