#include "extension/archive/links/may_link.hpp"

#include <algorithm>
#include <array>
#include <cctype>

namespace hearthcell::archive {

void MayLink::feed(std::string_view piece) {
    constexpr std::array<std::string_view, 18> names{
        "href",       "src=",          "src ",   "schema", "datasource",  "database-name",
        "image-data", "data-mapping",  "ENTITY", "webPr",  "File",        "connection",
        "Connection", "<Relationship", "'#",     "apos;#", "binary-data", ";base64,"};
    constexpr std::size_t longest = 16, beginning = 200;
    if (found_)
        return;
    start_.append(piece.substr(0, beginning - std::min(beginning, start_.size())));
    std::string const text = last_ + std::string(piece);
    for (std::string_view const name : names)
        found_ = found_ || text.find(name) != std::string::npos;
    last_ = text.substr(text.size() - std::min(text.size(), longest));
}

bool MayLink::found() const {
    if (found_ || start_.empty())
        return found_;
    // A text in other letters than these cannot be searched for them.
    std::string start = start_;
    for (char& letter : start)
        letter = static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
    auto const first = start.find_first_not_of("\xEF\xBB\xBF \t\r\n");
    std::string const declaration = start.substr(0, start.find("?>"));
    return (first != std::string::npos && start[first] != '<') || start.find('\0') != std::string::npos ||
           (declaration.find("encoding") != std::string::npos && declaration.size() < start.size() &&
            declaration.find("utf-8") == std::string::npos);
}

} // namespace hearthcell::archive
