#include "parts.hpp"
#include "subjects.hpp"
#include "timing.hpp"

#include <stdexcept>

namespace hearthcell::benchmarks {
namespace {

constexpr double allowed = 1.25; // of a scalar function of numbers

struct Tally {
    int measured = 0;
    std::string above;
};

/// A benchmark of a call that fails would measure the failing.
void must_work(Subject const& subject, std::string const& formula) {
    if (std::holds_alternative<office::CellError>(subject.first_result()))
        throw std::runtime_error(formula + " gives an error");
}

void measure_call(office::Office& office, Report const& report, Function const& function, Example const& example,
                  int rows, Tally& tally) {
    Formula const call = call_of(function, example, "STOVE.");
    Formula const empty = call_of(function, example, "EMPTY.");
    Subject subject(office, {call.text}, call.inputs, rows);
    Subject baseline(office, {empty.text}, empty.inputs, rows);
    Pair const pair = measure_in_turn(subject, baseline);
    must_work(subject, call.text);
    must_work(baseline, empty.text);
    std::string const name =
        std::string(function.name) + ", " + std::to_string(example.arguments.size()) + " arguments";
    report.row(name, {figure(pair.subject, 2), figure(pair.baseline, 2), figure(pair.ratio, 2)});
    ++tally.measured;
    if (pair.ratio > allowed)
        tally.above += (tally.above.empty() ? "" : "; ") + name + " " + figure(pair.ratio, 2);
}

void measure_those(office::Office& office, Report& report, int rows, bool (*wanted)(Function const&), Tally& tally) {
    report.head({"function", "µs a row", "empty call", "ratio"});
    for (Group const& group : catalogue())
        for (Function const& function : group.functions) {
            Example const* const least = shortest_example(function);
            if (!wanted(function) || least == nullptr)
                continue;
            measure_call(office, report, function, *least, rows, tally);
            if (Example const* const most = longest_example(function);
                most->arguments.size() != least->arguments.size())
                measure_call(office, report, function, *most, rows, tally);
        }
}

bool is_scalar(Function const& function) {
    return std::holds_alternative<Numeric>(function.kernel);
}

} // namespace

void measure_functions(office::Office& office, Report& report, int rows) {
    Tally scalars, others;
    report.note("Functions of single numbers:");
    measure_those(office, report, rows, is_scalar, scalars);
    report.note("Of " + std::to_string(scalars.measured) + " calls, above " + figure(allowed, 2) +
                " times an empty call: " + (scalars.above.empty() ? "none" : scalars.above));
    report.note("Functions of columns and of texts, with the short columns of their examples:");
    measure_those(
        office, report, rows / 4, [](Function const& function) { return !is_scalar(function); }, others);
}

} // namespace hearthcell::benchmarks
