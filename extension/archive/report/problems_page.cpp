// The page of the summary that shows what needs a look.

#include "extension/archive/report/pages.hpp"

namespace hearthcell::archive {
namespace {

std::string advice(Reason reason) {
    switch (reason) {
    case Reason::password:
        return "It is encrypted. Save it without a password, or leave it out.";
    case Reason::corrupt:
        return "The file is damaged. Look for a backup.";
    case Reason::unsupported:
        return "It is no workbook of a known kind.";
    case Reason::timed_out:
        return "It takes longer than --time-limit allows, or never ends.";
    case Reason::memory_limit:
        return "It takes more memory than --memory-limit allows.";
    case Reason::crashed:
        return "LibreOffice ended over it, twice. Open it by hand.";
    case Reason::new_errors:
        return "Cells that showed a result show an error now. STOVE.EXPLAIN says why.";
    case Reason::external_links:
        return "It reads other files, which were not asked. What it showed of them was kept.";
    case Reason::unreadable:
        return "It may not be read, or is gone.";
    case Reason::too_large:
        return "It is larger, or takes more memory to read, than --size-limit allows.";
    case Reason::not_written:
        return "There was no room or no permission to write.";
    case Reason::symlink_loop:
        return "A link leads back to where it came from.";
    case Reason::not_set:
        return "It has no such name or cell for --set, or one that is protected.";
    case Reason::not_collected:
        return "What --collect asks for is too large, or a block where one cell was meant.";
    case Reason::not_compared:
        return "What --compare sets side by side is too large, or not of one size.";
    case Reason::nowhere:
        return "No workbook has a cell or name that was asked for. Was it meant so?";
    case Reason::locked_sheet:
        return "Lift the protection of the sheet, so that its formulas can become values.";
    case Reason::formulas_left:
        return "Rules or names of it still call a function of ours; see the detail.";
    case Reason::failed:
        return "LibreOffice could not do it. Open it by hand.";
    case Reason::differs:
        return "The joined runs have two workbooks of this name. The first one is counted.";
    case Reason::typed_over:
        return "A number stands in a column where the formula does above and below it.";
    case Reason::text_for_number:
        return "It looks like a number, but formulas see a text: they pass over it, or fail.";
    case Reason::stored_errors:
        return "The file holds errors as results of formulas.";
    case Reason::another_layout:
        return "The example does not fit a sheet of it: see the detail. An example of its own, --same-words or "
               "--partly.";
    case Reason::left_as_it_was:
        return "Cells hold something else than in the example's old sheet: a note, another formula, a typed result.";
    case Reason::not_carried:
        return "A part of the example was not carried; see the detail.";
    }
    return {};
}

} // namespace

Page page_of_problems(Summary const& summary, Findings const& findings) {
    Page page{.name = "Problems", .title = "What needs a look"};
    if (summary.problems.empty()) {
        page.words.emplace_back("No problems: every workbook could be done.");
        return page;
    }
    PageTable reasons{{{"reason", Look::text, 76}, {"cases", Look::count, 52}, {"what it means", Look::text, 140}}, {}};
    PageTable cases{{{"file", Look::text, 76}, {"reason", Look::text, 52}, {"detail", Look::text, 140}}, {}};
    std::uint64_t all = 0;
    for (auto const& [words_of_reason, number] : summary.problems) {
        Reason const reason = reason_of(words_of_reason);
        reasons.rows.push_back({text_cell(words_of_reason), count_cell(number), text_cell(advice(reason))});
        all += number;
        if (auto const listed = findings.problems.find(reason); listed != findings.problems.end())
            for (Findings::Listed const& one : listed->second)
                cases.rows.push_back(
                    {linked_cell(one.origin), text_cell(words_of_reason), text_cell(one.problem.detail)});
    }
    add_more(page, all, cases.rows.size(), "cases", "problems.csv");
    page.tables.push_back(std::move(reasons));
    page.tables.push_back(std::move(cases));
    return page;
}

} // namespace hearthcell::archive
