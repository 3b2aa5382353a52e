#include "tests/robustness/fuzz/readers/stored_zip.hpp"

#include <zlib.h>

#include <cstdint>

namespace hearthcell::tests {
namespace {

std::string number(std::uint64_t value, int bytes) {
    std::string text;
    for (int byte = 0; byte < bytes; ++byte)
        text += static_cast<char>(value >> (8 * byte) & 0xFFU);
    return text;
}

/// What stands of an entry before its content and, again, in the list at the end.
std::string facts(std::string const& name, std::string const& content) {
    auto const sum = ::crc32(0, reinterpret_cast<Bytef const*>(content.data()), static_cast<uInt>(content.size()));
    return number(20, 2) + number(0, 8) + number(sum, 4) + number(content.size(), 4) + number(content.size(), 4) +
           number(name.size(), 2) + number(0, 2);
}

} // namespace

std::string stored_zip(std::vector<std::pair<std::string, std::string>> const& entries) {
    std::string zip, list;
    for (auto const& [name, content] : entries) {
        list +=
            "PK\x01\x02" + number(20, 2) + facts(name, content) + std::string(10, '\0') + number(zip.size(), 4) + name;
        zip += "PK\x03\x04" + facts(name, content) + name + content;
    }
    std::string const end = "PK\x05\x06" + number(0, 4) + number(entries.size(), 2) + number(entries.size(), 2) +
                            number(list.size(), 4) + number(zip.size(), 4) + number(0, 2);
    return zip + list + end;
}

} // namespace hearthcell::tests
