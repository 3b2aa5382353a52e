#include "extension/menu/documents.hpp"

#include "extension/menu/package_files.hpp"

#include <com/sun/star/document/MacroExecMode.hpp>
#include <com/sun/star/document/UpdateDocMode.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/util/XCloseable.hpp>

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

Answer open(Surroundings const& surroundings, OUString const& url, bool as_template) {
    OUString cause;
    try {
        if (load(surroundings, url,
                 {option("AsTemplate", Any(as_template)), option("Hidden", Any(surroundings.unattended)),
                  option("MacroExecutionMode", Any(css::document::MacroExecMode::NEVER_EXECUTE))})
                .is())
            return {};
    } catch (css::uno::Exception const& problem) {
        cause = problem.Message;
    }
    return {false, with_cause(surroundings, surroundings.say(Text::cannot_open, path_of(url)), cause)};
}

} // namespace

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

HiddenSpreadsheet::HiddenSpreadsheet(Surroundings const& surroundings, OUString const& url)
    : loaded_(load(surroundings, url,
                   {option("Hidden", Any(true)),
                    option("MacroExecutionMode", Any(css::document::MacroExecMode::NEVER_EXECUTE)),
                    option("UpdateDocMode", Any(css::document::UpdateDocMode::NO_UPDATE))})) {
    model.set(loaded_, css::uno::UNO_QUERY);
}

HiddenSpreadsheet::~HiddenSpreadsheet() {
    try {
        if (Reference<css::util::XCloseable> const closeable(loaded_, css::uno::UNO_QUERY); closeable.is())
            closeable->close(true);
    } catch (css::uno::Exception const&) { // somebody else holds it, or it is gone already
    }
}

void store_copy(Reference<css::sheet::XSpreadsheetDocument> const& document, OUString const& url) {
    char const* const format = url.endsWithIgnoreAsciiCase(".xlsx") ? "Calc MS Excel 2007 XML" : "calc8";
    Reference<css::frame::XStorable>(document, UNO_QUERY_THROW)
        ->storeToURL(url, sequence({option("FilterName", Any(OUString::createFromAscii(format))),
                                    option("Overwrite", Any(true))}));
}

} // namespace hearthcell::menu
