#pragma once
// Every text of the menu and its dialogs, once, in all languages. No UNO here: the generator writes the menu from it,
// too.

#include "functions/words/language.hpp"

namespace hearthcell::menu {

/// A ~ stands before the letter that a label is chosen by; %1 and %2 stand for what is only known on the spot.
enum class Text {
    menu_title,
    new_bench_record,
    new_comparison,
    new_log_import,
    new_campaign,
    function_guide,
    check_workbook,
    check_selection,
    leave_seen,
    copy_for_sharing,
    recalculate_folder,
    about,
    about_words,
    old_sheets,
    results_folder,
    choose_folder,
    choose_old_sheets,
    choose_results_folder,
    what_to_write,
    whole_copies,
    shared_copies,
    reports_only,
    what_to_collect,
    originals_stay,
    recalculate,
    cancel,
    name_of_results,
    recalculating,
    looking_for_workbooks,
    workbooks_done,
    problems_so_far,
    writing_reports,
    stopping,
    office_stays_usable,
    stopped,
    recalculated,
    not_recalculated,
    program_missing,
    package_not_found,
    file_missing,
    cannot_open,
    no_spreadsheet,
    picker_title,
    ods_files,
    xlsx_files,
    untitled,
    name_of_copy,
    name_is_open,
    sheet_is_locked,
    copying,
    reading_document,
    replacing_formulas,
    saving_copy,
    copy_stopped,
    copy_failed,
    copied,
    copied_but_left,
    copied_without_links,
    copied_without_password,
    checking,
    looking_at_formulas,
    writing_check,
    check_stopped,
    nothing_to_check,
    no_cells_selected,
    no_check_here,
    nothing_seen,
    checked_document_closed,
    seen_kept,
    unexpected,
    office_says,
    count // not a text
};
inline constexpr auto text_count = std::size_t(Text::count);

std::string_view text(Text which, Language language);

/// The dialogs' title.
inline constexpr std::string_view our_name = "Hearthcell";

} // namespace hearthcell::menu
