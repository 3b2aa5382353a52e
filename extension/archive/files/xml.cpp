#include "extension/archive/files/xml.hpp"

#include "extension/archive/files/problem.hpp"

#include <expat.h>

#include <algorithm>
#include <new>

namespace hearthcell::archive {
namespace {

constexpr std::size_t largest_piece = 1 << 20;

bool ends_as(std::string_view name, std::string_view wanted) {
    // "office:1.0 value" must not take "calcext:1.0 old-value": before it stands a separator or nothing.
    return name.ends_with(wanted) && (name.size() == wanted.size() || name[name.size() - wanted.size() - 1] == ':' ||
                                      name[name.size() - wanted.size() - 1] == ' ');
}

} // namespace

std::string_view Attributes::ending(std::string_view name) const {
    for (char const** pair = pairs_; *pair != nullptr; pair += 2)
        if (ends_as(pair[0], name))
            return pair[1];
    return {};
}

bool Attributes::has_ending(std::string_view name) const {
    for (char const** pair = pairs_; *pair != nullptr; pair += 2)
        if (ends_as(pair[0], name))
            return true;
    return false;
}

void Xml::Free::operator()(XML_ParserStruct* parser) const {
    XML_ParserFree(parser);
}

template <class Work> void Xml::guarded(Work work) {
    if (stopped_ || thrown_)
        return;
    try {
        work();
    } catch (...) {
        thrown_ = std::current_exception();
        XML_StopParser(parser_.get(), XML_FALSE);
    }
}

struct Xml::Calls {
    static void opened(void* self, char const* name, char const** attributes) {
        auto* const reader = static_cast<Xml*>(self);
        reader->guarded([&] { reader->opened(name, Attributes(attributes)); });
    }
    static void closed(void* self, char const* name) {
        auto* const reader = static_cast<Xml*>(self);
        reader->guarded([&] { reader->closed(name); });
    }
    static void text(void* self, char const* letters, int count) {
        auto* const reader = static_cast<Xml*>(self);
        reader->guarded([&] { reader->text({letters, static_cast<std::size_t>(count)}); });
    }
};

Xml::Xml() : parser_(XML_ParserCreateNS(nullptr, ' ')) {
    if (!parser_)
        throw std::bad_alloc();
    XML_SetUserData(parser_.get(), this);
    XML_SetElementHandler(parser_.get(), Calls::opened, Calls::closed);
    XML_SetCharacterDataHandler(parser_.get(), Calls::text);
}

Xml::~Xml() = default;

void Xml::stop() {
    stopped_ = true;
}

void Xml::feed(std::string_view piece) {
    for (; !piece.empty(); piece.remove_prefix(std::min(piece.size(), largest_piece)))
        parse(piece.substr(0, largest_piece), false);
}

void Xml::finish() {
    parse({}, true);
}

void Xml::parse(std::string_view piece, bool last) {
    if (stopped_)
        return;
    XML_Status const status = XML_Parse(parser_.get(), piece.data(), static_cast<int>(piece.size()), last ? 1 : 0);
    if (thrown_)
        std::rethrow_exception(thrown_);
    if (status != XML_STATUS_OK && !stopped_)
        throw Trouble(Reason::corrupt, "not well-formed XML in line " +
                                           std::to_string(XML_GetCurrentLineNumber(parser_.get())) + ": " +
                                           XML_ErrorString(XML_GetErrorCode(parser_.get())));
}

std::string_view local(std::string_view name) {
    return name.substr(name.rfind(' ') + 1);
}

} // namespace hearthcell::archive
