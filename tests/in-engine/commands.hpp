#pragma once
// The menu's commands, given without the menu.

#include "calc.hpp"

#include <com/sun/star/frame/XModel.hpp>

namespace hearthcell::tests {

struct Said {
    enum class State { failed, done, given_up } state = State::given_up;
    std::string words = {};
};

/// Whether somebody is there to answer dialogs.
enum class Attended { no, yes };

/// Gives the command vnd.hearthcell:NAME to the frame of an open document, as the menu does, but without dialogs where
/// nobody attends.
Said command(Office& office, Document const& document, std::string const& name,
             std::filesystem::path const& target = {}, std::filesystem::path const& source = {},
             Attended attended = Attended::no);

Said command(Office& office, com::sun::star::uno::Reference<com::sun::star::frame::XModel> const& model,
             std::string const& name, std::filesystem::path const& target = {},
             std::filesystem::path const& source = {}, Attended attended = Attended::no);

/// The documents without a file that are open, by the titles of their windows.
std::vector<com::sun::star::uno::Reference<com::sun::star::frame::XModel>> untitled_documents(Office& office);

void close(com::sun::star::uno::Reference<com::sun::star::frame::XModel> const& document);

} // namespace hearthcell::tests
