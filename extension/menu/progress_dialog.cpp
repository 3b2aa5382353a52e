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
    : surroundings(around), dialog(surroundings, surroundings.say(Text::recalculating), width, height) {
    dialog.add_text("folder", {edge, 6, inside, 10}, results);
    dialog.add_text("done", {edge, 19, inside, 10}, surroundings.say(Text::looking_for_workbooks));
    auto const bar = dialog.add("ProgressBar", "bar", {edge, 31, inside, 9});
    bar->setPropertyValue("ProgressValueMin", Any(sal_Int32(0)));
    dialog.add_text("problems", {edge, 43, inside, 10}, OUString());
    dialog.add_text("usable", {edge, 54, inside, 10}, surroundings.say(Text::office_stays_usable));
    dialog.add_button("stop", {width - edge - button, height - 20, button, 14}, surroundings.say(Text::cancel));
    dialog.open(true);
    css::uno::Reference<css::awt::XButton>(dialog.control("stop"), css::uno::UNO_QUERY_THROW)->addActionListener(stop);
}

void ProgressDialog::show(Progress const& progress) {
    if (progress.all < 0 || stopping)
        return;
    dialog.set("bar", "ProgressValueMax", Any(progress.all));
    dialog.set("bar", "ProgressValue", Any(progress.done));
    bool const through = progress.done == progress.all;
    dialog.set("done", "Label",
               Any(through ? surroundings.say(Text::writing_reports)
                           : surroundings.say(Text::workbooks_done, OUString::number(progress.done),
                                              OUString::number(progress.all))));
    if (progress.problems > 0)
        dialog.set("problems", "Label",
                   Any(surroundings.say(Text::problems_so_far, OUString::number(progress.problems))));
}

void ProgressDialog::show_stopping() {
    stopping = true;
    dialog.set("done", "Label", Any(surroundings.say(Text::stopping)));
    dialog.set("stop", "Enabled", Any(false));
}

} // namespace hearthcell::menu
