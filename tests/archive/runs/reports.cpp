#include "reports.hpp"

#include "tests/archive/made/flat_odf.hpp"
#include "tests/support/all_below.hpp"
#include "tests/support/content.hpp"

#include <sys/stat.h>
#define XXH_INLINE_ALL
#include <xxhash.h>

#include <cmath>
#include <cstdio>
#include <regex>
#include <sstream>
#include <stdexcept>

namespace hearthcell::tests::archive {
namespace {

namespace fs = std::filesystem;

constexpr char field_end = '\x1f', record_end = '\x1e';

Words split(std::string const& text, char separator) {
    Words parts{""};
    for (char const letter : text)
        if (letter == separator)
            parts.emplace_back();
        else
            parts.back() += letter;
    return parts;
}

/// All records, the headings first.
std::vector<Words> records(fs::path const& file) {
    std::string const command =
        "/usr/bin/python3 '" READ_CSV "' '" + file.string() + "' 2>&1"; // no quotes in our paths
    std::unique_ptr<FILE, int (*)(FILE*)> pipe(::popen(command.c_str(), "r"), ::pclose);
    std::string text;
    char buffer[4096];
    while (std::size_t const got = std::fread(buffer, 1, sizeof buffer, pipe.get()))
        text.append(buffer, got);
    if (::pclose(pipe.release()) != 0)
        throw std::runtime_error(file.string() + ": " + text);
    std::vector<Words> all;
    for (std::string const& record : split(text, record_end))
        all.push_back(split(record, field_end));
    all.pop_back(); // nothing follows the last end
    if (all.empty())
        throw std::runtime_error(file.string() + " has no headings");
    for (Words const& record : all)
        if (record.size() != all.front().size())
            throw std::runtime_error(file.string() + ": a row of " + std::to_string(record.size()) + " fields");
    return all;
}

bool is_workbook(fs::path const& file) {
    static std::set<std::string> const endings{".ods", ".fods", ".xlsx", ".xls"};
    return endings.contains(file.extension().string());
}

std::string hash(std::string const& content) {
    XXH128_hash_t const sum = XXH3_128bits(content.data(), content.size());
    return std::to_string(sum.high64) + "." + std::to_string(sum.low64);
}

/// As the program's guide says.
std::string as_read(std::string const& field) {
    static std::regex const backslash(R"((^|[;\t|\r\n])\\)");
    return std::regex_replace(field, backslash, "$1");
}

/// The name of a file as it is on the disk.
std::string true_name(std::string const& shown) {
    std::string name;
    for (std::size_t at = 0; at < shown.size(); ++at) {
        if (shown[at] != '\\') {
            name += shown[at];
        } else if (char const kind = shown.at(++at); kind == '\\') {
            name += kind;
        } else if (kind == 'x') {
            name += static_cast<char>(std::stoi(shown.substr(at + 1, 2), nullptr, 16));
            at += 2;
        } else if (kind == 'u') { // of four digits, which is three bytes in the names of these tests
            unsigned const letter = static_cast<unsigned>(std::stoul(shown.substr(at + 1, 4), nullptr, 16));
            for (unsigned const byte :
                 {0xE0U | letter >> 12U, 0x80U | (letter >> 6U & 0x3FU), 0x80U | (letter & 0x3FU)})
                name += static_cast<char>(byte);
            at += 4;
        } else {
            throw std::runtime_error("this is no name: " + shown);
        }
    }
    return name;
}

} // namespace

std::string text_of(fs::path const& file) {
    if (!fs::exists(file))
        throw std::runtime_error("there is no " + file.string());
    return content(file);
}

Words csv_headings(fs::path const& file) {
    return records(file).front();
}

std::vector<Row> read_csv(fs::path const& file) {
    std::vector<Words> const all = records(file);
    std::vector<Row> rows;
    for (std::size_t record = 1; record < all.size(); ++record) {
        Row row;
        for (std::size_t field = 0; field < all[record].size(); ++field)
            row[as_read(all[0][field])] = as_read(all[record][field]);
        if (row.contains("file"))
            row["file"] = true_name(row["file"]);
        rows.push_back(row);
    }
    return rows;
}

bool has_proper_line_ends(fs::path const& file) {
    std::string const text = text_of(file);
    bool quoted = false;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '"')
            quoted = !quoted;
        if (!quoted && text[at] == '\n' && (at == 0 || text[at - 1] != '\r'))
            return false;
        if (!quoted && text[at] == '\r' && (at + 1 == text.size() || text[at + 1] != '\n'))
            return false;
    }
    return !quoted && text.ends_with("\r\n");
}

std::map<Key, Row> counted_changes(fs::path const& output) {
    std::map<Key, Row> changes;
    for (Row const& row : read_csv(output / "changes.csv"))
        if (row.at("volatile") == "no" && row.at("kind") != "last digits" &&
            !changes.emplace(Key{row.at("file"), row.at("sheet"), row.at("cell")}, row).second)
            throw std::runtime_error("twice in changes.csv: " + row.at("file") + " " + row.at("cell"));
    return changes;
}

std::map<std::string, std::set<std::string>> problems(fs::path const& output) {
    std::map<std::string, std::set<std::string>> by_file;
    for (Row const& row : read_csv(output / "problems.csv"))
        if (!by_file[row.at("file")].insert(row.at("reason")).second)
            throw std::runtime_error("twice in problems.csv: " + row.at("file"));
    return by_file;
}

testing::AssertionResult says(std::string const& field, Held const& value) {
    auto const verdict = [&](bool agrees, std::string const& expected) {
        return (agrees ? testing::AssertionSuccess() : testing::AssertionFailure())
               << "says '" << field << "', must be '" << expected << "'";
    };
    if (double const* const number = std::get_if<double>(&value)) {
        char* end = nullptr;
        double const read = std::strtod(field.c_str(), &end);
        bool const whole = !field.empty() && *end == '\0';
        return verdict(whole && std::abs(read - *number) <= 2e-14 * std::abs(*number), digits(*number));
    }
    if (CellError const* const error = std::get_if<CellError>(&value))
        return verdict(field == error_text(*error), error_text(*error));
    if (std::string const* const text = std::get_if<std::string>(&value))
        return verdict(field == *text, *text);
    return verdict(field.empty(), "");
}

std::set<std::string> copies(fs::path const& output) {
    std::set<std::string> found;
    for (fs::path const& file : all_below(output))
        if (fs::is_regular_file(file) && is_workbook(file) && file != output / "summary.ods")
            found.insert(file.lexically_relative(output));
    return found;
}

std::map<std::string, std::string> snapshot(fs::path const& folder) {
    std::map<std::string, std::string> all;
    auto const note = [&](fs::path const& path) {
        struct stat facts {};
        if (::lstat(path.c_str(), &facts) != 0)
            throw std::runtime_error("cannot look at " + path.string());
        std::ostringstream text;
        text << std::oct << facts.st_mode << std::dec << ' ' << facts.st_size << ' ' << facts.st_mtim.tv_sec << '.'
             << facts.st_mtim.tv_nsec << ' ';
        if (S_ISREG(facts.st_mode))
            text << hash(text_of(path));
        if (S_ISLNK(facts.st_mode))
            text << fs::read_symlink(path).string();
        all[path.lexically_relative(folder)] = text.str();
    };
    note(folder);
    for (auto const& entry : fs::recursive_directory_iterator(folder))
        note(entry.path());
    return all;
}

} // namespace hearthcell::tests::archive
