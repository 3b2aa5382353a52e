#include "extension/archive/links/rewritten_xml.hpp"

#include "extension/archive/files/problem.hpp"

#include <expat.h>

#include <algorithm>
#include <new>

namespace hearthcell::archive {
namespace {

constexpr std::size_t largest_piece = 1 << 20, much = 1 << 16;

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

void RewrittenXml::Free::operator()(XML_ParserStruct* parser) const {
    XML_ParserFree(parser);
}

template <class Work> void RewrittenXml::guarded(Work work) {
    if (thrown_)
        return;
    try {
        work();
    } catch (...) {
        thrown_ = std::current_exception();
        XML_StopParser(parser_.get(), XML_FALSE);
    }
}

struct RewrittenXml::Calls {
    static RewrittenXml* of(void* self) { return static_cast<RewrittenXml*>(self); }
    static void opened(void* self, char const* name, char const** attributes) {
        of(self)->guarded([&] { of(self)->open(name, attributes); });
    }
    static void closed(void* self, char const* name) {
        of(self)->guarded([&] { of(self)->close(name); });
    }
    static void text(void* self, char const* letters, int count) {
        of(self)->guarded([&] { of(self)->text({letters, static_cast<std::size_t>(count)}); });
    }
    static void entity(void* self, char const*, int, char const*, int, char const*, char const* address, char const*,
                       char const*) {
        if (address != nullptr)
            of(self)->guarded([&] {
                of(self)->changed_ = true;
                of(self)->changes_.outside_entity(address);
            });
    }
};

RewrittenXml::RewrittenXml(Changes& changes, std::function<void(std::string_view)> take)
    : changes_(changes), take_(std::move(take)), parser_(XML_ParserCreate(nullptr)) {
    if (!parser_)
        throw std::bad_alloc();
    XML_SetUserData(parser_.get(), this);
    XML_SetElementHandler(parser_.get(), Calls::opened, Calls::closed);
    XML_SetCharacterDataHandler(parser_.get(), Calls::text);
    XML_SetEntityDeclHandler(parser_.get(), Calls::entity);
    put("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
}

RewrittenXml::~RewrittenXml() = default;

void RewrittenXml::feed(std::string_view piece) {
    for (; !piece.empty(); piece.remove_prefix(std::min(piece.size(), largest_piece)))
        parse(piece.substr(0, largest_piece), false);
}

void RewrittenXml::finish() {
    parse({}, true);
    hand_over();
}

void RewrittenXml::parse(std::string_view piece, bool last) {
    XML_Status const status = XML_Parse(parser_.get(), piece.data(), static_cast<int>(piece.size()), last ? 1 : 0);
    if (thrown_)
        std::rethrow_exception(thrown_);
    if (status != XML_STATUS_OK)
        throw Trouble(Reason::corrupt, "not well-formed XML in line " +
                                           std::to_string(XML_GetCurrentLineNumber(parser_.get())) + ": " +
                                           XML_ErrorString(XML_GetErrorCode(parser_.get())));
}

void RewrittenXml::open(char const* name, char const** attributes) {
    end_text();
    if (left_out_ > 0) {
        ++left_out_;
        return;
    }
    Tag tag{name, {}};
    for (; *attributes != nullptr; attributes += 2)
        tag.attributes.emplace_back(attributes[0], attributes[1]);
    if (changes_.leave_out(tag)) {
        changed_ = true;
        left_out_ = 1;
        return;
    }
    changed_ = changes_.change(tag) || changed_;
    end_tag();
    put("<" + tag.name);
    for (auto const& [its_name, value] : tag.attributes)
        put(" " + its_name + "=\"" + escaped(value, true) + "\"");
    tag_is_open_ = true;
}

void RewrittenXml::close(char const* name) {
    end_text();
    if (left_out_ > 0) {
        --left_out_;
        return;
    }
    changes_.closed(name);
    if (tag_is_open_)
        put("/>");
    else
        put("</" + std::string(name) + ">");
    tag_is_open_ = false;
}

void RewrittenXml::text(std::string_view letters) {
    if (left_out_ > 0)
        return;
    text_ += letters;
    if (text_.size() > largest_piece) // of a picture, say
        end_text();
}

void RewrittenXml::end_text() {
    if (text_.empty())
        return;
    changed_ = changes_.change_text(text_) || changed_;
    end_tag();
    put(escaped(text_, false));
    text_.clear();
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
