#include "extension/archive/files/format.hpp"

#include "extension/archive/files/compound_file.hpp"
#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/xml.hpp"
#include "extension/archive/files/zip.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <fstream>

namespace hearthcell::archive {
namespace {

constexpr std::string_view compound = "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"; // Microsoft's compound files: .xls and others
constexpr std::string_view zip_start = "PK";
constexpr std::string_view spreadsheet = "application/vnd.oasis.opendocument.spreadsheet";

constexpr std::array<std::pair<Format, std::string_view>, 4> endings{
    {{Format::ods, ".ods"}, {Format::fods, ".fods"}, {Format::xlsx, ".xlsx"}, {Format::xls, ".xls"}}};

std::string start_of(std::filesystem::path const& file) {
    std::ifstream stream(file, std::ios::binary);
    std::string start(512, '\0');
    stream.read(start.data(), static_cast<std::streamsize>(start.size()));
    start.resize(static_cast<std::size_t>(stream.gcount()));
    return start;
}

std::string what_starts_with(std::string_view start) {
    if (start.starts_with(compound))
        return "a compound file as .xls and old text documents are";
    if (start.starts_with(zip_start))
        return "a zip as .xlsx and .ods are";
    if (start.starts_with("%PDF"))
        return "a PDF";
    auto const first = start.find_first_not_of(" \t\r\n\xEF\xBB\xBF");
    if (first != std::string_view::npos && start[first] == '<')
        return "a text with tags, as HTML and XML";
    bool const text = std::none_of(start.begin(), start.end(), [](char letter) {
        return letter >= 0 && std::isprint(static_cast<unsigned char>(letter)) == 0 &&
               std::isspace(static_cast<unsigned char>(letter)) == 0;
    });
    return text ? "plain text" : "something else";
}

[[noreturn]] void not_what_it_says(Format format, std::string_view start) {
    throw Trouble(Reason::unsupported,
                  "named " + std::string(ending(format)) + ", but its content is " + what_starts_with(start));
}

void check_unpacked_size(Zip const& zip, std::uint64_t largest) {
    check_size("it unpacks to", zip.unpacked_size(), largest);
}

class Encryption : public Xml {
public:
    using Xml::Xml;
    bool found = false;

private:
    void opened(std::string_view name, Attributes const&) override {
        found = found || local(name) == "encryption-data" || local(name) == "EncryptedData";
    }
    void closed(std::string_view) override {}
};

void inspect_ods(std::filesystem::path const& file, std::uint64_t largest, Room& room, CellSink& sink) {
    Zip const zip(file);
    check_unpacked_size(zip, largest);
    if (zip.has("mimetype"))
        if (auto const type = zip.text("mimetype", 200); !type.starts_with(spreadsheet))
            throw Trouble(Reason::unsupported, "no spreadsheet, but " + type);
    if (zip.has("META-INF/manifest.xml")) {
        Encryption manifest(room);
        zip.read("META-INF/manifest.xml", [&](std::string_view piece) { manifest.feed(piece); });
        manifest.finish();
        if (manifest.found)
            throw Trouble(Reason::password, "encrypted");
    }
    if (!zip.has("content.xml"))
        throw Trouble(zip.has("mimetype") ? Reason::corrupt : Reason::unsupported, "a zip without content.xml");
    read_ods(file, room, sink);
}

} // namespace

std::string_view ending(Format format) {
    for (auto const& [known, text] : endings)
        if (known == format)
            return text;
    return {};
}

std::optional<Format> format_of(std::filesystem::path const& file) {
    std::string lower = file.extension().string();
    for (char& letter : lower)
        letter = static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
    for (auto const& [format, text] : endings)
        if (text == lower)
            return format;
    return std::nullopt;
}

bool inspect(std::filesystem::path const& file, Format format, std::uint64_t largest, Room& room, CellSink& sink) {
    std::string const start = start_of(file);
    if (start.empty())
        throw Trouble(Reason::corrupt, "the file is empty");
    bool const is_compound = start.starts_with(compound);
    switch (format) {
    case Format::ods:
        if (!start.starts_with(zip_start))
            not_what_it_says(format, start);
        inspect_ods(file, largest, room, sink);
        return true;
    case Format::xlsx:
        if (is_compound && CompoundFile(file).has("EncryptedPackage"))
            throw Trouble(Reason::password, "encrypted");
        if (!start.starts_with(zip_start))
            not_what_it_says(format, start);
        check_unpacked_size(Zip(file), largest);
        read_xlsx(file, room, sink);
        return true;
    case Format::fods:
        if (start.find_first_not_of(" \t\r\n\xEF\xBB\xBF") != start.find('<'))
            not_what_it_says(format, start);
        read_fods(file, room, sink);
        return true;
    case Format::xls:
        if (!is_compound)
            not_what_it_says(format, start);
        return read_xls(file, room, sink);
    }
    return false;
}

std::optional<StoredResults> inspect(std::filesystem::path const& file, Format format, std::uint64_t largest) {
    Room room(Room::for_workbooks_up_to(largest));
    ResultsFound results(room);
    return inspect(file, format, largest, room, results) ? std::optional(results.take()) : std::nullopt;
}

} // namespace hearthcell::archive
