#include "extension/archive/files/xml.hpp"

#include "extension/archive/files/problem.hpp"

#include <expat.h>

#include <algorithm>
#include <cstddef>
#include <cstdlib>
#include <cstring>
#include <new>
#include <utility>

namespace hearthcell::archive {
namespace {

constexpr std::size_t largest_piece = 1 << 20;

constexpr std::uint64_t small_room = std::uint64_t{64} << 20;

/// The memory of the parser, which is C: each piece knows its size and the room that it was taken from.
struct alignas(std::max_align_t) Head {
    std::size_t size;
    Room* room;
};

thread_local Room* paying = nullptr;    // the room of the parser that is at work
thread_local bool machine_full = false; // it was not the room that was too small

class Paying {
public:
    explicit Paying(Room& room) : before_(std::exchange(paying, &room)) {}
    ~Paying() { paying = before_; }
    Paying(Paying const&) = delete;
    Paying& operator=(Paying const&) = delete;

private:
    Room* before_;
};

void* take(std::size_t size) {
    Room* const room = paying;
    if (size > SIZE_MAX - sizeof(Head) || !room->try_take(size + sizeof(Head)))
        return nullptr;
    void* const memory = std::malloc(size + sizeof(Head));
    if (memory == nullptr) {
        machine_full = true;
        room->give_back(size + sizeof(Head));
        return nullptr;
    }
    return new (memory) Head{size, room} + 1;
}

void give_back(void* piece) {
    if (piece == nullptr)
        return;
    Head* const head = static_cast<Head*>(piece) - 1;
    head->room->give_back(head->size + sizeof(Head));
    std::free(head);
}

void* take_more(void* piece, std::size_t size) {
    void* const larger = take(size);
    if (larger != nullptr && piece != nullptr) {
        std::memcpy(larger, piece, std::min(size, (static_cast<Head*>(piece) - 1)->size));
        give_back(piece);
    }
    return larger;
}

XML_Memory_Handling_Suite const memory{take, take_more, give_back};

[[noreturn]] void refuse(XML_Parser parser) {
    XML_Error const error = XML_GetErrorCode(parser);
    if (error == XML_ERROR_NO_MEMORY && std::exchange(machine_full, false))
        throw std::bad_alloc();
    if (error == XML_ERROR_NO_MEMORY || error == XML_ERROR_AMPLIFICATION_LIMIT_BREACH)
        throw Trouble(Reason::too_large, "its XML needs more memory than --size-limit allows");
    throw Trouble(Reason::corrupt, "not well-formed XML in line " + std::to_string(XML_GetCurrentLineNumber(parser)) +
                                       ": " + XML_ErrorString(error));
}

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
    static void entity(void* self, char const*, int, char const*, int, char const*, char const* address, char const*,
                       char const*) {
        auto* const reader = static_cast<Xml*>(self);
        if (address != nullptr)
            reader->guarded([&] { reader->outside_entity(address); });
    }
};

Xml::Xml() : Xml(std::make_unique<Room>(small_room)) {}

Xml::Xml(std::unique_ptr<Room> own) : Xml(*own) {
    own_room_ = std::move(own);
}

Xml::Xml(Room& room, Names names) : room_(room) {
    Paying const pays(room_);
    parser_.reset(XML_ParserCreate_MM(nullptr, &memory, names == Names::as_written ? nullptr : " "));
    if (!parser_)
        throw std::bad_alloc();
    XML_SetUserData(parser_.get(), this);
    XML_SetElementHandler(parser_.get(), Calls::opened, Calls::closed);
    XML_SetCharacterDataHandler(parser_.get(), Calls::text);
    XML_SetEntityDeclHandler(parser_.get(), Calls::entity);
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
    Paying const pays(room_);
    XML_Status const status = XML_Parse(parser_.get(), piece.data(), static_cast<int>(piece.size()), last ? 1 : 0);
    if (thrown_)
        std::rethrow_exception(thrown_);
    if (status != XML_STATUS_OK && !stopped_)
        refuse(parser_.get());
}

std::string_view local(std::string_view name) {
    return name.substr(name.rfind(' ') + 1);
}

} // namespace hearthcell::archive
