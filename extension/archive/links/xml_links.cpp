#include "extension/archive/links/xml_links.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <optional>

namespace hearthcell::archive {
namespace {

/// What a problem's words call what links. Others by the name of their element.
constexpr std::array<std::pair<std::string_view, std::string_view>, 20> words{{
    {"image", "picture"},
    {"background-image", "picture"},
    {"fill-image", "fill picture"},
    {"list-level-style-image", "picture"},
    {"symbol-image", "picture"},
    {"imagedata", "picture"},
    {"fill", "fill picture"},
    {"object-ole", "object"},
    {"oleObject", "object"},
    {"floating-frame", "frame"},
    {"table-source", "linked sheet"},
    {"cell-range-source", "linked range"},
    {"font-face-uri", "font"},
    {"auto-reload", "reload"},
    {"data-mapping", "data mapping"},
    {"externalLinkPath", "workbook"},
    {"xlPathMissing", "workbook"},
    {"webPr", "page"},
    {"textPr", "text file"},
    {"dbPr", "database"},
}};

std::string in_words(std::string_view element) {
    for (auto const& [known, its_words] : words)
        if (known == element)
            return std::string(its_words);
    return std::string(element);
}

/// Followed only when somebody clicks.
bool waits_for_a_click(Tag const& tag) {
    std::string_view const name = tag.local();
    return tag.name == "text:a" || tag.name == "draw:a" || name == "area-rectangle" || name == "area-circle" ||
           name == "area-polygon" || name == "hyperlink" || name == "hlinkClick" || name == "a";
}

bool is_one_of(std::string_view name, std::initializer_list<std::string_view> names) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

/// A file as formulas name it: 'file:///site.ods'#$Data.A1.
struct NamedFile {
    std::size_t start, size; // of what stands between the quotes
};

std::optional<NamedFile> named_file(std::string_view formula, std::size_t from) {
    constexpr std::size_t longest = 8192; // of an address; so that looking back for its start takes no time
    for (;;) {
        std::size_t const end = formula.find("'#", from);
        if (end == std::string_view::npos)
            return std::nullopt;
        // Back to where the quotes open; one inside is written twice.
        std::size_t start = end;
        std::size_t const first = std::max(from, end - std::min(end, longest));
        while (start > first) {
            --start;
            if (formula[start] == '\'' && (start == first || formula[start - 1] != '\''))
                break;
            if (formula[start] == '\'')
                --start;
        }
        if (start < end && formula[start] == '\'' && start + 1 < end)
            return NamedFile{start + 1, end - start - 1};
        from = end + 2;
    }
}

/// An attribute that is an address wherever it stands; or only in this element.
bool holds_address(Tag const& tag, std::string_view attribute, std::string_view value) {
    std::string_view const element = tag.local();
    if (attribute == "href" || attribute == "src")
        return true;
    if (attribute == "schema")
        return element == "model";
    if (is_one_of(attribute, {"datasource", "database-name", "image-data"})) // or a registered name
        return value.find_first_of(":/\\") != std::string_view::npos;
    if (is_one_of(attribute, {"url", "editPage"}))
        return element == "webPr";
    if (is_one_of(attribute, {"sourceFile", "odcFile"}))
        return is_one_of(element, {"connection", "textPr"});
    return (attribute == "connection" && element == "dbPr") || (attribute == "localConnection" && element == "olapPr");
}

bool is_external(Tag const& relation) {
    constexpr std::string_view external = "external"; // in any letter case
    return std::ranges::equal(relation.attribute("TargetMode"), external, {},
                              [](char letter) { return std::tolower(static_cast<unsigned char>(letter)); });
}

/// Of a database, which is more than an address.
bool is_always_outside(std::string_view attribute) {
    return is_one_of(attribute, {"url", "editPage", "sourceFile", "odcFile", "connection", "localConnection"});
}

} // namespace

HideLinks::HideLinks(Outside& outside, std::string part, int depth)
    : outside_(outside), part_(std::move(part)), depth_(depth) {}

bool HideLinks::change(Tag& tag) {
    std::string_view const element = tag.local();
    if (element == "Relationship")
        return change_relation(tag);
    bool changed = false;
    for (auto& [name, value] : tag.attributes)
        changed = hide_in_formula(value) || changed;
    if (element == "table" && tables_++ == 0) {
        sheet_ = tag.attribute("name");
        auto const file = named_file(sheet_, 0);
        kept_ = file ? sheet_.substr(file->start, file->size) : std::string();
    }
    if (element == "table-source" && !kept_.empty())
        return change_kept_table(tag);
    if (waits_for_a_click(tag))
        return changed;
    for (auto& [name, value] : tag.attributes) {
        std::string_view const attribute = without_prefix(name);
        if (!holds_address(tag, attribute, value) || value.empty())
            continue;
        if (!is_always_outside(attribute) && !leads_outside(value, depth_))
            continue;
        if (element == "chart" && value == "..") // the document around it, also in a flat file
            continue;
        value = outside_.hide({in_words(element), where(), value});
        changed = true;
    }
    return changed;
}

/// The results of another workbook that are kept for formulas: in the name of the table is what formulas call it, and
/// beside it once more its address.
bool HideLinks::change_kept_table(Tag& tag) {
    for (auto& [name, value] : tag.attributes)
        if (without_prefix(name) == "href") {
            outside_.hide_twin(kept_, value);
            value = kept_;
        }
    return true;
}

bool HideLinks::hide_in_formula(std::string& formula) {
    std::string hidden;
    std::size_t from = 0;
    while (auto const file = named_file(formula, from)) {
        std::string address = formula.substr(file->start, file->size);
        hidden.append(formula, from, file->start - from);
        hidden += outside_.hide({"workbook", where(), std::move(address)});
        from = file->start + file->size;
        hidden.append(formula, from, 2);
        from += 2;
    }
    if (from == 0)
        return false;
    formula = hidden.append(formula, from);
    return true;
}

bool HideLinks::change_relation(Tag& tag) {
    std::string_view const type = tag.attribute("Type");
    std::string_view const kind = type.substr(type.rfind('/') + 1);
    if (kind == "hyperlink")
        return false;
    for (auto& [name, value] : tag.attributes) {
        if (without_prefix(name) != "Target")
            continue;
        // One that says that it is inside may begin with a slash, and means the root of the package.
        std::string_view const inside = std::string_view(value).substr(value.starts_with('/') ? 1 : 0);
        if (!is_external(tag) && !inside.starts_with('/') && inside.find_first_of(":\\") == std::string_view::npos)
            return false;
        value = outside_.hide({in_words(kind), part_, value});
        return true;
    }
    return false;
}

bool HideLinks::leave_out(Tag const& tag) {
    // LibreOffice 7.4 crashes when the file is not there.
    if (tag.local() != "data-mapping" || tag.attribute("href").empty())
        return false;
    outside_.take_out({in_words(tag.local()), where(), std::string(tag.attribute("href"))});
    return true;
}

void HideLinks::closed(std::string_view name) {
    if (without_prefix(name) != "table" || --tables_ > 0)
        return;
    sheet_.clear();
    kept_.clear();
}

void HideLinks::outside_entity(std::string_view address) {
    outside_.take_out({"text", part_, std::string(address)});
}

} // namespace hearthcell::archive
