#include "extension/archive/links/outside.hpp"

#include "extension/archive/files/problem.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <random>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_links = 100'000; // what is hidden is remembered
constexpr std::size_t most_named = 5;
constexpr std::size_t longest_address = 200; // in a problem's words

bool is_letter_or_digit(char letter) {
    return std::isalnum(static_cast<unsigned char>(letter)) != 0;
}

/// Nobody who wrote a workbook can have known it.
std::string fresh_mark() {
    std::random_device random;
    std::array<char, 8> digits{};
    auto const end = std::to_chars(digits.data(), digits.data() + digits.size(), random(), 16).ptr;
    return "outside-" + std::string(digits.data(), end) + "-";
}

/// As LibreOffice writes it: what is no plain letter of an address as %20.
std::string url_of(std::filesystem::path const& folder) {
    constexpr std::string_view plain = "/-_.!~*()&=+$,:@";
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string url = "file://";
    for (char const letter : folder.string() + "/") {
        auto const byte = static_cast<unsigned char>(letter);
        if (is_letter_or_digit(letter) || plain.find(letter) != std::string_view::npos)
            url += letter;
        else
            url += {'%', digits[byte >> 4U], digits[byte & 15U]};
    }
    return url;
}

/// The office chooses by it how something is to be opened.
std::string ending_of(std::string_view address) {
    address = address.substr(0, address.find_first_of("?#"));
    auto const dot = address.rfind('.');
    if (dot == std::string_view::npos || address.size() - dot > 6)
        return "none";
    std::string ending(address.substr(dot + 1));
    return !ending.empty() && std::all_of(ending.begin(), ending.end(), is_letter_or_digit) ? ending : "none";
}

/// With the dots that a reader may take for dots.
std::string with_plain_dots(std::string_view address) {
    std::string plain;
    for (std::size_t at = 0; at < address.size(); ++at) {
        bool const dot = address[at] == '%' && at + 2 < address.size() && address[at + 1] == '2' &&
                         (address[at + 2] == 'e' || address[at + 2] == 'E');
        plain += dot ? '.' : address[at];
        at += dot ? 2 : 0;
    }
    return plain;
}

} // namespace

Outside::Outside(std::filesystem::path const& folder) : folder_(url_of(folder)), mark_(fresh_mark()) {}

std::string Outside::hide(OutsideLink link) {
    if (hidden_.size() >= most_links)
        throw Trouble(Reason::too_large, "more than " + std::to_string(most_links) + " links");
    std::string& name = names_[{link.what, link.address}];
    if (name.empty()) {
        name = folder_ + mark_ + std::to_string(hidden_.size()) + "." + ending_of(link.address);
        hidden_.push_back(std::move(link));
    }
    return name;
}

void Outside::hide_twin(std::string const& name, std::string address) {
    twins_[name.substr(folder_.size())] = std::move(address);
}

std::string Outside::twin_of(std::string_view name) const {
    auto const at = name.find(mark_);
    auto const found = at == std::string_view::npos ? twins_.end() : twins_.find(name.substr(at));
    return found == twins_.end() ? std::string() : found->second;
}

bool Outside::is_named_in(std::string_view text) const {
    return !hidden_.empty() && text.find(mark_) != std::string_view::npos;
}

std::string Outside::put_back(std::string_view text) const {
    std::string result;
    for (;;) {
        auto const at = hidden_.empty() ? std::string_view::npos : text.find(mark_);
        if (at == std::string_view::npos)
            return result.append(text);
        result.append(text.substr(0, at));
        text.remove_prefix(at + mark_.size());
        std::size_t number = 0;
        auto const [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
        if (problem != std::errc() || number >= hidden_.size()) {
            result += mark_;
            continue;
        }
        text.remove_prefix(static_cast<std::size_t>(end - text.data()));
        OutsideLink const& link = hidden_[number];
        if (std::string const ending = "." + ending_of(link.address); text.starts_with(ending))
            text.remove_prefix(ending.size());
        // The office wrote the name with its folder, or from where it saved the workbook; in the formula of a name it
        // makes a path of both.
        if (result.ends_with(folder_))
            result.resize(result.size() - folder_.size());
        if (auto const quote = result.rfind('\'');
            quote != std::string::npos && result.compare(quote + 1, folder_.size(), folder_) == 0)
            result.resize(quote + 1);
        while (result.ends_with("../"))
            result.resize(result.size() - 3);
        if (result.ends_with("./"))
            result.resize(result.size() - 2);
        result += link.address;
    }
}

std::string Outside::in_words() const {
    std::vector<OutsideLink const*> all;
    for (auto const* const list : {&hidden_, &taken_out_})
        for (OutsideLink const& link : *list)
            all.push_back(&link);
    if (all.empty())
        return {};
    std::string words = std::to_string(all.size()) + (all.size() == 1 ? " link: " : " links: ");
    for (std::size_t number = 0; number < std::min(all.size(), most_named); ++number) {
        OutsideLink const& link = *all[number];
        bool const cut = link.address.size() > longest_address;
        words += (number == 0 ? "" : ", ") + link.what + " " + link.address.substr(0, longest_address) +
                 (cut ? "…" : "") + (link.where.empty() ? "" : " (" + link.where + ")");
    }
    if (all.size() > most_named)
        words += " and " + std::to_string(all.size() - most_named) + " more";
    if (!taken_out_.empty())
        words += "; the copy is without " + std::to_string(taken_out_.size()) + " of them";
    return words;
}

bool leads_outside(std::string_view written, int depth) {
    std::string const address = with_plain_dots(written);
    if (address.empty() || address.starts_with('#') || address.starts_with("data:"))
        return false;
    // Of the parts of a package, and of macros, which never run.
    if (address.starts_with("vnd.sun.star.Package:") || address.starts_with("vnd.sun.star.script:"))
        return false;
    if (depth < 0 || address.starts_with('/') || address.find_first_of(":\\") != std::string::npos)
        return true;
    for (std::size_t start = 0; start <= address.size();) {
        std::size_t const end = std::min(address.find('/', start), address.size());
        std::string_view const step = std::string_view(address).substr(start, end - start);
        if (step == "..")
            --depth;
        else if (step != "." && !step.empty())
            ++depth;
        if (depth < 0)
            return true;
        start = end + 1;
    }
    return false;
}

} // namespace hearthcell::archive
