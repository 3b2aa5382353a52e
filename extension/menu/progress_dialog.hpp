#pragma once
// The window that shows how far hearthcell-archive is.

#include "extension/menu/dialog_end.hpp"

#include <rtl/ref.hxx>

#include <functional>

namespace hearthcell::menu {

/// Shows beside the office, which stays usable, how far something is, with a button to stop it. Closing the window
/// stops it, too.
class ProgressDialog {
public:
    /// subject: what is worked on, or where to. stop: called in the office's main thread, once.
    ProgressDialog(Surroundings const& surroundings, rtl::OUString const& title, rtl::OUString const& subject,
                   rtl::OUString const& doing, std::function<void()> const& stop);
    ~ProgressDialog();

    void show(sal_Int32 done, sal_Int32 all, rtl::OUString const& doing);
    void remark(rtl::OUString const& words);
    /// It is too late to stop it, or it is stopping.
    void show_last(rtl::OUString const& doing);

private:
    Surroundings const surroundings_;
    Dialog dialog_;
    rtl::Reference<DialogEnd> const end_;
    bool last_ = false;
};

} // namespace hearthcell::menu
