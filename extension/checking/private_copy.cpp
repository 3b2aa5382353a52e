#include "extension/checking/private_copy.hpp"

#include "extension/checking/outside.hpp"
#include "extension/checking/written_cells.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/names.hpp"
#include "extension/sharing/spare_cell.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/document/XActionLockable.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XDatabaseRanges.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>
#include <com/sun/star/util/XCloseable.hpp>

#include <algorithm>

namespace css = com::sun::star;
using css::beans::XPropertySet;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::narrow;
using hearthcell::office::wide;
using rtl::OUString;

namespace hearthcell::checking {
namespace {

Reference<css::sheet::XSpreadsheetDocument> blank_document(Reference<css::uno::XComponentContext> const& context) {
    css::beans::PropertyValue const hidden{"Hidden", 0, Any(true), css::beans::PropertyState_DIRECT_VALUE};
    return {
        css::frame::Desktop::create(context)->loadComponentFromURL("private:factory/scalc", "_blank", 0, {&hidden, 1}),
        UNO_QUERY_THROW};
}

} // namespace

class PrivateCopy::Implementation {
public:
    Implementation(Reference<css::uno::XComponentContext> const& context, Contents const& of_document)
        : contents_(of_document), document_(blank_document(context)) {
        Reference<css::frame::XModel>(document_, UNO_QUERY_THROW)->lockControllers();
        Reference<css::document::XActionLockable>(document_, UNO_QUERY_THROW)->addActionLock();
        Reference<css::document::XUndoManagerSupplier>(document_, UNO_QUERY_THROW)->getUndoManager()->lock();
        make_sheets();
        make_settings();
        make_names();
        written_.emplace(contents_, sheets_);
    }
    ~Implementation() {
        spare_.clear();
        try {
            Reference<css::util::XCloseable>(document_, UNO_QUERY_THROW)->close(true);
        } catch (css::uno::Exception const&) { // the office is ending, or has closed it
        }
    }
    Implementation(Implementation const&) = delete;
    Implementation& operator=(Implementation const&) = delete;

    bool write_cells() {
        if (written_->go_on())
            return true;
        make_tables(); // whose columns are found by what their headings hold
        return false;
    }

    double written() const { return written_->done(); }

    std::vector<Answer> answers(int sheet, std::vector<std::string> const& formulas) {
        Place const& free = free_.at(std::size_t(sheet));
        auto const rows = sal_Int32(formulas.size());
        auto const range =
            sheet_at(sheet)->getCellRangeByPosition(free.column, free.row, free.column, free.row + rows - 1);
        Sequence<Sequence<OUString>> written(rows);
        for (sal_Int32 row = 0; row < rows; ++row) {
            OUString const formula = wide("=" + formulas[std::size_t(row)]);
            written.getArray()[row] = Sequence<OUString>(&formula, 1);
        }
        Reference<css::sheet::XCellRangeFormula>(range, UNO_QUERY_THROW)->setFormulaArray(written);
        auto const given = Reference<css::sheet::XCellRangeData>(range, UNO_QUERY_THROW)->getDataArray();
        std::vector<Answer> answers;
        for (sal_Int32 row = 0; row < rows; ++row)
            answers.push_back(answer_of(given[row][0]));
        clear(range);
        return answers;
    }

    Answer answer(Trial const& trial) {
        Place const& place = trial.in_cell ? *trial.in_cell : free_.at(std::size_t(trial.sheet));
        auto const range =
            sheet_at(place.sheet)->getCellRangeByPosition(place.column, place.row, place.column, place.row);
        OUString const formula = wide("=" + trial.formula);
        if (trial.as_array)
            Reference<css::sheet::XArrayFormulaRange>(range, UNO_QUERY_THROW)->setArrayFormula(formula);
        else
            range->getCellByPosition(0, 0)->setFormula(formula);
        auto const given = Reference<css::sheet::XCellRangeData>(range, UNO_QUERY_THROW)->getDataArray();
        Answer const found = answer_of(given[0][0]);
        clear(range);
        if (trial.in_cell)
            written_->put_back(*trial.in_cell);
        return found;
    }

    std::optional<std::string> in_english(int sheet, std::string const& formula) {
        auto const found = spare_.try_emplace(sheet, sheet_at(sheet)).first->second.in_english(wide(formula));
        return found ? std::optional(narrow(*found)) : std::nullopt;
    }

private:
    Reference<css::sheet::XSpreadsheet> const& sheet_at(int sheet) const { return sheets_.at(std::size_t(sheet)); }

    static Answer answer_of(Any const& value) {
        if (OUString text; value >>= text)
            return narrow(text);
        if (double number = 0; value >>= number)
            return std::to_string(number);
        return std::nullopt;
    }

    static void clear(Reference<css::table::XCellRange> const& range) {
        Reference<css::sheet::XSheetOperation>(range, UNO_QUERY_THROW)->clearContents(0x7FF);
    }

    void make_sheets() {
        auto const sheets = document_->getSheets();
        auto const& names = contents_.defined.sheets;
        // Theirs may be those of the first ones here: they get others before.
        Sequence<OUString> const before = sheets->getElementNames();
        for (std::size_t at = 0; at < names.size(); ++at)
            sheets->insertNewByName(wide("hearthcell " + std::to_string(at)), sal_Int16(at));
        for (OUString const& name : before)
            sheets->removeByName(name);
        for (std::size_t at = 0; at < names.size(); ++at) {
            Reference<css::container::XIndexAccess> const by_place(sheets, UNO_QUERY_THROW);
            sheets_.emplace_back(by_place->getByIndex(sal_Int32(at)), UNO_QUERY_THROW);
            Reference<css::container::XNamed>(sheets_.back(), UNO_QUERY_THROW)->setName(wide(names[at]));
        }
        find_free_places();
    }

    /// In neither a row nor a column that holds anything, so that a reference to whole ones does not meet it; or, where
    /// there is none, to the right of all.
    void find_free_places() {
        for (std::size_t at = 0; at < sheets_.size(); ++at)
            free_.push_back({int(at), 0, 0});
        for (auto const& [place, content] : contents_.cells) {
            Place& free = free_[std::size_t(place.sheet)];
            free.row = std::max(free.row, place.row + 1);
            free.column = std::max(free.column, place.column + 1);
        }
        for (Place& free : free_) {
            if (free.row + int(most_at_once) > formulas::last_row)
                free.row = 0;
            free.column = std::min(free.column, formulas::last_column);
        }
    }

    void make_settings() {
        Reference<XPropertySet> const properties(document_, UNO_QUERY_THROW);
        for (auto const& [name, value] : contents_.settings)
            properties->setPropertyValue(wide(name), value);
    }

    void make_names() {
        for (formulas::Definition const& name : contents_.defined.names) {
            if (std::ranges::any_of(contents_.defined.tables,
                                    [&](formulas::Table const& table) { return table.name == name.name; }))
                continue;
            Reference<css::uno::XInterface> owner(document_, UNO_QUERY_THROW);
            for (std::size_t sheet = 0; sheet < sheets_.size() && !name.sheet.empty(); ++sheet)
                if (contents_.defined.sheets[sheet] == name.sheet)
                    owner = sheets_[sheet];
            try {
                Reference<css::sheet::XNamedRanges>(
                    Reference<XPropertySet>(owner, UNO_QUERY_THROW)->getPropertyValue("NamedRanges"), UNO_QUERY_THROW)
                    ->addNewByName(wide(name.name), wide(leads_outside(name.content) ? "NA()" : name.content),
                                   {sal_Int16(name.seen_from.sheet), name.seen_from.column, name.seen_from.row}, 0);
            } catch (css::uno::Exception const&) { // a name that only the document's own format allows: #NAME? then
            }
        }
    }

    void make_tables() {
        Reference<css::sheet::XDatabaseRanges> const ranges(
            Reference<XPropertySet>(document_, UNO_QUERY_THROW)->getPropertyValue("DatabaseRanges"), UNO_QUERY_THROW);
        for (formulas::Table const& table : contents_.defined.tables) {
            auto const& [first, last] = table.cells;
            try {
                ranges->addNewByName(wide(table.name),
                                     {sal_Int16(first.sheet), first.column, first.row, last.column, last.row});
            } catch (css::uno::Exception const&) { // one of a sheet's own name: as above
            }
        }
    }

    Contents const& contents_;
    Reference<css::sheet::XSpreadsheetDocument> const document_;
    std::vector<Reference<css::sheet::XSpreadsheet>> sheets_;
    std::vector<Place> free_; // of each sheet
    std::optional<WrittenCells> written_;
    std::map<int, sharing::SpareCell> spare_;
};

PrivateCopy::PrivateCopy(Reference<css::uno::XComponentContext> const& context, Contents const& contents)
    : implementation_(std::make_unique<Implementation>(context, contents)) {}
PrivateCopy::~PrivateCopy() = default;

bool PrivateCopy::go_on() {
    return implementation_->write_cells();
}
double PrivateCopy::done() const {
    return implementation_->written();
}
std::vector<Answer> PrivateCopy::answers(int sheet, std::vector<std::string> const& formulas) {
    return implementation_->answers(sheet, formulas);
}
Answer PrivateCopy::answer(Trial const& trial) {
    return implementation_->answer(trial);
}
std::optional<std::string> PrivateCopy::in_english(int sheet, std::string const& formula) {
    return implementation_->in_english(sheet, formula);
}

} // namespace hearthcell::checking
