#pragma once
// The dialogs that show what will be done, and what came of the first few.

#include "extension/menu/dialog_parts.hpp"
#include "extension/menu/plan.hpp"
#include "extension/menu/same_task_dialog.hpp"

#include <memory>

namespace hearthcell::menu {

/// Buttons of both, besides "cancel".
inline constexpr char few_button[] = "few", all_button[] = "all";

/// A line for each cell: what it gets.
rtl::OUString cells_of(Surroundings const& surroundings, Plan const& plan);

/// What goes into the folder's sheets. Where values must be confirmed, nobody can go on before. original_changed:
/// since the document was started from it.
std::unique_ptr<Dialog> plan_dialog(Surroundings const& surroundings, SameTask const& task, Plan const& plan,
                                    bool original_changed);

/// Of the proposed pairs those that are chosen in it.
std::vector<CsvRow> chosen_pairs(Dialog const& dialog, Plan const& plan);

/// After the first few: whether all are to follow. readings: lines.
std::unique_ptr<Dialog> trial_dialog(Surroundings const& surroundings, rtl::OUString const& readings);

} // namespace hearthcell::menu
