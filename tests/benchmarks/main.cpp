// hearthcell-benchmark PACKAGE EMPTY-TWIN [--markdown] [ROWS]

#include "long_columns.hpp"
#include "subjects.hpp"
#include "timing.hpp"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <fstream>
#include <stdexcept>
#include <string_view>
#include <thread>

namespace {

using namespace hearthcell;
using namespace hearthcell::benchmarks;

struct Options {
    std::filesystem::path package, twin;
    bool markdown = false;
    int rows = 100000;
};

std::string processor() {
    std::ifstream info("/proc/cpuinfo");
    for (std::string line; std::getline(info, line);)
        if (line.starts_with("model name"))
            return line.substr(line.find(':') + 2);
    return "unknown processor";
}

class Table {
public:
    explicit Table(bool as_markdown) : markdown(as_markdown) {}
    void head(char const* what, char const* against) const {
        if (markdown)
            std::printf("\n| %s | µs a row | %s | ratio |\n|---|---|---|---|\n", what, against);
        else
            std::printf("\n%-44s %9s %12s %7s\n", what, "µs a row", against, "ratio");
    }
    void row(std::string const& name, Pair const& pair) const {
        std::printf(markdown ? "| %s | %.2f | %.2f | %.2f |\n" : "%-44s %8.2f %12.2f %7.2f\n", name.c_str(),
                    pair.subject, pair.baseline, pair.subject / pair.baseline);
        std::fflush(stdout);
    }

private:
    bool markdown;
};

/// A benchmark of a call that fails would measure the failing.
void must_work(Subject const& subject, std::string const& formula) {
    if (std::holds_alternative<office::CellError>(subject.first_result()))
        throw std::runtime_error(formula + " gives an error");
}

void must_agree(Subject const& hand_written, Subject const& ours) {
    double const difference = std::get<double>(hand_written.first_result()) - std::get<double>(ours.first_result());
    if (!(std::abs(difference) < 1e-6))
        throw std::runtime_error("the boiling point written out by hand differs by " + std::to_string(difference));
}

void measure_call(office::Office& office, Table const& table, Function const& function, Example const& example,
                  int rows) {
    Formula const call = call_of(function, example, "STOVE.");
    Formula const empty = call_of(function, example, "EMPTY.");
    Subject subject(office, {{call.text}}, call.inputs, rows);
    Subject baseline(office, {{empty.text}}, empty.inputs, rows);
    Pair const pair = measure_in_turn(subject, baseline);
    must_work(subject, call.text);
    must_work(baseline, empty.text);
    table.row(std::string(function.name) + ", " + std::to_string(example.arguments.size()) + " arguments", pair);
}

bool gives_numbers(Function const& function) {
    return !std::holds_alternative<Wordy>(function.kernel);
}

void measure_functions(office::Office& office, Table const& table, int rows) {
    table.head("function", "empty call");
    for (Group const& group : catalogue()) {
        for (Function const& function : group.functions) {
            Example const* const least = shortest_example(function);
            Example const* const most = longest_example(function);
            if (!gives_numbers(function) || least == nullptr)
                continue;
            measure_call(office, table, function, *least, rows);
            if (most->arguments.size() != least->arguments.size())
                measure_call(office, table, function, *most, rows);
        }
    }
}

void measure_others(office::Office& office, Table const& table, int rows) {
    table.head("what", "BOILINGPOINT");
    Subject ours(office, {{"=STOVE.BOILINGPOINT(A1)"}}, {2300}, rows);
    struct Other {
        char const* name;
        std::vector<std::string> formulas;
    };
    for (Other const& other : {Other{"=A1", {"=A1"}}, Other{"=SQRT(LN(A1)), built in", {"=SQRT(LN(A1))"}},
                               Other{"SQRTPI, an add-in that comes with Calc", {"=SQRTPI(A1)"}},
                               Other{"BESSELJ, an add-in that comes with Calc", {"=BESSELJ(A1/1000;1)"}},
                               Other{"the boiling point in one cell, built in", boiling_point_in_one_cell()},
                               Other{"the boiling point in three columns, built in", boiling_point_in_columns()}}) {
        Subject subject(office, {other.formulas}, {2300}, rows);
        Pair const pair = measure_in_turn(subject, ours, 5);
        must_work(subject, other.name);
        if (other.formulas.size() != 1 || other.formulas[0].size() > 100) // the hand-written ones must agree with ours
            must_agree(subject, ours);
        table.row(other.name, pair);
    }
}

/// The log functions on whole columns: full ones, and all but empty ones as a sheet mostly has them.
void measure_long_columns(office::Office& office, Options const& options) {
    struct Call {
        char const* name;
        char const* further;
        LongColumns::Shape shape;
    };
    using Shape = LongColumns::Shape;
    constexpr Call calls[] = {{"TIMEAT", ";80", Shape::heating},
                              {"BOILTIME", ";95", Shape::heating},
                              {"HEATINGRATE", "", Shape::heating},
                              {"HEATGAIN", ";5000", Shape::heating},
                              {"LOGCHECK", ";95", Shape::heating},
                              {"HEATLOSS", ";5000;20", Shape::cooling},
                              {"BOILFORECAST", ";95", Shape::stopped_early}};
    for (int const readings : {1048576, 100}) {
        std::printf(options.markdown ? "\n| A:A with %d readings | ms | handed over to an empty call | ratio |\n"
                                       "|---|---|---|---|\n"
                                     : "\nA:A with %d readings: ms, handed over to an empty call, ratio\n",
                    readings);
        for (Shape const shape : {Shape::heating, Shape::cooling, Shape::stopped_early}) {
            LongColumns columns(office, shape, readings);
            for (Call const& call : calls) {
                if (call.shape != shape)
                    continue;
                auto const [ours, empty] = columns.measure(call.name, call.further);
                std::printf(options.markdown ? "| %s | %.0f | %.0f | %.2f |\n" : "%-44s %8.0f %12.0f %7.2f\n",
                            call.name, ours, empty, ours / empty);
                std::fflush(stdout);
            }
        }
    }
}

void run(Options const& options) {
    office::Office office({.package = options.package, .further_packages = {options.twin}});
    if (office.functions("STOVE.").empty() || office.functions("EMPTY.").empty())
        throw std::runtime_error("LibreOffice did not load both packages");
    std::printf("%s, %u cores; %d rows, hard recalculation, medians of calls measured in turn\n", processor().c_str(),
                std::thread::hardware_concurrency(), options.rows);
    Table const table(options.markdown);
    measure_functions(office, table, options.rows);
    measure_others(office, table, options.rows);
    measure_long_columns(office, options);
}

Options read(int count, char** words) {
    if (count < 3)
        throw std::runtime_error("usage: hearthcell-benchmark PACKAGE EMPTY-TWIN [--markdown] [ROWS]");
    Options options{words[1], words[2]};
    for (int i = 3; i < count; ++i) {
        if (std::string_view(words[i]) == "--markdown")
            options.markdown = true;
        else
            options.rows = std::atoi(words[i]);
    }
    if (options.rows < 1 || options.rows > 1000000)
        throw std::runtime_error("rows must be 1 to 1000000");
    return options;
}

} // namespace

int main(int count, char** words) {
    try {
        run(read(count, words));
        return 0;
    } catch (std::exception const& error) {
        std::fprintf(stderr, "hearthcell-benchmark: %s\n", error.what());
        return 1;
    }
}
