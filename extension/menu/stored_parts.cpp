#include "extension/menu/stored_parts.hpp"

#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/embed/ElementModes.hpp>
#include <com/sun/star/embed/StorageFactory.hpp>
#include <com/sun/star/embed/XStorage.hpp>
#include <com/sun/star/embed/XTransactedObject.hpp>
#include <com/sun/star/io/XSeekable.hpp>
#include <com/sun/star/io/XTruncate.hpp>
#include <com/sun/star/lang/XComponent.hpp>

namespace css = com::sun::star;
using css::embed::XStorage;
using css::embed::ElementModes::READWRITE;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

using Change = std::function<bool(std::string&)>;
using ChangePart = std::function<bool(std::string const&, std::string&)>;

void change_stream(Reference<XStorage> const& storage, OUString const& name, Change const& change) {
    auto const stream = storage->openStreamElement(name, READWRITE);
    Reference<css::io::XSeekable> const place(stream, UNO_QUERY_THROW);
    auto const size = sal_Int32(place->getLength());
    css::uno::Sequence<sal_Int8> bytes;
    stream->getInputStream()->readBytes(bytes, size);
    std::string xml(reinterpret_cast<char const*>(bytes.getConstArray()), std::size_t(bytes.getLength()));
    if (change(xml)) {
        auto const output = stream->getOutputStream();
        Reference<css::io::XTruncate>(output, UNO_QUERY_THROW)->truncate();
        output->writeBytes({reinterpret_cast<sal_Int8 const*>(xml.data()), sal_Int32(xml.size())});
        output->closeOutput();
    }
    Reference<css::lang::XComponent>(stream, UNO_QUERY_THROW)->dispose();
}

void change_parts_in(Reference<XStorage> const& storage, std::string const& folder, ChangePart const& change) {
    Reference<css::container::XNameAccess> const elements(storage, UNO_QUERY_THROW);
    for (OUString const& name : elements->getElementNames()) {
        std::string const part = folder + rtl::OUStringToOString(name, RTL_TEXTENCODING_UTF8).getStr();
        if (storage->isStorageElement(name))
            change_parts_in(storage->openStorageElement(name, READWRITE), part + "/", change);
        else if (name == "content.xml" || name == "styles.xml" || name == "settings.xml" || name == "meta.xml")
            change_stream(storage, name, [&](std::string& xml) { return change(part, xml); });
    }
    Reference<css::embed::XTransactedObject>(storage, UNO_QUERY_THROW)->commit();
    Reference<css::lang::XComponent>(storage, UNO_QUERY_THROW)->dispose();
}

} // namespace

// Discouraged because of how it tells the types of its arguments; there is no other way to a package.
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wdeprecated-declarations"

void change_parts(Surroundings const& surroundings, OUString const& url, ChangePart const& change) {
    Any const arguments[] = {Any(url), Any(READWRITE)};
    Reference<XStorage> const storage(
        css::embed::StorageFactory::create(surroundings.context)->createInstanceWithArguments({arguments, 2}),
        UNO_QUERY_THROW);
    change_parts_in(storage, {}, change);
}

#pragma GCC diagnostic pop

} // namespace hearthcell::menu
