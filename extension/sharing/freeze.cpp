#include "extension/sharing/freeze.hpp"

#include "extension/sharing/elsewhere.hpp"
#include "extension/sharing/names.hpp"

#include <com/sun/star/container/XNamed.hpp>

#include <algorithm>
#include <utility>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::sharing {
namespace {

// How many take some hundredths of a second.
constexpr std::size_t formulas_at_once = 1000, runs_at_once = 100, pieces_at_once = 10, comments_at_once = 10;
constexpr double share_of_reading = 0.3; // of the whole time, as far as a bar shows it

} // namespace

std::vector<SheetFormulas> read_shown(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    OurFormulas const ours(document);
    std::vector<SheetFormulas> shown;
    for (auto const& sheet : sheets_of(document))
        shown.push_back(read_formulas(sheet, ours));
    return shown;
}

Freezing::Freezing(Reference<css::sheet::XSpreadsheetDocument> const& document, std::vector<SheetFormulas> all,
                   rtl::OUString const& by_edition)
    : document_(document), sheets_(sheets_of(document_)), shown_(std::move(all)), edition_(by_edition),
      no_undo_(document_) {
    if (!lift_protection())
        return;
    for (SheetFormulas const& formulas : shown_)
        result_.formulas += sal_Int32(formulas.cells.size());
    plan_reading();
}

Freezing::~Freezing() = default;

bool Freezing::lift_protection() {
    for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet) {
        unprotected_.push_back(std::make_unique<UnprotectedSheet>(sheets_[sheet]));
        if (!shown_.at(sheet).cells.empty() && !unprotected_.back()->is_writable()) {
            result_.locked_sheet = Reference<css::container::XNamed>(sheets_[sheet], UNO_QUERY_THROW)->getName();
            unprotected_.clear();
            return false;
        }
    }
    return true;
}

void Freezing::add(std::size_t count, std::size_t at_once, std::function<void(std::size_t, std::size_t)> const& part) {
    if (count == 0)
        return;
    works_.push_back({count, at_once, part});
    parts_ += (count + at_once - 1) / at_once;
}

void Freezing::plan_reading() {
    // Every formula is read before one is replaced.
    for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet) {
        auto& cells = shown_[sheet].cells;
        if (result_.formulas > most_comments_of_their_own) {
            SharedComments& shared = shared_.emplace_back(sheets_[sheet]);
            add(cells.size(), formulas_at_once, [&cells, &shared](std::size_t from, std::size_t to) {
                std::for_each(cells.begin() + from, cells.begin() + to, [&](KeptCell& cell) { shared.add(cell); });
            });
        }
        add(cells.size(), formulas_at_once, [this, sheet, &cells](std::size_t from, std::size_t to) {
            std::for_each(cells.begin() + from, cells.begin() + to, [&](KeptCell& cell) {
                if (cell.speaks_for > 0)
                    cell.formula = read_formula(sheets_[sheet], cell);
            });
        });
    }
    add(1, 1, [this](std::size_t, std::size_t) { plan_replacement(); });
}

void Freezing::plan_replacement() {
    reading_ = false;
    parts_done_ = parts_ = 0;
    calculation_ = std::make_unique<Calculation>(document_, false); // not at each change
    for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet) {
        if (shown_[sheet].cells.empty())
            continue;
        Replacement const& replacement = replacements_.emplace_back(sheets_[sheet], shown_[sheet]);
        add(replacement.to_clear(), runs_at_once,
            [&](std::size_t from, std::size_t to) { replacement.clear(from, to); });
        add(replacement.to_write(), pieces_at_once,
            [&](std::size_t from, std::size_t to) { replacement.write(from, to); });
        add(replacement.to_write(), formulas_at_once, [&](std::size_t from, std::size_t to) {
            Calculation const by_itself(document_, true);
            replacement.work_out(from, to);
        });
        bool const few = result_.formulas <= most_comments_of_their_own;
        add(replacement.to_comment(), few ? comments_at_once : formulas_at_once,
            [&](std::size_t from, std::size_t to) { replacement.comment(from, to, edition_); });
    }
    add(1, 1, [this](std::size_t, std::size_t) { finish(); });
}

void Freezing::finish() {
    calculation_.reset();
    Elsewhere elsewhere = replace_elsewhere(document_); // after the cells: worked out from what they show
    result_.left = elsewhere.left;
    result_.held = std::move(elsewhere.held);
    unprotected_.clear();
}

bool Freezing::go_on() {
    if (works_.empty())
        return false;
    Work& work = works_.front();
    std::size_t const from = work.done;
    work.done = std::min(work.count, from + work.at_once);
    bool const last = work.done == work.count;
    work.part(from, work.done); // adds work to the end, maybe
    ++parts_done_;
    if (last)
        works_.pop_front();
    return !works_.empty();
}

double Freezing::done() const {
    double const of_phase = parts_ == 0 ? 1 : std::min(1.0, double(parts_done_) / double(parts_));
    return reading_ ? share_of_reading * of_phase : share_of_reading + (1 - share_of_reading) * of_phase;
}

Frozen freeze(Reference<css::sheet::XSpreadsheetDocument> const& document, rtl::OUString const& edition) {
    Freezing freezing(document, read_shown(document), edition);
    while (freezing.go_on())
        ;
    return freezing.result();
}

} // namespace hearthcell::sharing
