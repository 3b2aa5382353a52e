#include "extension/menu/progress_dialog.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>

namespace css = com::sun::star;
using css::uno::Any;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

constexpr sal_Int32 bar_width = 220, bar_height = 88, bar_edge = 8, bar_inside = bar_width - 2 * bar_edge,
                    stop_width = 56;

} // namespace

ProgressDialog::ProgressDialog(Surroundings const& around, OUString const& title, OUString const& subject,
                               OUString const& doing, std::function<void()> const& stop)
    : surroundings_(around), dialog_(surroundings_, title, bar_width, bar_height),
      end_(new DialogEnd([stop](OUString const&) { stop(); })) {
    dialog_.add_text("subject", {bar_edge, 6, bar_inside, 10}, subject);
    dialog_.add_text("doing", {bar_edge, 19, bar_inside, 10}, doing);
    auto const bar = dialog_.add("ProgressBar", "bar", {bar_edge, 31, bar_inside, 9});
    bar->setPropertyValue("ProgressValueMin", Any(sal_Int32(0)));
    dialog_.add_text("remark", {bar_edge, 43, bar_inside, 10}, OUString());
    dialog_.add_text("usable", {bar_edge, 54, bar_inside, 10}, surroundings_.say(Text::office_stays_usable));
    dialog_.add_button("stop", {bar_width - bar_edge - stop_width, bar_height - 20, stop_width, 14},
                       surroundings_.say(Text::cancel));
    dialog_.open(true);
    end_->listen(dialog_, {"stop"});
}

ProgressDialog::~ProgressDialog() {
    end_->forget();
}

void ProgressDialog::show(sal_Int32 done, sal_Int32 all, OUString const& doing) {
    if (last_)
        return;
    dialog_.set("bar", "ProgressValueMax", Any(all));
    dialog_.set("bar", "ProgressValue", Any(done));
    dialog_.set("doing", "Label", Any(doing));
}

void ProgressDialog::remark(OUString const& words) {
    dialog_.set("remark", "Label", Any(words));
}

void ProgressDialog::show_last(OUString const& doing) {
    last_ = true;
    dialog_.set("doing", "Label", Any(doing));
    dialog_.set("stop", "Enabled", Any(false));
}

} // namespace hearthcell::menu
