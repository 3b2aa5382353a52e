#include "archive/workbook.hpp"

#include "archive/csv.hpp"
#include "archive/formula.hpp"
#include "archive/formula_cells.hpp"
#include "archive/links.hpp"
#include "archive/restless.hpp"
#include "archive/sharing.hpp"
#include "office/document.hpp"
#include "office/text.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

using office::Document;

Document open(office::Office& office, std::filesystem::path const& file) {
    try {
        return Document::open(office, file, office::Access::read_write);
    } catch (office::WantsPassword const& refused) {
        throw Trouble(Reason::password, "encrypted");
    } catch (office::NoSpreadsheet const& refused) {
        throw Trouble(Reason::unsupported, "LibreOffice takes it for another kind of document");
    } catch (office::Gone const&) {
        throw;
    } catch (std::exception const& refused) {
        // What it says names the private copy, which means nothing to anybody.
        std::string why = refused.what();
        if (auto const at = why.find(" ("); at != std::string::npos)
            why = why.substr(at);
        else
            why.clear();
        throw Trouble(Reason::corrupt, "LibreOffice cannot open it" + why);
    }
}

StoredResults results_in(Document const& workbook) {
    StoredResults results;
    visit_formulas(workbook, [&](Place const& place, Value const& value, Formula const&) {
        results.add({place, value, false});
    });
    results.sort();
    return results;
}

Scope scope_of(Document const& workbook) {
    Scope scope;
    int const sheets = workbook.sheets();
    for (int sheet = 0; sheet < sheets; ++sheet)
        scope.sheets.push_back(workbook.sheet(sheet).name());
    for (office::NamedBlock const& block : workbook.named_blocks()) {
        auto const sheet = std::find(scope.sheets.begin(), scope.sheets.end(), block.sheet);
        Range range;
        if (sheet != scope.sheets.end() &&
            read_range(block.range, static_cast<int>(sheet - scope.sheets.begin()), range))
            scope.names[upper(block.name)] = range;
    }
    return scope;
}

/// The changes in the order of the cells, and the formulas under their stored names.
struct Compared {
    std::vector<Change> changes;
    Tally tally;
};

Compared compare(Document const& workbook, StoredResults const& stored) {
    Compared all;
    Scope const scope = scope_of(workbook);
    visit_formulas(workbook, [&](Place const& place, Value const& after, Formula const& formula) {
        ++all.tally.formulas;
        Stored const* const found = stored.find(place);
        Stored const before = found != nullptr ? *found : Stored{place, {}, false};
        if (std::holds_alternative<std::monostate>(before.value))
            ++all.tally.without_result;
        auto const kind = kind_of_change(before, after);
        if (!kind) {
            ++all.tally.unchanged;
            return;
        }
        all.changes.push_back({place, scope.sheets.at(static_cast<std::size_t>(place.sheet)), as_shown(formula()),
                               before.value, after, relative_change(before.value, after), *kind, Restless::no});
    });
    std::sort(all.changes.begin(), all.changes.end(),
              [](Change const& a, Change const& b) { return a.place < b.place; });
    mark_restless(all.changes, scope);
    for (Change const& change : all.changes)
        all.tally.count(change);
    return all;
}

/// What the reports list as problems of a workbook that could be done.
std::vector<Problem> problems_in(Document const& workbook, std::vector<Change> const& changes) {
    std::vector<Problem> problems;
    auto const is_new_error = [](Change const& change) { return change.kind == Kind::new_error; };
    auto const cells = std::count_if(changes.begin(), changes.end(), is_new_error);
    if (cells > 0) {
        auto const first = std::find_if(changes.begin(), changes.end(), is_new_error);
        problems.push_back({Reason::new_errors,
                            std::to_string(cells) + (cells == 1 ? " cell: " : " cells, the first ") + first->sheet +
                                "." + cell_name(first->place) + " " + written(first->after) + ", " + first->formula});
    }
    if (auto const links = external_links(workbook); !links.empty())
        problems.push_back({Reason::external_links, links});
    return problems;
}

void save(Document& workbook, std::filesystem::path const& file) {
    try {
        workbook.save(file);
    } catch (office::Gone const&) {
        throw;
    } catch (std::exception const&) { // what it says is a number and the name of the private copy
        throw Trouble(Reason::not_written, "LibreOffice could not save it");
    }
}

void set_all(Document const& workbook, Options const& options, std::vector<Problem>& problems) {
    for (Assignment const& assignment : options.set) {
        try {
            assign(workbook, assignment);
        } catch (Trouble const& trouble) {
            problems.push_back({trouble.reason, trouble.what()});
        }
    }
}

} // namespace

Recalculated recalculate(office::Office& office, PrivateCopy const& copy, std::string const& relative,
                         Options const& options, std::string const& edition) {
    Document workbook = open(office, copy.file);
    StoredResults own;
    if (!copy.stored)
        own = results_in(workbook);

    Recalculated result;
    set_all(workbook, options, result.finished.problems);
    workbook.recalculate();
    Compared const compared = compare(workbook, copy.stored ? *copy.stored : own);
    result.finished.tally = compared.tally;
    for (Problem const& problem : problems_in(workbook, compared.changes))
        result.finished.problems.push_back(problem);
    for (Change const& change : compared.changes)
        result.rows += csv_row(row_of(relative, change));
    for (std::string const& name : options.collect)
        result.finished.collected.push_back(collect(workbook, name));
    if (options.dry_run)
        return result;

    if (options.values)
        replace_by_values(workbook, edition);
    result.saved = copy.file.parent_path() / ("recalculated" + std::string(ending(copy.format)));
    save(workbook, result.saved);
    return result;
}

} // namespace hearthcell::archive
