#pragma once
// What our own dialogs are made of. Sizes are in the units of dialogs, which follow the font.

#include "extension/menu/surroundings.hpp"

#include <com/sun/star/awt/XControl.hpp>
#include <com/sun/star/awt/XControlContainer.hpp>
#include <com/sun/star/awt/XDialog.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameContainer.hpp>

#include <string_view>

namespace hearthcell::menu {

struct Area {
    sal_Int32 x, y, width, height;
};

/// A dialog that is put together part by part. Disposed of with this object.
class Dialog {
public:
    Dialog(Surroundings const& surroundings, rtl::OUString const& title, sal_Int32 width, sal_Int32 height);
    ~Dialog();
    Dialog(Dialog const&) = delete;
    Dialog& operator=(Dialog const&) = delete;

    /// kind: "FixedText", "Edit", "Button", "CheckBox", … Gives its properties.
    com::sun::star::uno::Reference<com::sun::star::beans::XPropertySet> add(std::string_view kind,
                                                                            std::string_view name, Area const& area);
    void add_text(std::string_view name, Area const& area, rtl::OUString const& text);
    void add_button(std::string_view name, Area const& area, rtl::OUString const& label,
                    sal_Int16 type = 0); // of com.sun.star.awt.PushButtonType
    /// Lines to be read, and to be copied from.
    void add_lines(std::string_view name, Area const& area, rtl::OUString const& lines);
    /// The two buttons of a dialog so large that is executed: the one that agrees, and "cancel".
    void add_answers(std::string_view agree, Area const& whole, rtl::OUString const& label);

    void resize(sal_Int32 width, sal_Int32 height); // before it is opened
    void open(bool beside_the_office);              // on the screen; or, with false, ready for execute()
    bool execute();                                 // whether the user agreed

    [[nodiscard]] com::sun::star::uno::Reference<com::sun::star::awt::XControl> control(std::string_view name) const;
    [[nodiscard]] com::sun::star::uno::Reference<com::sun::star::awt::XControl> const& window() const { return self_; }

    void set(std::string_view name, char const* property, com::sun::star::uno::Any const& value) const;
    [[nodiscard]] com::sun::star::uno::Any get(std::string_view name, char const* property) const;

private:
    Surroundings const surroundings_;
    com::sun::star::uno::Reference<com::sun::star::awt::XControl> self_;
    com::sun::star::uno::Reference<com::sun::star::container::XNameContainer> parts_;
};

} // namespace hearthcell::menu
