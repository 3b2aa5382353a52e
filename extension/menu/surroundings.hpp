#pragma once
// What the code of each command is given, and what it answers.

#include "extension/menu/texts.hpp"

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <rtl/ustring.hxx>

namespace hearthcell::menu {

/// What a command works in and on.
struct Surroundings {
    com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> context;
    com::sun::star::uno::Reference<com::sun::star::frame::XFrame>
        frame; // that the command was chosen in, if it still is
    Language language = Language::english;
    bool unattended = false; // no dialogs, documents open out of sight: for programs that call the commands

    rtl::OUString source = {}; // the address of what a command works on, where a program gives it

    [[nodiscard]] rtl::OUString say(Text which) const;
    [[nodiscard]] rtl::OUString say(Text which, rtl::OUString const& first) const;
    [[nodiscard]] rtl::OUString say(Text which, rtl::OUString const& first, rtl::OUString const& second) const;
};

/// What a command has to say when it is through.
struct Answer {
    bool done = true;
    rtl::OUString words = {}; // none: nothing to say, also where the user gave the command up
};

rtl::OUString wide(std::string_view utf8);

/// The language of the office's menus.
Language language_of_office(com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> const& context);

/// A sentence of ours with, below it, what the office itself gives as the cause.
rtl::OUString with_cause(Surroundings const& surroundings, rtl::OUString const& words, rtl::OUString const& cause);

} // namespace hearthcell::menu
