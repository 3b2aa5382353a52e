#include "extension/menu/progress_dialog.hpp"

#include <com/sun/star/awt/XButton.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>

namespace css = com::sun::star;
using css::uno::Any;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

constexpr sal_Int32 width = 220, height = 88, edge = 8, inside = width - 2 * edge, button = 56;

} // namespace

ProgressDialog::ProgressDialog(Surroundings const& around, OUString const& results,
                               css::uno::Reference<css::awt::XActionListener> const& stop)
    : surroundings_(around), dialog_(surroundings_, surroundings_.say(Text::recalculating), width, height) {
    dialog_.add_text("folder", {edge, 6, inside, 10}, results);
    dialog_.add_text("done", {edge, 19, inside, 10}, surroundings_.say(Text::looking_for_workbooks));
    auto const bar = dialog_.add("ProgressBar", "bar", {edge, 31, inside, 9});
    bar->setPropertyValue("ProgressValueMin", Any(sal_Int32(0)));
    dialog_.add_text("problems", {edge, 43, inside, 10}, OUString());
    dialog_.add_text("usable", {edge, 54, inside, 10}, surroundings_.say(Text::office_stays_usable));
    dialog_.add_button("stop", {width - edge - button, height - 20, button, 14}, surroundings_.say(Text::cancel));
    dialog_.open(true);
    css::uno::Reference<css::awt::XButton>(dialog_.control("stop"), css::uno::UNO_QUERY_THROW)->addActionListener(stop);
}

void ProgressDialog::show(Progress const& progress) {
    if (progress.all < 0 || stopping_)
        return;
    dialog_.set("bar", "ProgressValueMax", Any(progress.all));
    dialog_.set("bar", "ProgressValue", Any(progress.done));
    bool const through = progress.done == progress.all;
    dialog_.set("done", "Label",
                Any(through ? surroundings_.say(Text::writing_reports)
                            : surroundings_.say(Text::workbooks_done, OUString::number(progress.done),
                                                OUString::number(progress.all))));
    if (progress.problems > 0)
        dialog_.set("problems", "Label",
                    Any(surroundings_.say(Text::problems_so_far, OUString::number(progress.problems))));
}

void ProgressDialog::show_stopping() {
    stopping_ = true;
    dialog_.set("done", "Label", Any(surroundings_.say(Text::stopping)));
    dialog_.set("stop", "Enabled", Any(false));
}

} // namespace hearthcell::menu
