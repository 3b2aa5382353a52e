#pragma once
// An XML parser that reads piece by piece: the base of all readers of XML here.

#include "extension/archive/files/room.hpp"

#include <exception>
#include <memory>
#include <string>
#include <string_view>

struct XML_ParserStruct;

namespace hearthcell::archive {

/// The attributes of an element as the parser has them. Names are "namespace local", see Xml.
class Attributes {
public:
    explicit Attributes(char const** pairs) : pairs_(pairs) {}

    /// The value of the attribute whose name ends with this; empty when it is not there.
    [[nodiscard]] std::string_view ending(std::string_view name) const;
    [[nodiscard]] bool has_ending(std::string_view name) const;

    /// Names and values in turn; a null pointer ends them.
    [[nodiscard]] char const* const* pairs() const { return pairs_; }

private:
    char const** pairs_;
};

/// How the names of elements and attributes are given: "namespace local", or only "local" where there is no namespace;
/// or "prefix:local".
enum class Names { with_namespace, as_written };

/// Reads XML as it comes, so that memory does not grow with the file; what the parser holds (open elements, names,
/// attributes) is taken from a room.
class Xml {
public:
    Xml(); // with a small room of its own
    explicit Xml(Room& room, Names names = Names::with_namespace);
    virtual ~Xml();
    Xml(Xml const&) = delete;
    Xml& operator=(Xml const&) = delete;

    void feed(std::string_view piece); // throws Trouble(corrupt) where the text is not well-formed
    void finish();

protected:
    virtual void opened(std::string_view name, Attributes const& attributes) = 0;
    virtual void closed(std::string_view name) = 0;
    virtual void text(std::string_view) {}
    virtual void outside_entity(std::string_view) {} // address of a file that an entity stands for; it is not read

    void stop(); // no more is wanted: what comes is ignored

private:
    struct Free {
        void operator()(XML_ParserStruct* parser) const;
    };
    struct Calls;
    explicit Xml(std::unique_ptr<Room> own);
    void parse(std::string_view piece, bool last);
    template <class Work> void guarded(Work work);

    std::unique_ptr<Room> own_room_;
    Room& room_;
    std::unique_ptr<XML_ParserStruct, Free> parser_;
    std::exception_ptr thrown_; // must not fly through the parser, which is C
    bool stopped_ = false;
};

/// The part of a name after the last blank.
std::string_view local(std::string_view name);

} // namespace hearthcell::archive
