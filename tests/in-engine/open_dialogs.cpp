#include "open_dialogs.hpp"

#include "extension/office/text.hpp"

#include <com/sun/star/awt/MouseButton.hpp>
#include <com/sun/star/awt/Toolkit.hpp>
#include <com/sun/star/awt/XExtendedToolkit.hpp>
#include <com/sun/star/awt/XToolkitRobot.hpp>
#include <com/sun/star/awt/XVclContainer.hpp>
#include <com/sun/star/awt/XVclWindowPeer.hpp>

#include <chrono>
#include <thread>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::awt::XWindow;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using namespace std::chrono_literals;

namespace {

constexpr auto patience = 60s;

// Discouraged because so few use it; there is no other way to the dialogs. What screen readers use is not the same in
// LibreOffice 7.4 and 25.2: called with the types of the one, the other answers what cannot be read, and hangs up.
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wdeprecated-declarations"

template <class Window> std::string property(Reference<Window> const& window, char const* name) {
    rtl::OUString value;
    if (Reference<css::awt::XVclWindowPeer> const peer(window, UNO_QUERY); peer.is())
        peer->getProperty(office::wide(name)) >>= value;
    return office::narrow(value);
}

/// Without the sign before the letter that it is chosen by.
std::string label(Reference<XWindow> const& part) {
    std::string words = property(part, "Label");
    std::erase(words, '~');
    return words;
}

/// Nothing if it is not there.
Reference<css::awt::XTopWindow> dialog(Office& office, std::string const& title) {
    Reference<css::awt::XExtendedToolkit> const toolkit(css::awt::Toolkit::create(office.context()), UNO_QUERY_THROW);
    for (sal_Int32 index = 0; index < toolkit->getTopWindowCount(); ++index)
        if (auto const window = toolkit->getTopWindow(index); property(window, "Title").starts_with(title))
            return window;
    return {};
}

void click(Office& office, Reference<XWindow> const& button) {
    css::awt::Rectangle const place = button->getPosSize();
    css::awt::MouseEvent event;
    event.Source = button;
    event.Buttons = css::awt::MouseButton::LEFT;
    event.X = place.Width / 2;
    event.Y = place.Height / 2;
    event.ClickCount = 1;
    Reference<css::awt::XToolkitRobot> const mouse(css::awt::Toolkit::create(office.context()), UNO_QUERY_THROW);
    mouse->mousePress(event);
    mouse->mouseRelease(event);
}

bool press_now(Office& office, std::string const& title, std::string const& button) {
    Reference<css::awt::XVclContainer> const parts(dialog(office, title), UNO_QUERY);
    if (!parts.is())
        return false;
    for (Reference<XWindow> const& part : parts->getWindows()) {
        if (label(part) != button)
            continue;
        click(office, part);
        return true;
    }
    return false;
}

#pragma GCC diagnostic pop

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

std::string english(menu::Text which) {
    return std::string(menu::text(which, Language::english));
}

void press(Office& office, std::string const& title, std::string const& button) {
    if (!eventually(office, [&] { return press_now(office, title, button); }))
        throw std::runtime_error("no dialog '" + title + "' has a button " + button);
}

void expect_gone(Office& office, std::string const& title) {
    if (!eventually(office, [&] { return !dialog(office, title).is(); }))
        throw std::runtime_error("the dialog '" + title + "' stays");
}

} // namespace hearthcell::tests
