// Any bytes as a workbook: our readers give results or say what is wrong, twice the same, in the room that they have.
// One program of each format. For those in a zip, the first byte says whether the rest is the zip, or the XML in it.

#include "extension/archive/files/contents.hpp"
#include "extension/archive/files/format.hpp"
#include "extension/archive/files/problem.hpp"
#include "tests/robustness/fuzz/readers/stored_zip.hpp"

#include <sys/mman.h>
#include <unistd.h>

#include <cstdint>
#include <cstdlib>
#include <iostream>

namespace {

using namespace hearthcell::archive;
using hearthcell::tests::stored_zip;

constexpr Format format = Format::FUZZED_FORMAT;
constexpr std::uint64_t room = 4 << 20, size_limit = 8 << 20;

/// A file in memory.
class File {
public:
    explicit File(std::string const& bytes) : number_(::memfd_create("workbook", MFD_CLOEXEC)) {
        if (number_ < 0 || ::write(number_, bytes.data(), bytes.size()) != static_cast<ssize_t>(bytes.size()))
            std::abort();
    }
    ~File() { ::close(number_); }
    File(File const&) = delete;
    File& operator=(File const&) = delete;
    [[nodiscard]] std::string path() const { return "/proc/self/fd/" + std::to_string(number_); }

private:
    int number_;
};

std::string xlsx(std::string const& sheet) {
    std::string const start = R"(<Relationships xmlns="r">)";
    return stored_zip(
        {{"_rels/.rels",
          start + R"(<Relationship Id="a" Type="http://x/officeDocument" Target="b.xml"/></Relationships>)"},
         {"b.xml", R"(<workbook xmlns:r="r"><sheet r:id="c"/></workbook>)"},
         {"_rels/b.xml.rels",
          start + R"(<Relationship Id="c" Type="http://x/worksheet" Target="d.xml"/></Relationships>)"},
         {"d.xml", sheet}});
}

std::string workbook(std::string const& bytes) {
    if (format == Format::fods || format == Format::xls || bytes.empty())
        return bytes;
    std::string const rest = bytes.substr(1);
    if (bytes[0] % 2 == 0)
        return rest;
    return format == Format::xlsx ? xlsx(rest) : stored_zip({{"content.xml", rest}});
}

/// False: encrypted.
bool read(std::string const& path, Room& left, CellSink& sink) {
    switch (format) {
    case Format::ods:
        read_ods(path, left, sink);
        return true;
    case Format::fods:
        read_fods(path, left, sink);
        return true;
    case Format::xlsx:
        read_xlsx(path, left, sink);
        return true;
    case Format::xls:
        return read_xls(path, left, sink);
    }
    std::abort();
}

std::optional<std::size_t> results_in(std::string const& path) {
    Room left(room);
    ResultsFound found(left);
    return read(path, left, found) ? std::optional(found.take().size()) : std::nullopt;
}

std::optional<std::size_t> cells_in(std::string const& path) {
    Room left(room);
    Contents contents(left);
    return read(path, left, contents) ? std::optional(contents.cells().size()) : std::nullopt;
}

template <class Read> std::string said(Read const& one) {
    try {
        auto const number = one();
        return number ? std::to_string(*number) : "encrypted";
    } catch (Trouble const& trouble) {
        return std::string(words(trouble.reason)) + ": " + trouble.what();
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    std::string const bytes(reinterpret_cast<char const*>(data), size);
    File const file(workbook(bytes));
    auto const once = [&] {
        return said([&] { return results_in(file.path()); }) + ", of " + said([&] { return cells_in(file.path()); });
    };
    std::string const first = once(), second = once();
    if (first != second) {
        std::cerr << "ERROR: it said '" << first << "', then '" << second << "'\n";
        std::abort();
    }
    if (size % 8 == 0) // the look before reading, too
        said([&]() -> std::optional<std::size_t> {
            auto const results = inspect(file.path(), format, size_limit);
            return results ? std::optional(results->size()) : std::nullopt;
        });
    return 0;
}
