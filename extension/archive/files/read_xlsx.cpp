#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/stored.hpp"
#include "extension/archive/files/xml.hpp"
#include "extension/archive/files/zip.hpp"

#include <charconv>
#include <map>
#include <vector>

namespace hearthcell::archive {
namespace {

constexpr std::uint64_t growing = 2; // a text that is added to has room to grow, and is moved when it has none

/// The parts that a part of the package refers to.
class Relations : public Xml {
public:
    explicit Relations(Room& room) : Xml(room), room_(room) {}

    struct Relation {
        std::string type, target;
    };
    std::map<std::string, Relation> by_id;

private:
    void opened(std::string_view name, Attributes const& attributes) override {
        if (local(name) != "Relationship")
            return;
        auto const id = attributes.ending("Id"), type = attributes.ending("Type"), target = attributes.ending("Target");
        room_.take(sizeof(std::pair<std::string, Relation>) + id.size() + type.size() + target.size());
        by_id[std::string(id)] = {std::string(type), std::string(target)};
    }
    void closed(std::string_view) override {}

    Room& room_;
};

/// The sheets of a workbook in their order.
class Sheets : public Xml {
public:
    explicit Sheets(Room& room) : Xml(room), room_(room) {}

    std::string root;
    std::vector<std::string> ids;

private:
    void opened(std::string_view name, Attributes const& attributes) override {
        if (root.empty())
            root = local(name);
        if (local(name) != "sheet")
            return;
        auto const id = attributes.ending("id");
        room_.take(2 * sizeof(std::string) + id.size());
        ids.emplace_back(id);
    }
    void closed(std::string_view) override {}

    Room& room_;
};

/// Takes "BC12" apart; false when it is no cell.
bool read_cell(std::string_view text, int& row, int& column) {
    int letters = 0;
    std::size_t at = 0;
    for (; at < text.size() && text[at] >= 'A' && text[at] <= 'Z' && at < 3; ++at)
        letters = letters * 26 + (text[at] - 'A' + 1);
    int number = 0;
    auto const [end, problem] = std::from_chars(text.data() + at, text.data() + text.size(), number);
    if (letters == 0 || problem != std::errc() || number < 1)
        return false;
    row = number - 1;
    column = letters - 1;
    return true;
}

class SheetResults : public Xml {
public:
    SheetResults(int sheet, StoredResults& results, Room& room)
        : Xml(room), sheet_(sheet), results_(results), room_(room) {}

private:
    struct Area { // of an array formula, which only its first cell holds
        int top, left, bottom, right;
    };

    void opened(std::string_view full_name, Attributes const& attributes) override {
        std::string_view const name = local(full_name);
        if (name == "row") {
            int number = 0;
            auto const text = attributes.ending("r");
            std::from_chars(text.data(), text.data() + text.size(), number);
            row_ = number > 0 ? number - 1 : row_ + 1;
            column_ = -1;
            std::erase_if(arrays_, [&](Area const& area) { return area.bottom < row_; });
        } else if (name == "c") {
            if (!read_cell(attributes.ending("r"), row_, column_))
                ++column_;
            type_ = attributes.ending("t");
            wanted_ = in_array();
            room_.give_back(growing * value_.size());
            value_.clear();
            has_value_ = false;
        } else if (name == "f") {
            wanted_ = true;
            if (attributes.ending("t") == "array")
                add_array(attributes.ending("ref"));
        } else if (name == "v") {
            in_value_ = has_value_ = true;
        }
    }

    void closed(std::string_view full_name) override {
        std::string_view const name = local(full_name);
        if (name == "v")
            in_value_ = false;
        else if (name == "c" && wanted_)
            results_.add({{sheet_, row_, column_}, value(), false}, room_);
    }

    void text(std::string_view letters) override {
        if (!in_value_)
            return;
        room_.take(growing * letters.size());
        value_ += letters;
    }

    void add_array(std::string_view range) {
        Area area{};
        auto const colon = range.find(':');
        if (colon != std::string_view::npos && read_cell(range.substr(0, colon), area.top, area.left) &&
            read_cell(range.substr(colon + 1), area.bottom, area.right)) {
            room_.take(2 * sizeof area);
            arrays_.push_back(area);
        }
    }

    [[nodiscard]] bool in_array() const {
        for (Area const& area : arrays_)
            if (row_ >= area.top && row_ <= area.bottom && column_ >= area.left && column_ <= area.right)
                return true;
        return false;
    }

    [[nodiscard]] Value value() const {
        if (type_ == "str")
            return value_;
        if (!has_value_ || type_ == "s") // a formula's text is never in the table of shared texts
            return {};
        if (type_ == "e")
            return Fault{error_code(value_), value_};
        double number = 0;
        auto const [end, problem] = std::from_chars(value_.data(), value_.data() + value_.size(), number);
        return problem == std::errc() ? Value(number) : Value();
    }

    int sheet_;
    StoredResults& results_;
    Room& room_;
    int row_ = -1, column_ = -1;
    bool wanted_ = false, in_value_ = false, has_value_ = false;
    std::string type_, value_;
    std::vector<Area> arrays_;
};

template <class Reader> void read_part(Zip const& package, std::string const& part, Reader& reader) {
    package.read(part, [&](std::string_view piece) { reader.feed(piece); });
    reader.finish();
}

/// The name in the package of what a part in a folder calls `target`.
std::string part_name(std::string const& folder, std::string const& target) {
    std::filesystem::path const path =
        target.starts_with('/') ? std::filesystem::path(target.substr(1)) : std::filesystem::path(folder) / target;
    return path.lexically_normal().string();
}

std::string workbook_part(Zip const& package, Room& room) {
    Relations all(room);
    if (package.has("_rels/.rels"))
        read_part(package, "_rels/.rels", all);
    for (auto const& [id, relation] : all.by_id)
        if (relation.type.ends_with("/officeDocument"))
            return part_name("", relation.target);
    throw Trouble(Reason::unsupported, "a zip, but no workbook in it");
}

} // namespace

StoredResults stored_in_xlsx(std::filesystem::path const& file, Room& room) {
    Zip const package(file);
    std::filesystem::path const workbook = workbook_part(package, room);
    std::string const folder = workbook.parent_path().string();
    if (workbook.extension() != ".xml")
        throw Trouble(Reason::unsupported, "a binary workbook, " + workbook.string());
    Sheets sheets(room);
    read_part(package, workbook.string(), sheets);
    if (sheets.root != "workbook")
        throw Trouble(Reason::unsupported, "no workbook, but a " + sheets.root);
    Relations relations(room);
    read_part(package, (workbook.parent_path() / "_rels" / workbook.filename()).string() + ".rels", relations);
    StoredResults results;
    for (std::size_t sheet = 0; sheet < sheets.ids.size(); ++sheet) {
        auto const found = relations.by_id.find(sheets.ids[sheet]);
        if (found == relations.by_id.end() || !found->second.type.ends_with("/worksheet"))
            continue; // a sheet that is only a chart
        SheetResults reader(static_cast<int>(sheet), results, room);
        read_part(package, part_name(folder, found->second.target), reader);
    }
    results.sort();
    return results;
}

} // namespace hearthcell::archive
