#include "screen.hpp"

#include "extension/office/process.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/accessibility/XAccessibleComponent.hpp>
#include <com/sun/star/awt/Toolkit.hpp>
#include <com/sun/star/awt/XExtendedToolkit.hpp>

#include <chrono>
#include <cstdlib>
#include <thread>

namespace hearthcell::tests {

namespace css = com::sun::star;
namespace accessibility = css::accessibility;
using css::uno::Reference;
using namespace std::chrono_literals;

namespace {

constexpr auto patience = 30s;
constexpr sal_Int32 deepest = 6;  // a dialog's buttons, a menu's entries
constexpr sal_Int32 widest = 100; // a sheet's cells are left out

void collect(Reference<accessibility::XAccessible> const& object, sal_Int32 depth, std::vector<Element>& into) {
    Reference<accessibility::XAccessibleContext> context;
    if (object.is())
        context = object->getAccessibleContext();
    if (!context.is())
        return;
    Element element{office::narrow(context->getAccessibleName()), context->getAccessibleRole()};
    if (Reference<accessibility::XAccessibleComponent> const place(context, css::uno::UNO_QUERY); place.is()) {
        auto const corner = place->getLocationOnScreen();
        auto const size = place->getSize();
        element.left = corner.X;
        element.x = corner.X + size.Width / 2;
        element.y = corner.Y + size.Height / 2;
    }
    into.push_back(element);
    sal_Int32 const children = context->getAccessibleChildCount();
    if (depth < deepest && children < widest)
        for (sal_Int32 index = 0; index < children; ++index)
            collect(context->getAccessibleChild(index), depth + 1, into);
}

/// Runs a program of the Debian whose LibreOffice is shown.
void run(std::string program, std::vector<std::string> arguments) {
    if (char const* const other_root = std::getenv("HEARTHCELL_OFFICE_ROOT")) {
        arguments.insert(arguments.begin(), {other_root, program});
        program = "/usr/sbin/chroot";
    }
    office::Process process(program, arguments, "/dev/null");
    if (process.wait(patience) != 0)
        throw std::runtime_error(program + " failed");
}

} // namespace

Element const* Window::find(std::string const& name) const {
    for (Element const& element : elements)
        if (element.name == name)
            return &element;
    return nullptr;
}

std::vector<Element> Window::of_role(sal_Int16 wanted) const {
    std::vector<Element> found;
    for (Element const& element : elements)
        if (element.role == wanted)
            found.push_back(element);
    return found;
}

std::string Window::words() const {
    std::string all;
    for (Element const& element : elements)
        if (element.role == role::STATIC || element.role == role::LABEL)
            all += element.name + "\n";
    return all;
}

bool eventually(std::function<bool()> const& holds) {
    auto const end = std::chrono::steady_clock::now() + patience;
    while (!holds()) {
        if (std::chrono::steady_clock::now() > end)
            return false;
        std::this_thread::sleep_for(100ms);
    }
    return true;
}

Screen::Screen(office::Office& with_windows) : office(with_windows) {}

// Discouraged because so few use it; there is no other way to the dialogs.
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wdeprecated-declarations"

std::vector<Window> Screen::windows(std::string const& title) const {
    std::vector<Window> found;
    Reference<css::awt::XExtendedToolkit> const toolkit(css::awt::Toolkit::create(office.context()),
                                                        css::uno::UNO_QUERY_THROW);
    for (sal_Int32 index = 0; index < toolkit->getTopWindowCount(); ++index) {
        try {
            Reference<accessibility::XAccessible> const top(toolkit->getTopWindow(index), css::uno::UNO_QUERY);
            Reference<accessibility::XAccessibleContext> context;
            if (top.is())
                context = top->getAccessibleContext();
            if (!context.is())
                continue;
            Window window{office::narrow(context->getAccessibleName()), {}};
            if (!window.title.starts_with(title))
                continue; // not looked into: a sheet's window has hundreds of parts
            collect(top, 0, window.elements);
            found.push_back(window);
        } catch (css::uno::Exception const&) { // it closed while we looked
            if (!office.alive())
                throw;
        }
    }
    return found;
}

#pragma GCC diagnostic pop

std::optional<Window> Screen::window(std::string const& title, std::string const& element) {
    std::optional<Window> found;
    office::asking("looking for the window " + title, [&] {
        eventually([&] {
            for (Window const& window : windows(title))
                if (element.empty() || window.find(element) != nullptr)
                    found = window;
            return found.has_value();
        });
    });
    return found;
}

bool Screen::is_gone(std::string const& title) {
    return office::asking("waiting for the window " + title + " to close",
                          [&] { return eventually([&] { return windows(title).empty(); }); });
}

void Screen::click(Element const& element) {
    run("/usr/bin/xdotool",
        {"mousemove", std::to_string(element.x), std::to_string(element.y), "sleep", "0.3", "click", "1"});
}

void Screen::type(std::string const& text) {
    run("/usr/bin/xdotool", {"sleep", "0.3", "type", "--delay", "40", text});
}

void Screen::picture(std::string const& name) {
    if (char const* const folder = std::getenv("HEARTHCELL_PICTURES")) {
        std::this_thread::sleep_for(500ms); // until everything is drawn
        run("/usr/bin/import", {"-window", "root", std::string(folder) + "/" + name + ".png"});
    }
}

} // namespace hearthcell::tests
