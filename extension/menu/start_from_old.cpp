#include "extension/menu/start_from_old.hpp"

#include "extension/menu/documents.hpp"
#include "extension/menu/original.hpp"
#include "extension/menu/package_files.hpp"
#include "extension/menu/path_fields.hpp"

#include <com/sun/star/frame/XModel.hpp>

namespace css = com::sun::star;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

css::uno::Reference<css::frame::XFrame> frame_of(css::uno::Reference<css::uno::XInterface> const& document) {
    auto const view =
        css::uno::Reference<css::frame::XModel>(document, css::uno::UNO_QUERY_THROW)->getCurrentController();
    return view.is() ? view->getFrame() : css::uno::Reference<css::frame::XFrame>();
}

} // namespace

Answer start_from_old_sheet(Surroundings const& surroundings) {
    OUString path = path_of(surroundings.source);
    if (path.isEmpty() && !surroundings.unattended)
        path = ask_for_workbook(surroundings, Text::choose_old_sheet);
    if (path.isEmpty())
        return {false, {}};
    OUString cause;
    try {
        if (auto const copy = open_copy(surroundings, url_of(path)); copy.is()) {
            remember_original(copy, path);
            OUString const next = surroundings.title_of(Text::same_in_folder) + wide("…");
            return {true, surroundings.say(Text::started_from_old, path, next), frame_of(copy)};
        }
    } catch (css::uno::Exception const& problem) {
        cause = problem.Message;
    }
    return {false, with_cause(surroundings, surroundings.say(Text::cannot_open, path), cause)};
}

} // namespace hearthcell::menu
