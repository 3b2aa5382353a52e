#pragma once
// STOVE.EACHROW: a function of single values, called once for each row of whole columns.

#include "functions/contract/kernel.hpp"

namespace hearthcell {

/// A column, or a row where the blocks are rows. A row that is empty in all blocks has a blank, one that is refused its
/// own error; it ends with the last row that holds anything.
Outcome answer_each_row(std::span<Value const> given);

/// What EXPLAIN would find odd about the rows that gave something.
Remarks remark_on_rows(std::span<Value const> given, Language language);

/// What EXPLAIN says of the first row that was refused; empty where all are answered, or none was asked.
std::string why_no_row(std::span<Value const> given, Language language);

} // namespace hearthcell
