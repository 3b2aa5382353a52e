#pragma once
// Work that must not throw into the office.

#include "extension/menu/surroundings.hpp"

#include <com/sun/star/uno/Exception.hpp>

#include <exception>

namespace hearthcell::menu {

/// Does some work. What it throws becomes an answer in words: nothing may pass into the office, whose menus expect no
/// exception.
template <class Work> Answer safely(Surroundings const& surroundings, Work const& work) {
    rtl::OUString cause;
    try {
        return work();
    } catch (com::sun::star::uno::Exception const& problem) {
        cause = problem.Message;
    } catch (std::exception const& problem) {
        cause = rtl::OUString::createFromAscii(problem.what());
    }
    return {false, with_cause(surroundings, surroundings.say(Text::unexpected), cause)};
}

} // namespace hearthcell::menu
