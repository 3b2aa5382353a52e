#pragma once
// The first sheet: every function with a link to its block and its verdict, and the verdict of all.

#include "manifest/generator/guide/block.hpp"

namespace hearthcell::generator::guide {

/// Where the index has which row. All verdicts are counted there; the other sheets look them up.
class IndexRows {
public:
    [[nodiscard]] int total() const;
    [[nodiscard]] int of_subject(std::size_t group) const;
    [[nodiscard]] int of_function(std::size_t group, std::size_t place) const;
};

/// Addresses of cells of the index as formulas of other sheets hold them.
std::string index_cell(char column, int row, Language language);
inline constexpr char agreeing_column = 'D', checks_column = 'E', verdict_column = 'F';

/// A verdict from the numbers of checks that agree and of all checks, which are references.
std::string verdict_of_counts(std::string const& agreeing, std::string const& all, Language language);

/// Blocks: of each subject in order, where its functions' blocks stand.
Sheet index_sheet(std::vector<std::string> const& subjects, std::vector<std::vector<BlockRows>> const& blocks,
                  Language language);

} // namespace hearthcell::generator::guide
