#pragma once

#include "extension/menu/dialog_parts.hpp"

#include <com/sun/star/awt/XActionListener.hpp>

namespace hearthcell::menu {

/// How far a program is.
struct Progress {
    sal_Int32 done = 0, all = -1, problems = 0; // all: -1 as long as nobody knows
};

/// Shows it beside the office, with a button to stop.
class ProgressDialog {
public:
    ProgressDialog(Surroundings const& surroundings, rtl::OUString const& results,
                   com::sun::star::uno::Reference<com::sun::star::awt::XActionListener> const& stop);
    void show(Progress const& progress);
    void show_stopping();

    [[nodiscard]] com::sun::star::uno::Reference<com::sun::star::awt::XControl> const& window() const {
        return dialog_.window();
    }

private:
    Surroundings const surroundings_;
    Dialog dialog_;
    bool stopping_ = false;
};

} // namespace hearthcell::menu
