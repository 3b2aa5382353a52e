#include "extension/office/text.hpp"

namespace hearthcell::office {

rtl::OUString wide(std::string_view utf8) {
    return {utf8.data(), static_cast<sal_Int32>(utf8.size()), RTL_TEXTENCODING_UTF8};
}

std::string narrow(rtl::OUString const& text) {
    rtl::OString const utf8 = rtl::OUStringToOString(text, RTL_TEXTENCODING_UTF8);
    return {utf8.getStr(), static_cast<std::size_t>(utf8.getLength())};
}

} // namespace hearthcell::office
