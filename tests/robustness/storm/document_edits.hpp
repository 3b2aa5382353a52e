#pragma once
// What happens to a document while its cells are computed.

#include "operands.hpp"

namespace hearthcell::storm {

/// A blank document with the storm's sheets and names.
office::Document new_document(office::Office& office, std::vector<NamedArea> const& names);

void insert_rows(office::Document const& document, int sheet, int row, int count);
void delete_rows(office::Document const& document, int sheet, int row, int count);

/// How many steps can be undone.
int undo_steps(office::Document const& document);
void undo(office::Document const& document, int steps);

/// The memory that a process holds, in MB.
double resident_megabytes(pid_t process);

} // namespace hearthcell::storm
