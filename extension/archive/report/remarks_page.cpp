// The page of the summary that shows what the check of each workbook remarked.

#include "extension/archive/report/pages.hpp"

namespace hearthcell::archive {

Page page_of_remarks(Summary const& summary, Findings const& findings) {
    Page page{.name = "Remarks", .title = "What the check remarked"};
    page.words.push_back(words_of(summary.remarks));
    if (findings.remarks.empty())
        return page;
    PageTable table{{{"file", Look::text, 76},
                     {"cell", Look::text, 34},
                     {"function", Look::text, 46},
                     {"value", Look::text, 22},
                     {"remark", Look::text, 110},
                     {"effect", Look::text, 50}},
                    {}};
    for (Findings::Remarked const& one : findings.remarks)
        table.rows.push_back({linked_cell(one.origin), text_cell(one.remark.sheet + "." + one.remark.cell),
                              text_cell(one.remark.function), text_cell(one.remark.value),
                              text_cell(one.remark.sentence), text_cell(one.remark.effect)});
    add_more(page, summary.remarks.remarks, table.rows.size(), "remarks", "remarks.csv");
    page.notes.emplace_back(
        "A run is a row of a record, or a sheet. Each remark asks for a look; none changes a result.");
    page.tables.push_back(std::move(table));
    return page;
}

} // namespace hearthcell::archive
