#include "extension/menu/copy_for_sharing.hpp"

#include "extension/menu/dialogs.hpp"
#include "extension/menu/documents.hpp"
#include "extension/menu/package_files.hpp"
#include "extension/sharing/freeze.hpp"
#include "functions/edition.hpp"

#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/io/TempFile.hpp>
#include <rtl/uri.hxx>

#include <fcntl.h>
#include <sys/stat.h>

#include <optional>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

Reference<css::sheet::XSpreadsheetDocument> document_of(Reference<css::frame::XFrame> const& frame) {
    Reference<css::frame::XController> controller;
    if (frame.is())
        controller = frame->getController();
    if (!controller.is())
        return {};
    return {controller->getModel(), UNO_QUERY};
}

OUString address_of(Reference<css::uno::XInterface> const& document) {
    Reference<css::frame::XModel> const model(document, UNO_QUERY);
    return model.is() ? model->getURL() : OUString();
}

std::optional<struct statx> status_of(OUString const& url) {
    rtl::OString const path = rtl::OUStringToOString(path_of(url), RTL_TEXTENCODING_UTF8);
    struct statx status {};
    if (::statx(AT_FDCWD, path.getStr(), 0, STATX_INO, &status) != 0)
        return std::nullopt;
    return status;
}

/// Whether two addresses lead to one file, by whatever name. (std::filesystem::equivalent would ask for a newer C++
/// library than every system has that the package runs on.)
bool is_same_file(OUString const& one, OUString const& other) {
    if (one == other)
        return true;
    auto const first = status_of(one), second = status_of(other);
    return first && second && first->stx_ino == second->stx_ino && first->stx_dev_major == second->stx_dev_major &&
           first->stx_dev_minor == second->stx_dev_minor;
}

bool is_open(Surroundings const& surroundings, OUString const& url) {
    auto const open = css::frame::Desktop::create(surroundings.context)->getComponents()->createEnumeration();
    while (open->hasMoreElements()) {
        Reference<css::uno::XInterface> const document(open->nextElement(), UNO_QUERY);
        if (OUString const address = address_of(document); !address.isEmpty() && is_same_file(address, url))
            return true;
    }
    return false;
}

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

/// Documents with a password keep the key among the properties they were opened or saved with.
bool has_password(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    for (css::beans::PropertyValue const& property :
         Reference<css::frame::XModel>(document, UNO_QUERY_THROW)->getArgs())
        if (property.Name == "EncryptionData" || property.Name == "Password")
            return true;
    return false;
}

Answer convert(Surroundings const& surroundings, Reference<css::sheet::XSpreadsheetDocument> const& document,
               OUString const& target) {
    auto const between = css::io::TempFile::create(surroundings.context); // deleted with the object
    store_copy(document, between->getUri());
    HiddenSpreadsheet const copy(surroundings, between->getUri());
    if (!copy.model.is())
        return {false, surroundings.say(Text::cannot_open, path_of(between->getUri()))};
    sharing::Frozen const frozen = sharing::freeze(copy.model, wide(edition));
    if (!frozen.locked_sheet.isEmpty())
        return {false, surroundings.say(Text::sheet_is_locked, frozen.locked_sheet)};
    try {
        store_copy(copy.model, target);
    } catch (css::uno::Exception const& problem) {
        OUString const words = surroundings.say(Text::copy_failed, path_of(target));
        return {false, with_cause(surroundings, words, problem.Message)};
    }
    OUString words = surroundings.say(Text::copied, OUString::number(frozen.formulas), path_of(target));
    if (frozen.left > 0)
        words += "\n\n" + surroundings.say(Text::copied_but_left, OUString::number(frozen.left));
    if (has_password(document))
        words += "\n\n" + surroundings.say(Text::copied_without_password);
    return {true, words};
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
    return convert(surroundings, document, target);
}

} // namespace hearthcell::menu
