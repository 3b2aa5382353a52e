#pragma once
// All that the guide says of one function.

#include "manifest/generator/guide/check.hpp"

namespace hearthcell::generator::guide {

/// Where a block stands on its sheet.
struct BlockRows {
    int title = 0;
    int first_check = 0, last_check = 0; ///< rows with a verdict, and with what stands between them
};

/// Columns of a sheet of blocks, and the one of the verdicts.
std::vector<double> block_widths();
inline constexpr char check_column = 'H', result_column = 'D';

/// Adds the block of a function; `verdict` is the cell of the index that holds the function's verdict.
BlockRows add_block(Sheet& sheet, Function const& function, std::string const& verdict, Readings& readings,
                    Language language);

} // namespace hearthcell::generator::guide
