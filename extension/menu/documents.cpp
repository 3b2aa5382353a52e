#include "extension/menu/documents.hpp"

#include "extension/menu/package_files.hpp"

#include <com/sun/star/document/MacroExecMode.hpp>
#include <com/sun/star/document/UpdateDocMode.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/util/XCloseable.hpp>

#include <fcntl.h>
#include <sys/stat.h>

#include <optional>
#include <vector>

namespace css = com::sun::star;
using css::beans::PropertyValue;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

PropertyValue option(char const* name, Any const& value) {
    return {OUString::createFromAscii(name), 0, value, css::beans::PropertyState_DIRECT_VALUE};
}

css::uno::Sequence<PropertyValue> sequence(std::vector<PropertyValue> const& options) {
    return {options.data(), sal_Int32(options.size())};
}

Reference<css::lang::XComponent> load(Surroundings const& surroundings, OUString const& url,
                                      std::vector<PropertyValue> const& options) {
    return css::frame::Desktop::create(surroundings.context)->loadComponentFromURL(url, "_blank", 0, sequence(options));
}

Reference<css::lang::XComponent> load_shown(Surroundings const& surroundings, OUString const& url, bool as_template) {
    return load(surroundings, url,
                {option("AsTemplate", Any(as_template)), option("Hidden", Any(surroundings.unattended)),
                 option("MacroExecutionMode", Any(css::document::MacroExecMode::NEVER_EXECUTE))});
}

Answer open(Surroundings const& surroundings, OUString const& url, bool as_template) {
    OUString cause;
    try {
        if (load_shown(surroundings, url, as_template).is())
            return {};
    } catch (css::uno::Exception const& problem) {
        cause = problem.Message;
    }
    return {false, with_cause(surroundings, surroundings.say(Text::cannot_open, path_of(url)), cause)};
}

void close(Reference<css::lang::XComponent> const& document) {
    try {
        if (Reference<css::util::XCloseable> const closeable(document, css::uno::UNO_QUERY); closeable.is())
            closeable->close(true);
    } catch (css::uno::Exception const&) { // somebody else holds it, or it is gone already
    }
}

std::optional<struct statx> status_of(OUString const& url) {
    rtl::OString const path = rtl::OUStringToOString(path_of(url), RTL_TEXTENCODING_UTF8);
    struct statx status {};
    if (::statx(AT_FDCWD, path.getStr(), 0, STATX_INO | STATX_TYPE | STATX_SIZE, &status) != 0)
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

} // namespace

bool is_plain_file(OUString const& url, std::uint64_t most) {
    auto const status = status_of(url);
    return status && S_ISREG(status->stx_mode) && status->stx_size <= most;
}

Answer open_as_new(Surroundings const& surroundings, std::string_view folder, std::string_view file) {
    OUString const package = package_folder(surroundings);
    if (package.isEmpty())
        return {false, surroundings.say(Text::package_not_found)};
    OUString const url = packaged_file(surroundings, package, folder, file);
    if (url.isEmpty())
        return {false, surroundings.say(Text::file_missing, path_of(package + wide(folder) + wide(file)))};
    return open(surroundings, url, true);
}

Answer open_file(Surroundings const& surroundings, OUString const& url) {
    return open(surroundings, url, false);
}

Reference<css::sheet::XSpreadsheetDocument> open_copy(Surroundings const& surroundings, OUString const& url) {
    auto const loaded = load_shown(surroundings, url, true);
    Reference<css::sheet::XSpreadsheetDocument> const document(loaded, css::uno::UNO_QUERY);
    if (!document.is()) {
        close(loaded);
        return {};
    }
    // The office would name the file as the template that the document follows, and ask about it later on.
    auto const facts =
        Reference<css::document::XDocumentPropertiesSupplier>(document, UNO_QUERY_THROW)->getDocumentProperties();
    facts->setTemplateName({});
    facts->setTemplateURL({});
    return document;
}

bool is_open(Surroundings const& surroundings, OUString const& url) {
    auto const open = css::frame::Desktop::create(surroundings.context)->getComponents()->createEnumeration();
    while (open->hasMoreElements()) {
        Reference<css::frame::XModel> const model(open->nextElement(), css::uno::UNO_QUERY);
        if (model.is() && !model->getURL().isEmpty() && is_same_file(model->getURL(), url))
            return true;
    }
    return false;
}

Reference<css::sheet::XSpreadsheetDocument> document_of(Reference<css::frame::XFrame> const& frame) {
    Reference<css::frame::XController> controller;
    if (frame.is())
        controller = frame->getController();
    if (!controller.is())
        return {};
    return {controller->getModel(), css::uno::UNO_QUERY};
}

OUString address_of(Reference<css::uno::XInterface> const& document) {
    Reference<css::frame::XModel> const model(document, css::uno::UNO_QUERY);
    return model.is() ? model->getURL() : OUString();
}

HiddenSpreadsheet::HiddenSpreadsheet(Surroundings const& surroundings, OUString const& url)
    : loaded_(load(surroundings, url,
                   {option("Hidden", Any(true)),
                    option("MacroExecutionMode", Any(css::document::MacroExecMode::NEVER_EXECUTE)),
                    option("UpdateDocMode", Any(css::document::UpdateDocMode::NO_UPDATE))})) {
    model.set(loaded_, css::uno::UNO_QUERY);
}

HiddenSpreadsheet::~HiddenSpreadsheet() {
    close(loaded_);
}

void store_copy(Reference<css::sheet::XSpreadsheetDocument> const& document, OUString const& url) {
    char const* const format = url.endsWithIgnoreAsciiCase(".xlsx") ? "Calc MS Excel 2007 XML" : "calc8";
    Reference<css::frame::XStorable>(document, UNO_QUERY_THROW)
        ->storeToURL(url, sequence({option("FilterName", Any(OUString::createFromAscii(format))),
                                    option("Overwrite", Any(true))}));
}

} // namespace hearthcell::menu
