#include "extension/menu/progress_dialog.hpp"

#include <com/sun/star/awt/XActionListener.hpp>
#include <com/sun/star/awt/XButton.hpp>
#include <com/sun/star/awt/XTopWindow.hpp>
#include <com/sun/star/awt/XTopWindowListener.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <cppuhelper/implbase2.hxx>

#include <utility>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

constexpr sal_Int32 bar_width = 220, bar_height = 88, bar_edge = 8, bar_inside = bar_width - 2 * bar_edge,
                    stop_width = 56;

} // namespace

class ProgressDialog::Listener final
    : public cppu::WeakImplHelper2<css::awt::XActionListener, css::awt::XTopWindowListener> {
public:
    explicit Listener(std::function<void()> call) : stop_(std::move(call)) {}

    /// From now on nobody is told.
    void forget() { stop_ = nullptr; }

    void SAL_CALL actionPerformed(css::awt::ActionEvent const&) override { stop(); }
    void SAL_CALL windowClosing(css::lang::EventObject const&) override { stop(); }
    void SAL_CALL windowOpened(css::lang::EventObject const&) override {}
    void SAL_CALL windowClosed(css::lang::EventObject const&) override {}
    void SAL_CALL windowMinimized(css::lang::EventObject const&) override {}
    void SAL_CALL windowNormalized(css::lang::EventObject const&) override {}
    void SAL_CALL windowActivated(css::lang::EventObject const&) override {}
    void SAL_CALL windowDeactivated(css::lang::EventObject const&) override {}
    void SAL_CALL disposing(css::lang::EventObject const&) override {}

private:
    void stop() {
        if (auto const call = std::exchange(stop_, nullptr))
            call();
    }

    std::function<void()> stop_;
};

ProgressDialog::ProgressDialog(Surroundings const& around, OUString const& title, OUString const& subject,
                               OUString const& doing, std::function<void()> const& stop)
    : surroundings_(around), dialog_(surroundings_, title, bar_width, bar_height), listener_(new Listener(stop)) {
    dialog_.add_text("subject", {bar_edge, 6, bar_inside, 10}, subject);
    dialog_.add_text("doing", {bar_edge, 19, bar_inside, 10}, doing);
    auto const bar = dialog_.add("ProgressBar", "bar", {bar_edge, 31, bar_inside, 9});
    bar->setPropertyValue("ProgressValueMin", Any(sal_Int32(0)));
    dialog_.add_text("remark", {bar_edge, 43, bar_inside, 10}, OUString());
    dialog_.add_text("usable", {bar_edge, 54, bar_inside, 10}, surroundings_.say(Text::office_stays_usable));
    dialog_.add_button("stop", {bar_width - bar_edge - stop_width, bar_height - 20, stop_width, 14},
                       surroundings_.say(Text::cancel));
    dialog_.open(true);
    Reference<css::awt::XButton>(dialog_.control("stop"), UNO_QUERY_THROW)->addActionListener(listener_.get());
    Reference<css::awt::XTopWindow>(dialog_.window(), UNO_QUERY_THROW)->addTopWindowListener(listener_.get());
}

ProgressDialog::~ProgressDialog() {
    listener_->forget();
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
