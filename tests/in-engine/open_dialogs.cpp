#include "open_dialogs.hpp"

#include "extension/office/text.hpp"

#include <com/sun/star/accessibility/XAccessible.hpp>
#include <com/sun/star/accessibility/XAccessibleAction.hpp>
#include <com/sun/star/awt/Toolkit.hpp>
#include <com/sun/star/awt/XExtendedToolkit.hpp>

#include <chrono>
#include <thread>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::accessibility::XAccessible;
using css::accessibility::XAccessibleContext;
using css::uno::Reference;
using namespace std::chrono_literals;

namespace {

constexpr auto patience = 60s;
constexpr sal_Int32 deepest = 5; // a dialog's buttons

using Contexts = std::vector<Reference<XAccessibleContext>>;

std::string name_of(Reference<XAccessibleContext> const& part) {
    return part.is() ? office::narrow(part->getAccessibleName()) : std::string();
}

void collect(Reference<XAccessible> const& object, sal_Int32 depth, Contexts& into) {
    Reference<XAccessibleContext> context;
    if (object.is())
        context = object->getAccessibleContext();
    if (!context.is())
        return;
    into.push_back(context);
    sal_Int32 const children = context->getAccessibleChildCount();
    if (depth < deepest)
        for (sal_Int32 index = 0; index < children; ++index)
            collect(context->getAccessibleChild(index), depth + 1, into);
}

// Discouraged because so few use it; there is no other way to the dialogs.
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wdeprecated-declarations"

/// What is in the dialog; nothing if it is not there. No other window is looked into: one that closes meanwhile does
/// not take that well.
Contexts dialog(Office& office, std::string const& title) {
    Reference<css::awt::XExtendedToolkit> const toolkit(css::awt::Toolkit::create(office.context()),
                                                        css::uno::UNO_QUERY_THROW);
    for (sal_Int32 index = 0; index < toolkit->getTopWindowCount(); ++index) {
        Reference<XAccessible> const window(toolkit->getTopWindow(index), css::uno::UNO_QUERY);
        Contexts contexts;
        if (window.is() && name_of(window->getAccessibleContext()).starts_with(title))
            collect(window, 0, contexts);
        if (!contexts.empty())
            return contexts;
    }
    return {};
}

#pragma GCC diagnostic pop

bool press_now(Office& office, std::string const& title, std::string const& button) {
    for (auto const& part : dialog(office, title))
        if (name_of(part) == button)
            return Reference<css::accessibility::XAccessibleAction>(part, css::uno::UNO_QUERY_THROW)
                ->doAccessibleAction(0);
    return false;
}

/// Whether something comes true within the time that a slow machine needs.
template <class Holds> bool eventually(Office& office, Holds holds) {
    auto const end = std::chrono::steady_clock::now() + patience;
    while (std::chrono::steady_clock::now() < end) {
        try {
            if (holds())
                return true;
        } catch (css::uno::Exception const&) { // a window closed while we looked
            if (!office.alive())
                throw std::runtime_error("the office is gone");
        }
        std::this_thread::sleep_for(20ms);
    }
    return false;
}

} // namespace

void press(Office& office, std::string const& title, std::string const& button) {
    if (!eventually(office, [&] { return press_now(office, title, button); }))
        throw std::runtime_error("no dialog '" + title + "' has a button " + button);
}

void expect_gone(Office& office, std::string const& title) {
    if (!eventually(office, [&] { return dialog(office, title).empty(); }))
        throw std::runtime_error("the dialog '" + title + "' stays");
}

} // namespace hearthcell::tests
