#pragma once
// A connection of UNO over a socket that lies in a folder of our choice.

#include <com/sun/star/uno/XComponentContext.hpp>

#include <filesystem>

namespace hearthcell::office {

/// The office's context over the socket that it listens on in this folder. UNO's own pipes lie in /tmp, wherever that
/// is for the office. Nothing where it does not listen yet. UNO's exceptions pass.
com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext>
connect_in(std::filesystem::path const& folder, std::string const& pipe,
           com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> const& own);

} // namespace hearthcell::office
