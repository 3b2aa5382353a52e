#include "extension/menu/dialog_parts.hpp"

#include <com/sun/star/awt/PushButtonType.hpp>
#include <com/sun/star/awt/Toolkit.hpp>
#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/awt/XWindowPeer.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/lang/XComponent.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

void place(Reference<css::beans::XPropertySet> const& part, Area const& area) {
    part->setPropertyValue("PositionX", Any(area.x));
    part->setPropertyValue("PositionY", Any(area.y));
    part->setPropertyValue("Width", Any(area.width));
    part->setPropertyValue("Height", Any(area.height));
}

} // namespace

Dialog::Dialog(Surroundings const& around, OUString const& title, sal_Int32 width, sal_Int32 height)
    : surroundings_(around) {
    auto const services = surroundings_.context->getServiceManager();
    Reference<css::awt::XControlModel> const model(
        services->createInstanceWithContext("com.sun.star.awt.UnoControlDialogModel", surroundings_.context),
        UNO_QUERY_THROW);
    parts_.set(model, UNO_QUERY_THROW);
    Reference<css::beans::XPropertySet> const properties(model, UNO_QUERY_THROW);
    place(properties, {90, 60, width, height});
    properties->setPropertyValue("Title", Any(title));
    self_.set(services->createInstanceWithContext("com.sun.star.awt.UnoControlDialog", surroundings_.context),
              UNO_QUERY_THROW);
    self_->setModel(model);
}

Dialog::~Dialog() {
    try {
        Reference<css::lang::XComponent>(self_, UNO_QUERY_THROW)->dispose();
    } catch (css::uno::Exception const&) { // it is gone already
    }
}

Reference<css::beans::XPropertySet> Dialog::add(std::string_view kind, std::string_view name, Area const& area) {
    Reference<css::lang::XMultiServiceFactory> const makes(parts_, UNO_QUERY_THROW);
    Reference<css::beans::XPropertySet> const part(
        makes->createInstance("com.sun.star.awt.UnoControl" + wide(kind) + "Model"), UNO_QUERY_THROW);
    place(part, area);
    parts_->insertByName(wide(name), Any(part));
    return part;
}

void Dialog::add_text(std::string_view name, Area const& area, OUString const& text) {
    auto const part = add("FixedText", name, area);
    part->setPropertyValue("Label", Any(text));
    part->setPropertyValue("MultiLine", Any(true));
}

void Dialog::add_button(std::string_view name, Area const& area, OUString const& label, sal_Int16 type) {
    auto const part = add("Button", name, area);
    part->setPropertyValue("Label", Any(label));
    part->setPropertyValue("PushButtonType", Any(type));
}

void Dialog::add_lines(std::string_view name, Area const& area, OUString const& lines) {
    auto const part = add("Edit", name, area);
    for (char const* const so : {"MultiLine", "ReadOnly", "HScroll", "VScroll"})
        part->setPropertyValue(OUString::createFromAscii(so), Any(true));
    part->setPropertyValue("Text", Any(lines));
}

void Dialog::add_answers(std::string_view agree, Area const& whole, OUString const& label) {
    constexpr sal_Int32 edge = 8, small = 56, large = 66;
    sal_Int32 const bottom = whole.height - 20, right = whole.width - edge;
    add_button(agree, {right - small - large - 4, bottom, large, 14}, label, css::awt::PushButtonType_OK);
    add_button("cancel", {right - small, bottom, small, 14}, surroundings_.say(Text::cancel),
               css::awt::PushButtonType_CANCEL);
    set(agree, "DefaultButton", Any(true));
}

void Dialog::resize(sal_Int32 width, sal_Int32 height) {
    Reference<css::beans::XPropertySet> const model(self_->getModel(), UNO_QUERY_THROW);
    model->setPropertyValue("Width", Any(width));
    model->setPropertyValue("Height", Any(height));
}

void Dialog::open(bool beside_the_office) {
    Reference<css::awt::XWindowPeer> parent;
    if (!beside_the_office && surroundings_.frame.is())
        parent.set(surroundings_.frame->getContainerWindow(), css::uno::UNO_QUERY);
    self_->createPeer(Reference<css::awt::XToolkit>(css::awt::Toolkit::create(surroundings_.context), UNO_QUERY_THROW),
                      parent);
    if (beside_the_office)
        Reference<css::awt::XWindow>(self_, UNO_QUERY_THROW)->setVisible(true);
}

bool Dialog::execute() {
    return Reference<css::awt::XDialog>(self_, UNO_QUERY_THROW)->execute() == 1;
}

Reference<css::awt::XControl> Dialog::control(std::string_view name) const {
    return Reference<css::awt::XControlContainer>(self_, UNO_QUERY_THROW)->getControl(wide(name));
}

void Dialog::set(std::string_view name, char const* property, Any const& value) const {
    Reference<css::beans::XPropertySet>(parts_->getByName(wide(name)), UNO_QUERY_THROW)
        ->setPropertyValue(OUString::createFromAscii(property), value);
}

Any Dialog::get(std::string_view name, char const* property) const {
    return Reference<css::beans::XPropertySet>(parts_->getByName(wide(name)), UNO_QUERY_THROW)
        ->getPropertyValue(OUString::createFromAscii(property));
}

} // namespace hearthcell::menu
