#include "extension/archive/recalculation/workbook.hpp"

#include "extension/archive/example/read_values.hpp"
#include "extension/archive/files/shown.hpp"
#include "extension/archive/links/clean.hpp"
#include "extension/archive/recalculation/comparison.hpp"
#include "extension/archive/recalculation/formula_cells.hpp"
#include "extension/archive/recalculation/links.hpp"
#include "extension/archive/recalculation/pairs_of_example.hpp"
#include "extension/archive/recalculation/setting.hpp"
#include "extension/office/document.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/freeze.hpp"

#include <algorithm>
#include <cmath>

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

StoredResults results_in(Document const& workbook, Room& room) {
    StoredResults results;
    visit_formulas(workbook, [&](Place const& place, Value const& value, Formula const&) {
        results.add({place, value, false}, room);
    });
    results.sort();
    return results;
}

/// What the reports list as problems of a workbook that could be done.
void add_problems(Document const& workbook, Comparison const& comparison, Outside const& outside,
                  std::vector<Problem>& problems) {
    auto const is_new_error = [](Change const& change) { return change.kind == ChangeKind::new_error; };
    auto const& changes = comparison.changes;
    auto const cells = std::count_if(changes.begin(), changes.end(), is_new_error);
    if (cells > 0) {
        auto const first = std::find_if(changes.begin(), changes.end(), is_new_error);
        problems.push_back({Reason::new_errors, std::to_string(cells) +
                                                    (cells == 1 ? " cell: " : " cells, the first ") + first->sheet +
                                                    "." + cell_name(first->place) + " " + written(first->after) + ", " +
                                                    line_of(first->formula)});
    }
    std::string links = external_links(workbook, outside);
    if (auto const lost = comparison.tally.links_not_followed; lost > 0)
        links += (links.empty() ? "formulas that ask the net" : "") + std::string("; ") + std::to_string(lost) +
                 (lost == 1 ? " cell needs" : " cells need") +
                 " what the file holds no copy of, and will show it again when the links are updated";
    if (!links.empty())
        problems.push_back({Reason::external_links, links});
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

void replace_by_values(Document const& workbook, std::string const& edition, std::vector<Problem>& problems) {
    sharing::Frozen const frozen = office::asking(
        "replacing formulas by values", [&] { return sharing::freeze(workbook.model(), office::wide(edition)); });
    workbook.hold(frozen.held);
    if (!frozen.locked_sheet.isEmpty())
        throw Trouble(Reason::locked_sheet, office::narrow(frozen.locked_sheet));
    if (frozen.left > 0)
        problems.push_back({Reason::formulas_left, std::to_string(frozen.left) +
                                                       " of names, conditional formats and validity rules still need "
                                                       "Hearthcell, since their value depends on the cell"});
}

/// The cells that were set.
std::set<Place> set_all(Document const& workbook, Options const& options, std::vector<Problem>& problems) {
    std::set<Place> places;
    for (Assignment const& assignment : options.set) {
        try {
            if (auto const place = assign(workbook, assignment))
                places.insert(*place);
        } catch (Trouble const& trouble) {
            problems.push_back({trouble.reason, trouble.what()});
        }
    }
    return places;
}

std::set<Place> carry_all(Document const& workbook, Format format, Carrying const& carrying, Outcome& outcome) {
    Plan& plan = carrying.planned.plan;
    CarriedInto into = carry(workbook, format, plan, carrying.formats);
    outcome.carried = {into.formulas, into.sheets};
    outcome.problems.insert(outcome.problems.end(), plan.problems.begin(), plan.problems.end());
    return std::move(into.cells);
}

/// What the carried formulas read, by their arguments.
std::vector<ReadOutcome> read_by(PlannedWorkbook const& planned, Numbers const& numbers) {
    std::function<std::optional<double>(Place const&)> const value = [&](Place const& place) -> std::optional<double> {
        if (auto const known = numbers.find(place); known != numbers.end())
            return known->second;
        ContentCell const* const cell = planned.contents.find(place);
        if (cell == nullptr)
            return std::nan("");
        auto const* const number = cell->is_result ? nullptr : std::get_if<double>(&cell->value);
        return number == nullptr ? std::nullopt : std::optional(*number);
    };
    std::vector<ReadArgument> all;
    for (Fit const& fit : planned.plan.fits)
        for (Writing const& writing : fit.writings)
            if (writing.is_formula)
                add_read(writing.text, writing.place, planned.seen->reads(), value, all);
    std::vector<ReadOutcome> read;
    for (ReadArgument& one : all) {
        std::ranges::sort(one.values);
        read.push_back({one.function, one.argument, one.values.size(), one.values.front(),
                        one.values[one.values.size() / 2], one.values.back()});
    }
    return read;
}

/// Carried formulas that the saved file holds no longer, or not with their results.
void check_what_is_held(std::filesystem::path const& saved, PlannedWorkbook const& planned, Numbers const& numbers,
                        std::uint64_t largest, std::vector<Problem>& problems) {
    auto const held = inspect(saved, Format::xls, largest);
    std::string lost;
    std::size_t number = 0;
    for (Fit const& fit : planned.plan.fits)
        for (Writing const& writing : fit.writings) {
            Stored const* const found = held && writing.is_formula ? held->find(writing.place) : nullptr;
            bool const is_error = found != nullptr && std::holds_alternative<Fault>(found->value);
            if (writing.is_formula && (found == nullptr || (is_error && numbers.contains(writing.place))))
                if (number++ < 10)
                    lost += (lost.empty() ? "" : " ") + cell_name(writing.place);
        }
    if (number > 0)
        problems.push_back({Reason::not_carried, "an .xls does not hold what was carried into " +
                                                     std::to_string(number) + " cells: " + lost});
}

} // namespace

Recalculated recalculate(office::Office& office, PrivateCopy const& copy, Options const& options,
                         std::string const& edition, Carrying const* carrying) {
    Outside outside(copy.file.parent_path());
    Room room(Room::for_workbooks_up_to(options.size_limit << 20));
    if (copy.stored) // else it is encrypted, and cannot be opened either
        hide_links(copy.file, copy.format, outside, room);
    Document workbook = open(office, copy.file);
    StoredResults const own = copy.stored ? StoredResults() : results_in(workbook, room);
    StoredResults const& stored = copy.stored ? *copy.stored : own;

    Recalculated result;
    Outcome& outcome = result.outcome;
    OldAndNew old_and_new(
        workbook,
        cells_to_compare(workbook, options.compare, carrying == nullptr ? nullptr : &carrying->examples,
                         carrying == nullptr ? nullptr : &carrying->planned.plan, outcome.compared, outcome.problems),
        stored);
    auto set = set_all(workbook, options, outcome.problems);
    if (carrying != nullptr)
        set.merge(carry_all(workbook, copy.format, *carrying, outcome));
    old_and_new.keep_written(set);
    workbook.recalculate();
    Numbers numbers;
    Comparison comparison =
        compare(workbook, stored, set, {copy.file.parent_path(), copy.original.parent_path(), &outside}, &numbers);
    if (carrying != nullptr)
        outcome.read = read_by(carrying->planned, numbers);
    add_problems(workbook, comparison, outside, outcome.problems);
    outcome.tally = std::move(comparison.tally);
    result.changes = std::move(comparison.changes);
    if (options.check)
        outcome.check = check(office, workbook);
    if (!options.collect.empty())
        outcome.collected = collect(workbook, options.collect, outcome.problems);
    // What is computed by other methods for a while must not be in the copy: nor can it be when formulas are values.
    if (options.dry_run || options.values)
        result.compared = old_and_new.rows(office, workbook);
    if (options.dry_run)
        return result;

    if (options.values)
        replace_by_values(workbook, edition, outcome.problems);
    result.saved = copy.file.parent_path() / ("recalculated" + std::string(ending(copy.format)));
    save(workbook, result.saved);
    if (carrying != nullptr && copy.format == Format::xls && !options.values)
        check_what_is_held(result.saved, carrying->planned, numbers, options.size_limit << 20, outcome.problems);
    put_links_back(result.saved, copy.format, outside, room);
    if (!options.values)
        result.compared = old_and_new.rows(office, workbook);
    return result;
}

} // namespace hearthcell::archive
