#pragma once
// XML that is read and written again with some attributes changed or elements left out.

#include "extension/archive/files/xml.hpp"

#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace hearthcell::archive {

/// An element as it is written, prefixes and all.
struct Tag {
    std::string name;
    std::vector<std::pair<std::string, std::string>> attributes;

    [[nodiscard]] std::string_view local() const; // without its prefix
    [[nodiscard]] std::string_view attribute(std::string_view local_name) const;
};

std::string_view without_prefix(std::string_view name);

/// What is to be changed.
class Changes {
public:
    virtual ~Changes() = default;

    /// Changes attributes. Gives whether it did.
    virtual bool change(Tag& tag) = 0;
    /// Whether the element is left out, with all in it.
    virtual bool leave_out(Tag const&) { return false; }
    virtual void closed(std::string_view) {}
    virtual bool change_text(std::string&) { return false; }
    /// An entity of the text that stands for a file.
    virtual void outside_entity(std::string_view) {}
};

/// The XML comes out in UTF-8, without a document type, comments and processing instructions.
class RewrittenXml : private Xml {
public:
    /// take: gets the XML piece by piece. room: for what the parser holds
    RewrittenXml(Changes& changes, std::function<void(std::string_view)> take, Room& room);

    using Xml::feed;
    void finish();

    [[nodiscard]] bool changed() const { return changed_; }

private:
    void opened(std::string_view name, Attributes const& attributes) override;
    void closed(std::string_view name) override;
    void text(std::string_view letters) override;
    void outside_entity(std::string_view address) override;
    void end_tag();
    void end_text();
    bool change_letters(Tag& tag);
    void put(std::string_view piece);
    void hand_over();

    Changes& changes_;
    Room& room_;
    std::function<void(std::string_view)> take_;
    std::string out_, text_;
    bool changed_ = false, tag_is_open_ = false;
    bool in_letters_ = false; // of a picture, whose letters tell nothing before they are all there
    int left_out_ = 0;        // depth inside of what is left out
};

} // namespace hearthcell::archive
