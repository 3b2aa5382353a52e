#include "manifest/generator/output.hpp"

#include <sstream>

namespace hearthcell::generator {

namespace {

void write_names(std::ostream& out, Function const& function, Argument const& argument) {
    out << "\n| `STOVE." << function.name << "` knows | also as | " << unit_of(argument.measure)
        << " | what it is; source |\n|---|---|---|---|\n";
    for (Named const& row : argument.table->rows)
        out << "| " << row.name.english << " | " << other_names(row, Language::english) << " | "
            << amount(row.value, Measure::words, Language::english) << " | " << row.what.english << "; "
            << marked(row.source, Language::english) << " |\n";
}

} // namespace

void write_readme_table(std::ostream& out) {
    for (Group const& group : catalogue()) {
        out << "\n### " << group.title.english << "\n\n| function | gives | unit | source |\n|---|---|---|---|\n";
        for (Function const& function : group.functions) {
            std::string_view const unit = unit_of(function.result.measure);
            std::string const in_block = parts(function, Language::english);
            out << "| `" << signature(function, Language::english) << "` | " << function.summary.english;
            if (!in_block.empty())
                out << (function.result.list ? "; a list of " : "; parts: ") << in_block;
            out << " | " << (unit.empty() ? "–" : unit) << " | ";
            std::string_view comma;
            for (Source const& source : function.sources) {
                out << comma << marked(source, Language::english);
                comma = "; ";
            }
            out << " |\n";
        }
    }
}

void write_readme_names(std::ostream& out) {
    out << "\n### Names\n\nWhere a calorific value, a specific heat, a molar mass or a share of carbon is wanted, one "
           "of "
           "these names will do, in\nany of four languages; letter case, accents, blanks and hyphens do not matter. A "
           "word "
           "that fits several rows is refused.\n";
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (Argument const& argument : function.arguments)
                if (argument.lists_names)
                    write_names(out, function, argument);
}

std::string with_function_table(std::string const& readme) {
    constexpr std::string_view opening = "<!-- functions -->\n", closing = "<!-- end of functions -->";
    std::size_t const start = readme.find(opening), end = readme.find(closing);
    if (start == std::string::npos || end == std::string::npos || end < start)
        return "";
    std::ostringstream table;
    write_readme_table(table);
    write_readme_names(table);
    return readme.substr(0, start + opening.size()) + table.str() + readme.substr(end);
}

} // namespace hearthcell::generator
