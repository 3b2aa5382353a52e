#include "extension/menu/outside_links.hpp"

#include <rtl/uri.hxx>

#include <algorithm>
#include <array>
#include <charconv>
#include <functional>
#include <optional>

using rtl::OUString;

namespace hearthcell::menu {
namespace {

/// That hold addresses; those of databases hold a registered name or an address.
constexpr std::array<std::string_view, 3> attributes{" xlink:href=\"", " table:database-name=\"",
                                                     " form:datasource=\""};
constexpr std::string_view nowhere = "vnd.hearthcell.outside:"; // of no protocol that LibreOffice knows

std::string narrow(OUString const& text) {
    rtl::OString const bytes = rtl::OUStringToOString(text, RTL_TEXTENCODING_UTF8);
    return {bytes.getStr(), std::size_t(bytes.getLength())};
}

bool has_protocol(std::string_view address) {
    auto const colon = address.find_first_of(":/?#");
    return colon != std::string_view::npos && colon > 0 && address[colon] == ':';
}

/// Seen from a package, which counts as a folder: what is in it has neither a protocol nor leads out of it.
bool is_outside(std::string_view address) {
    if (address.starts_with("vnd.sun.star.Package:"))
        return false;
    return has_protocol(address) || address.starts_with('/') || address.starts_with("../");
}

/// What only a person follows by clicking, and what is opened as a macro or not at all.
bool is_only_clicked(std::string_view element) {
    constexpr std::array<std::string_view, 4> names{"text:a", "draw:a", "script:event-listener",
                                                    "presentation:event-listener"};
    return element.starts_with("form:") || std::find(names.begin(), names.end(), element) != names.end();
}

/// An element's start, with an address in it. Places in the XML.
struct Link {
    std::size_t start, end;           // from < to behind >
    std::size_t address, address_end; // without the quotes
    std::string_view element;         // "draw:image"
};

/// The first from a place on. In what LibreOffice writes, < > and " stand for themselves only in the markup.
std::optional<Link> next_link(std::string_view xml, std::string_view attribute, std::size_t from) {
    for (auto at = xml.find(attribute, from); at != xml.npos; at = xml.find(attribute, at + 1)) {
        auto const start = xml.rfind('<', at), address = at + attribute.size();
        auto const address_end = xml.find('"', address), end = xml.find('>', address);
        if (start == xml.npos || address_end == xml.npos || end == xml.npos || end < address_end)
            continue;
        std::string_view const before = xml.substr(start + 1, at - start - 1);
        if (before.find('>') == before.npos)
            return Link{start, end + 1, address, address_end, before.substr(0, before.find(' '))};
    }
    return std::nullopt;
}

using Instead = std::function<std::optional<std::string>(Link const&, std::string_view address)>;

/// Copies the XML, with something else in the place of some links' starts of elements. Whether there were any.
bool replace_links(std::string& xml, std::string_view attribute, Instead const& by) {
    std::string result;
    std::size_t copied = 0;
    for (auto link = next_link(xml, attribute, 0); link; link = next_link(xml, attribute, link->end)) {
        std::string_view const address = std::string_view(xml).substr(link->address, link->address_end - link->address);
        if (auto const instead = by(*link, address)) {
            result.append(xml, copied, link->start - copied).append(*instead);
            copied = link->end;
        }
    }
    if (copied == 0)
        return false;
    xml = result.append(xml, copied);
    return true;
}

bool replace_links(std::string& xml, Instead const& by) {
    bool changed = false;
    for (std::string_view const attribute : attributes)
        changed = replace_links(xml, attribute, by) || changed;
    return changed;
}

/// A link's start of an element with another address.
std::string with_address(std::string_view xml, Link const& link, std::string_view address) {
    return std::string(xml.substr(link.start, link.address - link.start))
        .append(address)
        .append(xml.substr(link.address_end, link.end - link.address_end));
}

/// An address that a package leads out by, with its protocol.
std::string absolute(std::string_view address, OUString const& stored_at) {
    if (has_protocol(address))
        return std::string(address);
    try {
        return narrow(rtl::Uri::convertRelToAbs(stored_at + "/", wide(address)));
    } catch (rtl::MalformedUriException const&) {
        return std::string(address);
    }
}

/// Of a file's address, seen from a package that is stored at another.
std::string relative(std::string const& address, OUString const& stored_at) {
    constexpr std::string_view file = "file://";
    std::string const package = narrow(stored_at);
    if (!address.starts_with(file) || !package.starts_with(file))
        return address;
    auto const differ = std::mismatch(address.begin(), address.end(), package.begin(), package.end());
    auto const last_common = address.rfind('/', std::size_t(differ.first - address.begin()) - 1);
    std::string way; // up out of the package and its folders, and down from there
    for (auto up = std::count(package.begin() + std::ptrdiff_t(last_common), package.end(), '/'); up > 0; --up)
        way += "../";
    return way + address.substr(last_common + 1);
}

} // namespace

bool OutsideLinks::take_out_of(std::string& xml, OUString const& stored_at) {
    return replace_links(xml, [&](Link const& link, std::string_view address) -> std::optional<std::string> {
        if (!is_outside(address) || is_only_clicked(link.element))
            return std::nullopt;
        if (link.element.starts_with("draw:object") && xml[link.end - 2] == '/') {
            ++objects_;
            return std::string(); // the picture that stands for it comes next
        }
        if (link.element == "draw:image")
            ++pictures_;
        addresses_.push_back(absolute(address, stored_at));
        return with_address(xml, link, std::string(nowhere) + std::to_string(addresses_.size() - 1));
    });
}

bool OutsideLinks::put_back_into(std::string& xml, OUString const& stored_at) const {
    return replace_links(xml, [&](Link const& link, std::string_view address) -> std::optional<std::string> {
        if (!address.starts_with(nowhere))
            return std::nullopt;
        std::size_t number = addresses_.size();
        std::from_chars(address.data() + nowhere.size(), address.data() + address.size(), number);
        if (number >= addresses_.size())
            return std::nullopt;
        return with_address(xml, link, relative(addresses_[number], stored_at));
    });
}

} // namespace hearthcell::menu
