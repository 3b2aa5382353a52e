#pragma once
// An office with windows, seen and used as by a person.

#include "extension/office/office.hpp"

#include <com/sun/star/accessibility/AccessibleRole.hpp>
#include <com/sun/star/accessibility/XAccessible.hpp>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace hearthcell::tests {

namespace role = com::sun::star::accessibility::AccessibleRole;

/// Something in a window: a menu, a button, a text.
struct Element {
    std::string name;
    sal_Int16 role = role::UNKNOWN;
    int x = 0, y = 0; // its middle, on the screen
    int left = 0;     // its edge
};

struct Window {
    std::string title;
    std::vector<Element> elements;

    [[nodiscard]] Element const* find(std::string const& name) const;
    [[nodiscard]] std::string words() const; // of all texts in it
    [[nodiscard]] std::vector<Element> of_role(sal_Int16 role) const;
};

/// The screen of an office with windows: read as a screen reader reads it, used with the mouse.
class Screen {
public:
    explicit Screen(office::Office& office);

    /// A window whose title begins like this, as soon as it is there and has an element of this name.
    std::optional<Window> window(std::string const& title, std::string const& element = {});
    /// Whether no window's title begins like this, at last.
    bool is_gone(std::string const& title);

    void click(Element const& element);
    void type(std::string const& text); // where the cursor is

    /// A picture of the whole screen as a file in the folder that HEARTHCELL_PICTURES names; without it, none is made.
    void picture(std::string const& name);

private:
    /// Those whose title begins so.
    [[nodiscard]] std::vector<Window> windows(std::string const& title) const;

    office::Office& office;
};

/// Whether something comes true within the time that a slow machine needs.
bool eventually(std::function<bool()> const& holds);

} // namespace hearthcell::tests
