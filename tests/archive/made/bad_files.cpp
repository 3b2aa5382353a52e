#include "bad_files.hpp"

#include "flat_odf.hpp"
#include "good_workbooks.hpp"
#include "tests/support/content.hpp"
#include "through_office.hpp"
#include "zip_writer.hpp"

#include <sys/stat.h>

#include <fstream>
#include <stdexcept>

namespace hearthcell::tests::archive {
namespace {

using Path = std::filesystem::path;

constexpr std::uint64_t bomb_size = std::uint64_t(3) << 30;

void write(Path const& file, std::string const& content) {
    std::ofstream out(file, std::ios::binary);
    out << content;
    if (!out.flush())
        throw std::runtime_error("could not write " + file.string());
}

void cut_short(Path const& whole, Path const& file) {
    std::string const bytes = content(whole);
    write(file, bytes.substr(0, bytes.size() * 3 / 5));
}

void damage(Path const& whole, Path const& file) {
    std::string bytes = content(whole);
    std::size_t const in_the_cells = bytes.find("content.xml") + 200;
    for (std::size_t at = in_the_cells; at < in_the_cells + 20; ++at)
        bytes.at(at) = static_cast<char>(bytes[at] ^ 0x55);
    write(file, bytes);
}

std::string letter(std::string const& media_type) {
    std::string xml = flat_odf({.path = {}, .sheets = {}, .names = {}});
    auto const change = [&](std::string const& from, std::string const& to) {
        for (std::size_t at = xml.find(from); at != std::string::npos; at = xml.find(from, at + to.size()))
            xml.replace(at, from.size(), to);
    };
    change("office:spreadsheet", "office:text");
    change("application/vnd.oasis.opendocument.spreadsheet", media_type);
    return xml;
}

void write_letter(Path const& file) {
    std::string const type = "application/vnd.oasis.opendocument.text";
    std::string content = letter(type);
    std::size_t const head = content.find("<office:styles>"), body = content.find("<office:body>");
    content.erase(head, body - head);
    content.replace(content.find("<office:document"), 16, "<office:document-content");
    content.replace(content.find("</office:document>"), 18, "</office:document-content>");
    ZipWriter zip(file);
    zip.add("mimetype", type, Packing::stored);
    zip.add("content.xml", content);
    zip.close();
}

void write_bomb(Path const& file) {
    std::string const xml = flat_odf({.path = {}, .sheets = {{.name = "Data", .rows = {}}}, .names = {}});
    std::size_t const middle = xml.find("</office:spreadsheet>");
    ZipWriter zip(file);
    zip.add("mimetype", "application/vnd.oasis.opendocument.spreadsheet", Packing::stored);
    zip.add_bomb("content.xml", xml.substr(0, middle), bomb_size, xml.substr(middle));
    zip.close();
}

} // namespace

std::vector<BadFile> const& bad_files() {
    // Of a thing that is no workbook one may say that it is none or that it is a broken one.
    static std::set<std::string> const no_workbook{"unsupported", "corrupt"};
    static std::vector<BadFile> const files{
        {"bad/password.ods", {"password"}},
        {"bad/password.xlsx", {"password"}},
        {"bad/password.xls", {"password"}},
        {"bad/cut short.ods", {"corrupt"}},
        {"bad/cut short.xlsx", {"corrupt"}},
        {"bad/cut short.fods", {"corrupt"}},
        {"bad/cut short.xls", {"corrupt"}},
        {"bad/damaged.ods", {"corrupt"}},
        {"bad/damaged.xlsx", {"corrupt"}},
        {"bad/empty.ods", {"corrupt"}},
        {"bad/empty.fods", {"corrupt"}},
        {"bad/empty.xlsx", {"corrupt"}},
        {"bad/empty.xls", {"corrupt"}},
        {"bad/words.ods", no_workbook},
        {"bad/words.fods", no_workbook},
        {"bad/words.xlsx", no_workbook},
        {"bad/words.xls", no_workbook},
        {"bad/a letter.ods", {"unsupported"}},
        {"bad/a letter.fods", {"unsupported"}},
        {"bad/any zip.xlsx", no_workbook},
        {"bad/bomb.ods", {"too large"}},
        {"bad/gone.ods", {"unreadable"}},
        {"bad/itself.ods", {"unreadable", "symlink loop"}},
        {"bad/pipe.ods", {"unreadable", "unsupported"}},
    };
    return files;
}

void write_bad_files(office::Office& office, Path const& archive) {
    Path const folder = archive / "bad";
    Path const scratch = office.folder() / "whole";
    std::filesystem::create_directories(folder);
    std::filesystem::create_directories(scratch);
    Workbook const workbook = good_workbook(0);
    write_odf(workbook, scratch / "whole.fods");
    write_odf(workbook, scratch / "whole.ods");
    write_through_office(workbook, office, scratch / "whole.xlsx");
    write_through_office({.path = "whole.xls", .sheets = workbook.sheets, .names = {}}, office, scratch / "whole.xls");
    for (std::string const ending : {".ods", ".xlsx", ".xls"})
        write_with_password(office, scratch / "whole.fods", folder / ("password" + ending));
    for (std::string const ending : {".ods", ".fods", ".xlsx", ".xls"}) {
        cut_short(scratch / ("whole" + ending), folder / ("cut short" + ending));
        write(folder / ("empty" + ending), "");
        write(folder / ("words" + ending), "These are words, not a workbook.\nThey have lines; and semicolons, too.\n");
    }
    damage(scratch / "whole.ods", folder / "damaged.ods");
    std::map<std::string, std::string> sheet = unzipped(scratch / "whole.xlsx");
    std::string const& cells = sheet.at("xl/worksheets/sheet2.xml");
    std::filesystem::copy_file(scratch / "whole.xlsx", folder / "damaged.xlsx");
    replace_in_zip(folder / "damaged.xlsx", "xl/worksheets/sheet2.xml", cells.substr(0, cells.size() / 2));
    write_letter(folder / "a letter.ods");
    write(folder / "a letter.fods", letter("application/vnd.oasis.opendocument.text"));
    ZipWriter zip(folder / "any zip.xlsx");
    zip.add("notes.txt", "These are words.\n");
    zip.close();
    write_bomb(folder / "bomb.ods");
    std::filesystem::create_symlink("nowhere.ods", folder / "gone.ods");
    std::filesystem::create_symlink("itself.ods", folder / "itself.ods");
    if (::mkfifo((folder / "pipe.ods").c_str(), 0600) != 0)
        throw std::runtime_error("could not make a pipe");
}

} // namespace hearthcell::tests::archive
