#pragma once
// What the code of each command is given, and what it answers.

#include "extension/menu/texts.hpp"

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <rtl/ustring.hxx>

#include <string>

namespace hearthcell::menu {

/// What a command works in and on.
struct Surroundings {
    com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> context;
    com::sun::star::uno::Reference<com::sun::star::frame::XFrame>
        frame; // that the command was chosen in, if it still is
    Language language = Language::english;
    bool unattended = false; // no dialogs, documents open out of sight: for programs that call the commands

    // What a program gives that calls a command: the addresses of what it works on and of an old sheet, and whether
    // values that no sheet shows are confirmed.
    rtl::OUString source = {}, original = {};
    bool confirmed = false;

    [[nodiscard]] rtl::OUString say(Text which) const;
    [[nodiscard]] rtl::OUString say(Text which, rtl::OUString const& first) const;
    [[nodiscard]] rtl::OUString say(Text which, rtl::OUString const& first, rtl::OUString const& second) const;
    /// A command's label as the title of its dialog: without the mark of its letter and the dots.
    [[nodiscard]] rtl::OUString title_of(Text label) const;
    /// For what goes on when the command is through: the frame may be closed meanwhile, and must not be kept from that.
    [[nodiscard]] Surroundings without_frame() const;
};

/// What a command has to say when it is through.
struct Answer {
    bool done = true;
    rtl::OUString words = {}; // none: nothing to say, also where the user gave the command up
    com::sun::star::uno::Reference<com::sun::star::frame::XFrame> over = {}; // said there, where it opened a window
};

rtl::OUString wide(std::string_view utf8);
std::string bytes(rtl::OUString const& text); ///< its UTF-8

/// The language of the office's menus.
Language language_of_office(com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> const& context);

/// A sentence of ours with, below it, what the office itself gives as the cause.
rtl::OUString with_cause(Surroundings const& surroundings, rtl::OUString const& words, rtl::OUString const& cause);

} // namespace hearthcell::menu
