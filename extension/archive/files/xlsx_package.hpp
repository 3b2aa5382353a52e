#pragma once
// The parts of an .xlsx file: which there are, which sheets and names the workbook has, and the texts that cells share.

#include "extension/archive/files/cells.hpp"
#include "extension/archive/files/xml.hpp"
#include "extension/archive/files/zip.hpp"

#include <map>
#include <vector>

namespace hearthcell::archive {

inline constexpr std::uint64_t growing = 2; // a text that is added to has room to grow, and is moved when it has none

/// The parts that a part of the package refers to.
class Relations : public Xml {
public:
    explicit Relations(Room& room) : Xml(room), room_(room) {}

    struct Relation {
        std::string type, target;
    };
    std::map<std::string, Relation> by_id;

    /// The first of a type, "/officeDocument"; null: there is none.
    [[nodiscard]] Relation const* of_type(std::string_view type) const;

private:
    void opened(std::string_view name, Attributes const& attributes) override;
    void closed(std::string_view) override {}

    Room& room_;
};

/// The sheets of a workbook in their order, and the names that it defines.
class WorkbookPart : public Xml {
public:
    explicit WorkbookPart(Room& room) : Xml(room), room_(room) {}

    struct Sheet {
        std::string id, name;
    };
    std::string root;
    std::vector<Sheet> sheets;
    std::vector<formulas::Definition> names;

private:
    void opened(std::string_view name, Attributes const& attributes) override;
    void closed(std::string_view name) override;
    void text(std::string_view letters) override;

    Room& room_;
    bool in_name_ = false;
};

/// The texts that cells share.
class SharedTexts : public Xml {
public:
    explicit SharedTexts(Room& room) : Xml(room), room_(room) {}

    std::vector<std::string> texts;

private:
    void opened(std::string_view name, Attributes const& attributes) override;
    void closed(std::string_view name) override;
    void text(std::string_view letters) override;

    Room& room_;
    bool in_text_ = false, is_spoken_ = false; // how it is read aloud is no part of it
};

template <class Reader> void read_part(Zip const& package, std::string const& part, Reader& reader) {
    package.read(part, [&](std::string_view piece) { reader.feed(piece); });
    reader.finish();
}

/// The name in the package of what a part in a folder calls `target`.
std::string part_name(std::string const& folder, std::string const& target);

std::string name_of_workbook_part(Zip const& package, Room& room); // throws Trouble

} // namespace hearthcell::archive
