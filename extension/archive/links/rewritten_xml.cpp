#include "extension/archive/links/rewritten_xml.hpp"

#include "extension/archive/files/problem.hpp"
#include "extension/archive/links/letters.hpp"

#include <optional>

namespace hearthcell::archive {
namespace {

constexpr std::size_t longest_text = 1 << 20, much = 1 << 16;

std::string escaped(std::string_view text, bool in_attribute) {
    std::string safe;
    safe.reserve(text.size());
    for (char const letter : text)
        if (letter == '&')
            safe += "&amp;";
        else if (letter == '<')
            safe += "&lt;";
        else if (letter == '>')
            safe += "&gt;";
        else if (letter == '\r')
            safe += "&#13;";
        else if (in_attribute && letter == '"')
            safe += "&quot;";
        else if (in_attribute && letter == '\n')
            safe += "&#10;";
        else if (in_attribute && letter == '\t')
            safe += "&#9;";
        else
            safe += letter;
    return safe;
}

/// A picture in base64 with the changes made in it; nothing where there are none, as in most pictures.
std::optional<std::string> rewritten_letters(std::string const& letters, Changes& changes, Room& room) {
    room.take(letters.size());
    std::string bytes = bytes_of(letters);
    if (!may_be_drawing(bytes))
        return std::nullopt;
    std::string drawing;
    try {
        RewrittenXml xml(
            changes, [&](std::string_view piece) { drawing += piece; }, room);
        xml.feed(unpacked(std::move(bytes), room));
        xml.finish();
        if (!xml.changed())
            return std::nullopt;
    } catch (Trouble const& trouble) {
        if (trouble.reason != Reason::corrupt)
            throw;
        return std::nullopt; // a picture that is no XML shows nothing, and fetches nothing
    }
    return letters_of(drawing);
}

} // namespace

std::string_view without_prefix(std::string_view name) {
    return name.substr(name.find(':') + 1);
}

std::string_view Tag::local() const {
    return without_prefix(name);
}

std::string_view Tag::attribute(std::string_view local_name) const {
    for (auto const& [its_name, value] : attributes)
        if (without_prefix(its_name) == local_name)
            return value;
    return {};
}

RewrittenXml::RewrittenXml(Changes& changes, std::function<void(std::string_view)> take, Room& room)
    : Xml(room, Names::as_written), changes_(changes), room_(room), take_(std::move(take)) {
    put("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
}

void RewrittenXml::finish() {
    Xml::finish();
    hand_over();
}

void RewrittenXml::opened(std::string_view name, Attributes const& attributes) {
    end_text();
    if (left_out_ > 0) {
        ++left_out_;
        return;
    }
    Tag tag{std::string(name), {}};
    for (char const* const* pair = attributes.pairs(); *pair != nullptr; pair += 2)
        tag.attributes.emplace_back(pair[0], pair[1]);
    if (changes_.leave_out(tag)) {
        changed_ = true;
        left_out_ = 1;
        return;
    }
    changed_ = changes_.change(tag) || changed_;
    changed_ = change_letters(tag) || changed_;
    in_letters_ = tag.local() == "binary-data";
    end_tag();
    put("<" + tag.name);
    for (auto const& [its_name, value] : tag.attributes)
        put(" " + its_name + "=\"" + escaped(value, true) + "\"");
    tag_is_open_ = true;
}

void RewrittenXml::closed(std::string_view name) {
    end_text();
    if (left_out_ > 0) {
        --left_out_;
        return;
    }
    changes_.closed(name);
    in_letters_ = false;
    if (tag_is_open_)
        put("/>");
    else
        put("</" + std::string(name) + ">");
    tag_is_open_ = false;
}

void RewrittenXml::text(std::string_view letters) {
    if (left_out_ > 0)
        return;
    if (in_letters_)
        room_.take(letters.size());
    text_ += letters;
    if (!in_letters_ && text_.size() > longest_text)
        end_text();
}

void RewrittenXml::outside_entity(std::string_view address) {
    changed_ = true;
    changes_.outside_entity(address);
}

void RewrittenXml::end_text() {
    if (text_.empty())
        return;
    if (!in_letters_) {
        changed_ = changes_.change_text(text_) || changed_;
    } else if (auto picture = rewritten_letters(text_, changes_, room_)) {
        text_ = std::move(*picture);
        changed_ = true;
    }
    end_tag();
    put(escaped(text_, false));
    text_.clear();
}

/// In an address that holds what it leads to: data:image/svg+xml;base64,…
bool RewrittenXml::change_letters(Tag& tag) {
    constexpr std::string_view before = ";base64,";
    bool changed = false;
    for (auto& [name, value] : tag.attributes) {
        auto const at = value.starts_with("data:") ? value.find(before) : std::string::npos;
        if (at == std::string::npos)
            continue;
        std::size_t const start = at + before.size();
        if (auto const picture = rewritten_letters(value.substr(start), changes_, room_)) {
            value.replace(start, std::string::npos, *picture);
            changed = true;
        }
    }
    return changed;
}

void RewrittenXml::end_tag() {
    if (tag_is_open_)
        put(">");
    tag_is_open_ = false;
}

void RewrittenXml::put(std::string_view piece) {
    out_ += piece;
    if (out_.size() > much)
        hand_over();
}

void RewrittenXml::hand_over() {
    take_(out_);
    out_.clear();
}

} // namespace hearthcell::archive
