#include "manifest/workbook/package.hpp"

#include "manifest/pack/zip_file.hpp"
#include "manifest/workbook/thumbnail.hpp"
#include "manifest/workbook/trouble.hpp"

#include <array>
#include <sstream>
#include <string>
#include <vector>

namespace hearthcell::workbook {
namespace {

struct Part {
    std::string path, type, content;
};

struct Stream {
    char const *file, *root;
    std::array<char const*, 6> children;
};
// What of a flat document goes where. Automatic styles serve the pages (in styles.xml) as well as the cells.
constexpr std::array<Stream, 4> streams{{
    {"content.xml",
     "office:document-content",
     {"office:scripts", "office:font-face-decls", "office:automatic-styles", "office:body"}},
    {"styles.xml",
     "office:document-styles",
     {"office:font-face-decls", "office:styles", "office:automatic-styles", "office:master-styles"}},
    {"meta.xml", "office:document-meta", {"office:meta"}},
    {"settings.xml", "office:document-settings", {"office:settings"}},
}};

std::string text_of(pugi::xml_document const& document) {
    std::ostringstream text;
    document.save(text, "", pugi::format_raw, pugi::encoding_utf8);
    return text.str();
}

std::string type_of(pugi::xml_node document) {
    return document.attribute("office:mimetype").value();
}

/// Namespaces of the whole document are declared at the root; an embedded one leans on them.
void add_streams(pugi::xml_node document, pugi::xml_node outermost, std::string const& folder,
                 std::vector<Part>& entries) {
    for (Stream const& stream : streams) {
        pugi::xml_document part;
        pugi::xml_node root = part.append_child(stream.root);
        for (pugi::xml_node const& from : {outermost, document})
            for (pugi::xml_attribute const& attribute : from.attributes())
                if (std::string_view(attribute.name()) != "office:mimetype" && !root.attribute(attribute.name()))
                    root.append_copy(attribute);
        for (char const* const name : stream.children)
            if (name != nullptr)
                for (pugi::xml_node const& child : document.children(name))
                    root.append_copy(child);
        if (!root.attribute("xmlns:xlink")) // which embedded charts are linked by
            root.append_attribute("xmlns:xlink") = "http://www.w3.org/1999/xlink";
        if (root.first_child())
            entries.push_back({folder + stream.file, "text/xml", text_of(part)});
    }
}

/// Takes embedded documents out of their frames and leaves links to them.
void take_out_objects(pugi::xml_node document, std::vector<Part>& entries) {
    int count = 0;
    for (pugi::xpath_node const& found : document.select_nodes(".//draw:object[office:document]")) {
        pugi::xml_node frame = found.node();
        pugi::xml_node const object = frame.child("office:document");
        std::string const folder = "Object " + std::to_string(++count);
        entries.push_back({folder + "/", type_of(object), ""});
        add_streams(object, document, folder + "/", entries);
        frame.remove_child(object);
        frame.append_attribute("xlink:href") = ("./" + folder).c_str();
        frame.append_attribute("xlink:type") = "simple";
        frame.append_attribute("xlink:show") = "embed";
        frame.append_attribute("xlink:actuate") = "onLoad";
    }
}

Part manifest(std::string const& type, std::vector<Part> const& entries) {
    constexpr char space[] = "urn:oasis:names:tc:opendocument:xmlns:manifest:1.0";
    pugi::xml_document document;
    pugi::xml_node root = document.append_child("manifest:manifest");
    root.append_attribute("xmlns:manifest") = space;
    root.append_attribute("manifest:version") = "1.3";
    auto const list = [&](std::string const& path, std::string const& what) {
        pugi::xml_node entry = root.append_child("manifest:file-entry");
        entry.append_attribute("manifest:full-path") = path.c_str();
        entry.append_attribute("manifest:media-type") = what.c_str();
    };
    list("/", type);
    for (Part const& entry : entries)
        list(entry.path, entry.type);
    return {"META-INF/manifest.xml", "text/xml", text_of(document)};
}

/// All but the folders, which stand in the manifest only.
void write(std::vector<Part> const& parts, std::filesystem::path const& file) {
    std::vector<pack::Entry> entries;
    for (Part const& part : parts)
        if (!part.path.ends_with('/'))
            entries.push_back({part.path, part.content});
    pack::write_zip(entries, file);
}

} // namespace

void write_package(pugi::xml_document const& flat, std::filesystem::path const& file) {
    pugi::xml_document document;
    document.reset(flat);
    pugi::xml_node const root = document.document_element();
    if (!root.select_nodes(".//office:binary-data").empty())
        throw Trouble("pictures within the document are not provided for: leave them out");

    bool const is_template = file.extension() == ".ots";
    std::string const type = type_of(root) + (is_template ? "-template" : "");
    std::vector<Part> parts;
    take_out_objects(root, parts);
    add_streams(root, root, "", parts);
    if (is_template)
        parts.push_back({"Thumbnails/thumbnail.png", "image/png", thumbnail(root)});

    std::vector<Part> entries{{"mimetype", "", type}};
    entries.insert(entries.end(), parts.begin(), parts.end());
    entries.push_back(manifest(type, parts));
    write(entries, file);
}

} // namespace hearthcell::workbook
