#include "extension/archive/files/xlsx_package.hpp"

#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/xlsx_formula.hpp"

#include <charconv>

namespace hearthcell::archive {

Relations::Relation const* Relations::of_type(std::string_view type) const {
    for (auto const& [id, relation] : by_id)
        if (relation.type.ends_with(type))
            return &relation;
    return nullptr;
}

void Relations::opened(std::string_view name, Attributes const& attributes) {
    if (local(name) != "Relationship")
        return;
    auto const id = attributes.ending("Id"), type = attributes.ending("Type"), target = attributes.ending("Target");
    room_.take(sizeof(std::pair<std::string, Relation>) + id.size() + type.size() + target.size());
    by_id[std::string(id)] = {std::string(type), std::string(target)};
}

void WorkbookPart::opened(std::string_view full_name, Attributes const& attributes) {
    std::string_view const name = local(full_name);
    if (root.empty())
        root = name;
    if (name == "sheet") {
        auto const id = attributes.ending("id"), shown = attributes.ending("name");
        room_.take(2 * sizeof(Sheet) + id.size() + shown.size());
        sheets.push_back({std::string(id), std::string(shown)});
    } else if (name == "definedName") {
        in_name_ = true;
        auto const defined = attributes.ending("name"), sheet = attributes.ending("localSheetId");
        room_.take(2 * sizeof(formulas::Definition) + defined.size());
        std::size_t number = 0;
        bool const is_local =
            !sheet.empty() && std::from_chars(sheet.data(), sheet.data() + sheet.size(), number).ec == std::errc();
        names.push_back(
            {std::string(defined), is_local && number < sheets.size() ? sheets[number].name : std::string(), {}, {}});
    }
}

void WorkbookPart::text(std::string_view letters) {
    if (!in_name_)
        return;
    room_.take(growing * letters.size());
    names.back().content += letters;
}

void WorkbookPart::closed(std::string_view) {
    if (in_name_)
        names.back().content = in_the_way_of_calc(names.back().content);
    in_name_ = false;
}

void SharedTexts::opened(std::string_view full_name, Attributes const&) {
    std::string_view const name = local(full_name);
    if (name == "si") {
        room_.take(2 * sizeof(std::string));
        texts.emplace_back();
    }
    is_spoken_ = is_spoken_ || name == "rPh";
    in_text_ = name == "t" && !is_spoken_ && !texts.empty();
}

void SharedTexts::closed(std::string_view name) {
    in_text_ = false;
    is_spoken_ = is_spoken_ && local(name) != "rPh";
}

void SharedTexts::text(std::string_view letters) {
    if (!in_text_)
        return;
    room_.take(growing * letters.size());
    texts.back() += letters;
}

std::string part_name(std::string const& folder, std::string const& target) {
    std::filesystem::path const path =
        target.starts_with('/') ? std::filesystem::path(target.substr(1)) : std::filesystem::path(folder) / target;
    return path.lexically_normal().string();
}

std::string name_of_workbook_part(Zip const& package, Room& room) {
    Relations all(room);
    if (package.has("_rels/.rels"))
        read_part(package, "_rels/.rels", all);
    if (auto const* const document = all.of_type("/officeDocument"))
        return part_name("", document->target);
    throw Trouble(Reason::unsupported, "a zip, but no workbook in it");
}

} // namespace hearthcell::archive
