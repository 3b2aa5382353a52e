#pragma once
// The menu's commands, given without the menu.

#include "calc.hpp"

#include <com/sun/star/frame/XModel.hpp>

#include <functional>

namespace hearthcell::tests {

struct Said {
    enum class State { failed, done, given_up } state = State::given_up;
    std::string words = {};
};

/// Whether somebody is there to answer dialogs.
enum class Attended { no, yes };

/// What a command is given besides. What is empty is left out.
struct Given {
    std::filesystem::path target = {}, source = {}, original = {};
    bool confirmed = false;
    Attended attended = Attended::no;
};

/// Gives the command vnd.hearthcell:NAME to the frame of an open document, as the menu does, but without dialogs where
/// nobody attends.
Said command(Office& office, com::sun::star::uno::Reference<com::sun::star::frame::XModel> const& model,
             std::string const& name, Given const& given);

Said command(Office& office, Document const& document, std::string const& name,
             std::filesystem::path const& target = {}, std::filesystem::path const& source = {},
             Attended attended = Attended::no);

Said command(Office& office, com::sun::star::uno::Reference<com::sun::star::frame::XModel> const& model,
             std::string const& name, std::filesystem::path const& target = {},
             std::filesystem::path const& source = {}, Attended attended = Attended::no);

/// The documents without a file that are open, by the titles of their windows.
std::vector<com::sun::star::uno::Reference<com::sun::star::frame::XModel>> untitled_documents(Office& office);

/// The document whose file that is; null where it is not open.
com::sun::star::uno::Reference<com::sun::star::frame::XModel> open_document(Office& office,
                                                                            std::filesystem::path const& file);

Sheet first_sheet(com::sun::star::uno::Reference<com::sun::star::frame::XModel> const& document);

/// Whether something comes true within the time that a slow machine needs for a run.
bool eventually(std::function<bool()> const& holds);

void close(com::sun::star::uno::Reference<com::sun::star::frame::XModel> const& document);

} // namespace hearthcell::tests
