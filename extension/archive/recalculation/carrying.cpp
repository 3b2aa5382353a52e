#include "extension/archive/recalculation/carrying.hpp"

#include "extension/formulas/plain.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/writable.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/text/XTextRange.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>
#include <span>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::archive {
namespace {

constexpr int last_row_of_xls = 65'535, last_column_of_xls = 255;

using Sheets = Reference<css::container::XIndexAccess>;

std::string quoted_or_none(std::string const& unit) {
    return unit.empty() ? "none" : "'" + unit + "'";
}

/// Blocks that must show the same unit, as one block around them.
struct Around {
    formulas::Range block;
    std::vector<formulas::Range> parts;
};

/// Why the number formats of a sheet do not let a fit go on; empty where they do.
std::string other_unit(FormatUnits& units, Fit const& fit, ExampleFormats const& formats) {
    std::map<std::pair<Place, int>, Around> all; // by the cell of OLD and the sheet
    for (SameFormat const& same : fit.formats) {
        auto const [known, is_new] = all.try_emplace({same.before, same.now.first.sheet}, Around{same.now, {}});
        auto& [first, last] = known->second.block;
        first.row = std::min(first.row, same.now.first.row);
        first.column = std::min(first.column, same.now.first.column);
        last.row = std::max(last.row, same.now.last.row);
        last.column = std::max(last.column, same.now.last.column);
        known->second.parts.push_back(same.now);
    }
    for (auto const& [of, around] : all) {
        Place const& before = of.first;
        auto const wanted = formats.unit_of_old.find({fit.example, before.sheet, before.row, before.column});
        std::string const unit = wanted == formats.unit_of_old.end() ? "" : wanted->second;
        auto const is_so = [&](FormatUnit const& shown) { return !shown.is_mixed && shown.unit == unit; };
        if (is_so(units.of(around.block)))
            continue;
        for (formulas::Range const& part : around.parts)
            if (FormatUnit const shown = units.of(part); !is_so(shown))
                return cell_name(part.first) + ": its number format shows " + quoted_or_none(shown.unit) +
                       " as unit, not " + quoted_or_none(unit);
    }
    return {};
}

/// Why nothing can be written to a sheet; empty where it can.
std::string no_way_in(Sheets const& sheets, Format format, Fit const& fit) {
    if (Reference<css::util::XProtectable>(sheets->getByIndex(fit.sheet), UNO_QUERY_THROW)->isProtected())
        return "the sheet is protected";
    for (Writing const& one : fit.writings)
        if (format == Format::xls && (one.place.row > last_row_of_xls || one.place.column > last_column_of_xls))
            return "an .xls has no cell " + cell_name(one.place);
    return {};
}

using Writings = std::span<Writing const>;

/// The first writings: a word, or formulas of one cell of the example right below each other.
std::size_t length_of_run(Writings writings) {
    Writing const& first = writings.front();
    std::size_t length = 1;
    while (first.is_formula && length < writings.size() && writings[length].is_formula &&
           writings[length].example == first.example && writings[length].place.sheet == first.place.sheet &&
           writings[length].place.column == first.place.column &&
           writings[length].place.row == first.place.row + int(length))
        ++length;
    return length;
}

formulas::Range cells_of(Writings run) {
    return {run.front().place, run.back().place};
}

void write(Sheets const& sheets, Writings run) {
    auto const [first, last] = cells_of(run);
    Reference<css::table::XCellRange> const sheet(sheets->getByIndex(first.sheet), UNO_QUERY_THROW);
    if (!run.front().is_formula) {
        Reference<css::text::XTextRange>(sheet->getCellByPosition(first.column, first.row), UNO_QUERY_THROW)
            ->setString(office::wide(run.front().text));
        return;
    }
    std::vector<css::uno::Sequence<rtl::OUString>> rows;
    for (Writing const& one : run) {
        rtl::OUString const text = office::wide(one.text);
        rows.emplace_back(&text, 1);
    }
    Reference<css::sheet::XCellRangeFormula>(
        sheet->getCellRangeByPosition(first.column, first.row, last.column, last.row), UNO_QUERY_THROW)
        ->setFormulaArray({rows.data(), sal_Int32(rows.size())});
}

} // namespace

CarriedInto carry(office::Document const& workbook, Format format, Plan& plan, ExampleFormats const& formats) {
    return office::asking("carrying formulas", [&] {
        sharing::Calculation const waiting(workbook.model(), false); // until all is there
        CarriedInto carried;
        FormatUnits units(workbook);
        Sheets const sheets(workbook.model()->getSheets(), UNO_QUERY_THROW);
        std::erase_if(plan.fits, [&](Fit const& fit) {
            std::string why = no_way_in(sheets, format, fit);
            bool const is_closed = !why.empty();
            if (why.empty())
                why = other_unit(units, fit, formats);
            if (why.empty())
                return false;
            Reference<css::container::XNamed> const sheet(sheets->getByIndex(fit.sheet), UNO_QUERY_THROW);
            plan.problems.push_back({is_closed ? Reason::not_carried : Reason::another_layout,
                                     office::narrow(sheet->getName()) + ": " + why});
            return true;
        });
        for (Fit const& fit : plan.fits) {
            carried.sheets += fit.writings.empty() ? 0 : 1;
            for (Writings left = fit.writings; !left.empty();) {
                Writings const run = left.first(length_of_run(left));
                left = left.subspan(run.size());
                Writing const& first = run.front();
                write(sheets, run);
                for (Writing const& one : run)
                    carried.cells.insert(one.place);
                carried.formulas += first.is_formula ? run.size() : 0;
                auto const own =
                    formats.of_new.find({fit.example, fit.old_sheet, first.example.first, first.example.second});
                if (!first.is_over && own != formats.of_new.end())
                    put_format(workbook, cells_of(run), own->second);
            }
        }
        return carried;
    });
}

} // namespace hearthcell::archive
