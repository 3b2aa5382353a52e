#include "extension/menu/copy_for_sharing.hpp"

#include "extension/menu/dialogs.hpp"
#include "extension/menu/package_files.hpp"
#include "extension/menu/shared_copy.hpp"
#include "extension/menu/sliced_work.hpp"

#include <rtl/uri.hxx>

#include <memory>

using rtl::OUString;

namespace hearthcell::menu {
namespace {

/// Beside the document and named after it.
OUString ask_for_target(Surroundings const& surroundings, OUString const& address) {
    sal_Int32 const slash = address.lastIndexOf('/');
    OUString name = rtl::Uri::decode(address.copy(slash + 1), rtl_UriDecodeWithCharset, RTL_TEXTENCODING_UTF8);
    if (sal_Int32 const dot = name.lastIndexOf('.'); dot > 0)
        name = name.copy(0, dot);
    if (name.isEmpty())
        name = surroundings.say(Text::untitled);
    OUString const folder = address.startsWith("file:") ? address.copy(0, slash) : OUString();
    return ask_where_to_save(surroundings, folder, surroundings.say(Text::name_of_copy, name));
}

} // namespace

Answer copy_for_sharing(Surroundings const& surroundings, OUString const& given_target) {
    auto const document = document_of(surroundings.frame);
    if (!document.is())
        return {false, surroundings.say(Text::no_spreadsheet)};
    OUString target = given_target;
    if (target.isEmpty() && !surroundings.unattended)
        target = ask_for_target(surroundings, address_of(document));
    if (target.isEmpty())
        return {false, {}};
    if (is_open(surroundings, target))
        return {false, surroundings.say(Text::name_is_open, path_of(target))};
    return work_in_slices(surroundings, std::make_unique<SharedCopy>(surroundings, document, target),
                          {Text::copying, Text::reading_document, Text::replacing_formulas, Text::saving_copy,
                           Text::copy_stopped, path_of(target)});
}

} // namespace hearthcell::menu
