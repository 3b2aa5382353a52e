#include "manifest/generator/output.hpp"

#include <sstream>

namespace hearthcell::generator {

void write_readme_table(std::ostream& out) {
    for (Group const& group : catalogue()) {
        out << "\n### " << group.title.english << "\n\n| function | gives | unit | source |\n|---|---|---|---|\n";
        for (Function const& function : group.functions) {
            std::string_view const unit = unit_of(function.result.measure);
            std::string const in_block = parts(function, Language::english);
            out << "| `" << signature(function) << "` | " << function.summary.english;
            if (!in_block.empty())
                out << (function.result.list ? "; a list of " : "; side by side: ") << in_block;
            out << " | " << (unit.empty() ? "–" : unit) << " | ";
            std::string_view comma;
            for (Source const& source : function.sources) {
                out << comma << source.title << (source.from_memory ? "*" : "");
                comma = "; ";
            }
            out << " |\n";
        }
    }
}

std::string with_function_table(std::string const& readme) {
    constexpr std::string_view opening = "<!-- functions -->\n", closing = "<!-- end of functions -->";
    std::size_t const start = readme.find(opening), end = readme.find(closing);
    if (start == std::string::npos || end == std::string::npos || end < start)
        return "";
    std::ostringstream table;
    write_readme_table(table);
    return readme.substr(0, start + opening.size()) + table.str() + readme.substr(end);
}

} // namespace hearthcell::generator
