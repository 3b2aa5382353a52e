#include "long_columns.hpp"
#include "parts.hpp"

namespace hearthcell::benchmarks {
namespace {

using Shape = LongColumns::Shape;

struct Call {
    char const* name;
    char const* further;
    Shape shape;
};
constexpr Call calls[] = {{"TIMEAT", ";80", Shape::heating},
                          {"BOILTIME", ";95", Shape::heating},
                          {"HEATINGRATE", "", Shape::heating},
                          {"HEATGAIN", ";5000", Shape::heating},
                          {"TIMEMEAN", "", Shape::heating},
                          {"LOGCHECK", ";95", Shape::heating},
                          {"HEATLOSS", ";5000;20", Shape::cooling},
                          {"BOILFORECAST", ";95", Shape::stopped_early}};

/// What of the time is ours, a reading: it stays the same where time grows as the log does.
void measure_growth(office::Office& office, Report& report) {
    report.note("Nanoseconds a reading, handing over included, for logs of 1,000 to 1,000,000 readings:");
    report.head({"function", "1,000", "10,000", "100,000", "1,000,000"});
    for (Call const& call : calls) {
        std::vector<std::string> figures;
        for (int readings : {1000, 10000, 100000, 1000000}) {
            LongColumns columns(office, call.shape, readings);
            std::string const last = std::to_string(readings);
            Pair const pair = columns.measure(call.name, "A1:A" + last + ";B1:B" + last, call.further);
            figures.push_back(figure(pair.subject * 1e6 / readings, 0));
        }
        report.row(call.name, figures);
    }
}

} // namespace

void measure_logs(office::Office& office, Report& report) {
    for (int const readings : {1048576, 100}) {
        report.note("Whole columns, A:A and B:B, of which " + std::to_string(readings) + " rows hold readings:");
        report.head({"function", "ms a call", "handed over only", "ratio"});
        for (Shape const shape : {Shape::heating, Shape::cooling, Shape::stopped_early}) {
            LongColumns columns(office, shape, readings);
            for (Call const& call : calls) {
                if (call.shape != shape)
                    continue;
                Pair const pair = columns.measure(call.name, "A:A;B:B", call.further);
                report.row(call.name, {figure(pair.subject, 0), figure(pair.baseline, 0), figure(pair.ratio, 2)});
            }
        }
    }
    measure_growth(office, report);
}

} // namespace hearthcell::benchmarks
