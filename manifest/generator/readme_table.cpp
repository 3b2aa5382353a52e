#include "manifest/generator/output.hpp"

namespace hearthcell::generator {

void write_readme_table(std::ostream& out) {
    for (Group const& group : catalogue()) {
        out << "\n### " << group.title << "\n\n| function | gives | unit | source |\n|---|---|---|---|\n";
        for (Function const& function : group.functions) {
            std::string_view const unit = unit_of(function.result.measure);
            out << "| `" << signature(function) << "` | " << function.summary << " | " << (unit.empty() ? "–" : unit)
                << " | ";
            std::string_view comma;
            for (Source const& source : function.sources) {
                out << comma << source.title << (source.from_memory ? "*" : "");
                comma = "; ";
            }
            out << " |\n";
        }
    }
}

} // namespace hearthcell::generator
