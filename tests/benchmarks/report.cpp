#include "report.hpp"

#include <cstdio>

namespace hearthcell::benchmarks {

void Report::note(std::string const& text) const {
    std::printf("\n%s\n", text.c_str());
    std::fflush(stdout);
}

void Report::head(std::initializer_list<char const*> columns) {
    std::printf("\n");
    bool first = true;
    for (char const* const column : columns) {
        std::printf(markdown_ ? (first ? "| %s |" : " %s |") : (first ? "%-46s" : " %16s"), column);
        first = false;
    }
    std::printf("\n");
    for (std::size_t i = 0; markdown_ && i < columns.size(); ++i)
        std::printf(i == 0 ? "|---|" : "--:|");
    if (markdown_)
        std::printf("\n");
}

void Report::row(std::string const& name, std::vector<std::string> const& figures) const {
    std::printf(markdown_ ? "| %s |" : "%-46s", name.c_str());
    for (std::string const& text : figures)
        std::printf(markdown_ ? " %s |" : " %16s", text.c_str());
    std::printf("\n");
    std::fflush(stdout);
}

std::string figure(double value, int decimals) {
    char text[64];
    std::snprintf(text, sizeof text, "%.*f", decimals, value);
    return text;
}

} // namespace hearthcell::benchmarks
