#include "parts.hpp"
#include "subjects.hpp"
#include "timing.hpp"

namespace hearthcell::benchmarks {

void measure_against_package(office::Office& office, office::Settings const& other, Report& report, int rows) {
    office::Office other_office(other);
    report.note("Our functions, against those of the package " + other.package.string() + ":");
    report.head({"function", "µs a row", "the other package", "ratio"});
    std::vector<double> ratios;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions) {
            Example const* const example = longest_example(function);
            if (example == nullptr)
                continue;
            Formula const call = call_of(function, *example, "STOVE.");
            Subject subject(office, {call.text}, call.inputs, rows);
            Subject baseline(other_office, {call.text}, call.inputs, rows);
            if (std::holds_alternative<office::CellError>(baseline.first_result()))
                continue; // it has no such function
            Pair const pair = measure_in_turn(subject, baseline);
            report.row(std::string(function.name) + ", " + std::to_string(example->arguments.size()) + " arguments",
                       {figure(pair.subject, 2), figure(pair.baseline, 2), figure(pair.ratio, 2)});
            ratios.push_back(pair.ratio);
        }
    report.note("The median of these " + std::to_string(ratios.size()) + " ratios: " + figure(median(ratios), 3));
}

} // namespace hearthcell::benchmarks
