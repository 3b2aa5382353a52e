#include "functions/diagnosis/log_check.hpp"

namespace hearthcell::diagnosis {
namespace {

using namespace kernels;

/// The first row with a number in both columns: what stands above it is a heading.
std::size_t first_reading(Block const& times, Block const& temperatures) {
    std::size_t row = 0;
    while (row < times.numbers.size() && !(is_number(times.numbers[row]) && is_number(temperatures.numbers[row])))
        ++row;
    return row;
}

/// The texts of a column below its heading.
void report_texts(Block const& column, Sentence const& sentence, std::size_t first, Findings& findings) {
    for (Block::Text const& text : column.texts)
        if (text.place >= first)
            findings.add(FindingKind::text, unsigned(text.place + 1), [&](Speaker const& say) {
                return say(sentence, {{"text", text.text}});
            });
}

std::vector<Reading> readings_in(Block const& times, Block const& temperatures, std::size_t first, Findings& findings) {
    std::vector<Reading> log;
    for (std::size_t i = first; i < times.numbers.size(); ++i) {
        double const time = times.numbers[i], temperature = temperatures.numbers[i];
        auto const row = unsigned(i + 1);
        if (is_number(time) && is_number(temperature))
            log.push_back({time, temperature, row});
        else if (is_number(time) && !is_text(temperature))
            findings.add(FindingKind::half_row, row, [](Speaker const& say) { return say(sentences::time_alone); });
        else if (is_number(temperature) && !is_text(time))
            findings.add(FindingKind::half_row, row,
                         [](Speaker const& say) { return say(sentences::temperature_alone); });
    }
    return log;
}

double number_or_absent(Value const& value) {
    double const* const number = std::get_if<double>(&value);
    return number != nullptr ? *number : absent;
}

} // namespace

Block check_log(Block const& times, Block const& temperatures, LogQuery const& query) {
    Findings findings(query.language);
    std::size_t const first = first_reading(times, temperatures);
    report_texts(times, sentences::time_is_a_text, first, findings);
    report_texts(temperatures, sentences::temperature_is_a_text, first, findings);
    std::vector<Reading> log = readings_in(times, temperatures, first, findings);
    if (log.size() > 1)
        check_temperatures(check_clock(std::move(log), findings), query, findings);
    return findings.block();
}

Outcome log_check(std::span<Value const> given) {
    Block const &times = std::get<Block>(given[0]), &temperatures = std::get<Block>(given[1]);
    if (times.numbers.size() != temperatures.numbers.size())
        return Failure{Reason::log_columns_differ};
    if (first_reading(times, temperatures) == times.numbers.size())
        return Failure{Reason::no_rows};
    return check_log(times, temperatures,
                     {number_or_absent(given[2]), number_or_absent(given[3]), number_or_absent(given[4]),
                      number_or_absent(given[5]), Language(int(std::get<double>(given[6])))});
}

} // namespace hearthcell::diagnosis
