#include "extension/archive/recalculation/links.hpp"

#include "extension/formulas/quotes.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/rewriting.hpp"
#include "extension/office/file_url.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <osl/file.hxx>
#include <rtl/uri.hxx>

#include <set>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::narrow;

namespace hearthcell::archive {
namespace {

/// The last part: the rest is relative to a private copy, or a path on somebody's computer.
std::string file_name(rtl::OUString const& url) {
    rtl::OUString const last = url.copy(url.lastIndexOf('/') + 1);
    return narrow(rtl::Uri::decode(last, rtl_UriDecodeWithCharset, RTL_TEXTENCODING_UTF8));
}

} // namespace

std::string external_links(office::Document const& workbook, Outside const& outside) {
    std::string const hidden = outside.in_words();
    std::string const others = office::asking("looking for links", [&]() -> std::string {
        std::set<std::string> files;
        Reference<css::beans::XPropertySet> const properties(workbook.model(), UNO_QUERY_THROW);
        for (char const* kind : {"ExternalDocLinks", "SheetLinks", "DDELinks"}) {
            Reference<css::container::XNameAccess> const links(
                properties->getPropertyValue(rtl::OUString::createFromAscii(kind)), UNO_QUERY);
            if (links.is())
                for (rtl::OUString const& name : links->getElementNames())
                    files.insert(file_name(name));
        }
        Reference<css::container::XIndexAccess> const areas(properties->getPropertyValue("AreaLinks"), UNO_QUERY);
        for (sal_Int32 area = 0; areas.is() && area < areas->getCount(); ++area)
            if (rtl::OUString url; Reference<css::beans::XPropertySet>(areas->getByIndex(area), UNO_QUERY_THROW)
                                       ->getPropertyValue("Url") >>= url)
                files.insert(file_name(url));
        std::erase_if(files, [&](std::string const& file) { return file.empty() || outside.is_named_in(file); });
        if (files.empty())
            return {};
        std::string text = std::to_string(files.size()) + (files.size() == 1 ? " linked file: " : " linked files: ");
        for (std::string const& file : files)
            text += (file == *files.begin() ? "" : ", ") + file;
        return text;
    });
    return hidden + (hidden.empty() || others.empty() ? "" : "; ") + others;
}

std::string with_original_links(std::string const& formula, Places const& places) {
    std::filesystem::path top = places.copy;
    for (int level = 0; level < folders_above_copy; ++level)
        top = top.parent_path();
    std::string const ours = narrow(office::file_url(top)) + "/";
    return formulas::rewritten(formula, [&](formulas::Token const& token) -> std::optional<std::string> {
        std::string_view const file = formulas::file_named_by(token);
        std::string url = formulas::unquoted(file);
        if (places.outside != nullptr && places.outside->is_named_in(url)) {
            url = places.outside->put_back(url);
            if (url.find(':') != std::string::npos)
                return formulas::with_replacements(token.text, {{file, formulas::quoted(url, '\'')}});
            url = narrow(office::file_url(places.copy)) + "/" + url;
        }
        rtl::OUString path;
        if (!url.starts_with(ours) ||
            osl::FileBase::getSystemPathFromFileURL(office::wide(url), path) != osl::FileBase::E_None)
            return std::nullopt;
        auto const relative = std::filesystem::path(narrow(path)).lexically_relative(places.copy);
        std::string const original = narrow(office::file_url(places.original / relative));
        return formulas::with_replacements(token.text, {{file, formulas::quoted(original, '\'')}});
    });
}

} // namespace hearthcell::archive
