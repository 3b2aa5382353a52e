#include "extension/menu/check_workbook.hpp"

#include "extension/checking/check.hpp"
#include "extension/checking/seen.hpp"
#include "extension/menu/check_report.hpp"
#include "extension/menu/documents.hpp"
#include "extension/menu/package_files.hpp"
#include "extension/menu/sliced_work.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XTitle.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/util/XModifiable.hpp>

#include <utility>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

using Model = Reference<css::sheet::XSpreadsheetDocument>;

OUString id_of(Reference<css::uno::XInterface> const& document) {
    OUString id;
    Reference<css::beans::XPropertySet> const properties(document, UNO_QUERY);
    if (properties.is() && properties->getPropertySetInfo()->hasPropertyByName("RuntimeUID"))
        properties->getPropertyValue("RuntimeUID") >>= id;
    return id;
}

CheckedDocument described(Model const& document) {
    Reference<css::frame::XTitle> const title(document, UNO_QUERY);
    return {title.is() ? title->getTitle() : OUString(), address_of(document), id_of(document)};
}

std::vector<checking::Range> selection_in(Model const& document) {
    auto const selection = Reference<css::frame::XModel>(document, UNO_QUERY_THROW)->getCurrentSelection();
    std::vector<css::table::CellRangeAddress> addresses;
    if (Reference<css::sheet::XSheetCellRanges> const several(selection, UNO_QUERY); several.is())
        for (css::table::CellRangeAddress const& at : several->getRangeAddresses())
            addresses.push_back(at);
    else if (Reference<css::sheet::XCellRangeAddressable> const one(selection, UNO_QUERY); one.is())
        addresses.push_back(one->getRangeAddress());
    std::vector<checking::Range> ranges;
    for (css::table::CellRangeAddress const& at : addresses)
        ranges.push_back({{at.Sheet, at.StartRow, at.StartColumn}, {at.Sheet, at.EndRow, at.EndColumn}});
    return ranges;
}

/// The check, and then its report.
class CheckWork final : public SlicedWork {
public:
    CheckWork(Surroundings const& around, Model const& document, std::vector<checking::Range> selection)
        : surroundings_(around), document_(described(document)),
          check_(around.context, document, around.language, std::move(selection)) {}

    void go_on() override {
        if (!checked_) {
            checked_ = !check_.go_on();
            return;
        }
        open_check_report(surroundings_, document_, check_.result());
        is_done_ = true;
    }
    [[nodiscard]] bool is_done() const override { return is_done_; }
    [[nodiscard]] double done() const override { return check_.done(); }
    [[nodiscard]] bool is_short() const override { return !checked_; }
    [[nodiscard]] bool is_last() const override { return checked_; }
    /// The report speaks for itself.
    [[nodiscard]] Answer answer() const override {
        return {true, surroundings_.unattended ? wide(check_.result().summary) : OUString()};
    }

private:
    Surroundings const surroundings_;
    CheckedDocument const document_;
    checking::Check check_;
    bool checked_ = false, is_done_ = false;
};

/// The open document that a report is about; null where it was closed.
Model document_with(Surroundings const& surroundings, SeenInReport const& seen) {
    auto const open = css::frame::Desktop::create(surroundings.context)->getComponents()->createEnumeration();
    Model of_that_file;
    while (open->hasMoreElements()) {
        Model const model(open->nextElement(), UNO_QUERY);
        if (!model.is())
            continue;
        if (!seen.id.isEmpty() && id_of(model) == seen.id)
            return model;
        if (!seen.address.isEmpty() && address_of(model) == seen.address)
            of_that_file = model;
    }
    return of_that_file;
}

} // namespace

Answer check_workbook(Surroundings const& surroundings, bool selected_cells_only) {
    Model const document = document_of(surroundings.frame);
    if (!document.is())
        return {false, surroundings.say(Text::nothing_to_check)};
    std::vector<checking::Range> selection;
    if (selected_cells_only) {
        selection = selection_in(document);
        if (selection.empty())
            return {false, surroundings.say(Text::no_cells_selected)};
    }
    OUString const title = described(document).name;
    return work_in_slices(surroundings, std::make_unique<CheckWork>(surroundings, document, std::move(selection)),
                          {Text::checking, Text::reading_document, Text::looking_at_formulas, Text::writing_check,
                           Text::check_stopped, title});
}

Answer leave_seen_remarks(Surroundings const& surroundings) {
    Model const report = document_of(surroundings.frame);
    auto const seen = report.is() ? seen_in_report(report) : std::nullopt;
    if (!seen)
        return {false, surroundings.say(Text::no_check_here)};
    if (seen->marks.empty())
        return {false, surroundings.say(Text::nothing_seen)};
    Model const document = document_with(surroundings, *seen);
    if (!document.is())
        return {false, surroundings.say(Text::checked_document_closed)};
    checking::keep_seen(document, seen->marks);
    Reference<css::util::XModifiable>(document, UNO_QUERY_THROW)->setModified(true);
    return {true, surroundings.say(Text::seen_kept, OUString::number(sal_Int32(seen->marks.size())),
                                   described(document).name)};
}

} // namespace hearthcell::menu
