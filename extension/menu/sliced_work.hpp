#pragma once
// Work that is done a little at a time while the office stays usable.

#include "extension/menu/surroundings.hpp"

#include <memory>

namespace hearthcell::menu {

/// Long work in short parts. Leaving it off leaves nothing behind.
class SlicedWork {
public:
    SlicedWork() = default;
    virtual ~SlicedWork() = default;
    SlicedWork(SlicedWork const&) = delete;
    SlicedWork& operator=(SlicedWork const&) = delete;

    virtual void go_on() = 0;
    [[nodiscard]] virtual bool is_done() const = 0;
    /// From 0 to 1.
    [[nodiscard]] virtual double done() const = 0;
    /// Whether the next part is one of many, of some hundredths of a second: then several are done in one turn.
    [[nodiscard]] virtual bool is_short() const = 0;
    /// Whether the next part is the last, which takes its time and cannot be stopped.
    [[nodiscard]] virtual bool is_last() const { return false; }
    /// When all is done.
    [[nodiscard]] virtual Answer answer() const = 0;
};

/// What the window says of it.
struct WorkTexts {
    Text title, at_first, doing, last, stopped;
    rtl::OUString subject; // what is worked on, or where to
};

/// Does it to its end; or, where somebody attends, begins it: a dialog shows how far it is and can stop it, and what
/// came of it is said at the end. An office that ends stops it, too.
Answer work_in_slices(Surroundings const& surroundings, std::unique_ptr<SlicedWork> work, WorkTexts const& texts);

} // namespace hearthcell::menu
