#include "extension/archive/records/csv.hpp"

#include <csv.h>
#include <nlohmann/json.hpp>

namespace hearthcell::archive {
namespace {

std::string quoted(std::string const& field) {
    std::string text(csv_write(nullptr, 0, field.data(), field.size()), '\0');
    csv_write(text.data(), text.size(), field.data(), field.size());
    return text;
}

bool needs_quotes(std::string const& field) {
    return field.find_first_of(",\"\r\n") != std::string::npos || field.starts_with(' ') || field.ends_with(' ');
}

} // namespace

std::string csv_row(std::vector<std::string> const& fields) {
    std::string row;
    for (std::string const& field : fields) {
        if (&field != &fields.front())
            row += ',';
        std::string const text = as_utf8(field);
        row += needs_quotes(text) ? quoted(text) : text;
    }
    return row + "\r\n";
}

std::string as_utf8(std::string const& bytes) {
    // The JSON library is the one at hand that knows UTF-8: through it and back, only what is broken changes.
    using nlohmann::json;
    bool const plain = bytes.find_first_of("\x7f") == std::string::npos &&
                       std::all_of(bytes.begin(), bytes.end(), [](char byte) { return byte > 0; });
    if (plain)
        return bytes;
    return json::parse(json(bytes).dump(-1, ' ', false, json::error_handler_t::replace)).get<std::string>();
}

} // namespace hearthcell::archive
