#include "functions/diagnosis/emission_remarks.hpp"

#include "functions/diagnosis/ceiling.hpp"
#include "functions/kernels/carbon_balance.hpp"
#include "functions/kernels/log/hood.hpp"
#include "functions/words/sentences.hpp"
#include "functions/words/speaker.hpp"

namespace hearthcell::diagnosis {
namespace {

// From where on something is remarked. Common practice, no source.
constexpr double cleanest_fire = 1e-4, dirtiest_fire = 0.5; ///< carbon monoxide by carbon dioxide
constexpr double ended_early = 0.3;                         ///< of the highest, at the last reading

/// The numbers of a column; where they stand counts as their time.
std::vector<kernels::Reading> readings_of(Block const& column) {
    std::vector<kernels::Reading> readings;
    for (double const number : column.numbers)
        if (kernels::is_number(number))
            readings.push_back({double(readings.size()), number});
    return readings;
}

void add_ceiling(Speaker const& say, Sentences& odd, Block const& column, Sentence const& gas) {
    Ceiling const ceiling = ceiling_of(readings_of(column));
    if (ceiling.count > 0)
        odd.push_back(say(
            sentences::gas_at_ceiling,
            {{"gas", say(gas)}, {"reading", say.number(ceiling.reading)}, {"count", std::to_string(ceiling.count)}}));
}

void add_proportion(Speaker const& say, Sentences& odd, kernels::Smoke const& smoke) {
    double const ratio = (smoke.monoxide - smoke.background_monoxide) / (smoke.dioxide - smoke.background_dioxide);
    if (ratio > dirtiest_fire)
        odd.push_back(say(sentences::gases_out_of_proportion, {{"ratio", say.number(ratio)}}));
    if (ratio < cleanest_fire)
        odd.push_back(say(sentences::too_clean_a_fire));
}

} // namespace

Remarks remark_on_carbon_balance(Given const& given, Language language) {
    Speaker const say(language);
    kernels::Smoke const smoke = kernels::read_smoke(given);
    Remarks remarks;
    add_proportion(say, remarks.odd, smoke);
    if (smoke.background_dioxide == 0)
        remarks.odd.push_back(say(sentences::background_is_zero));
    add_ceiling(say, remarks.odd, *given.columns[0], sentences::gas_carbon_dioxide);
    add_ceiling(say, remarks.odd, *given.columns[1], sentences::gas_carbon_monoxide);
    if (smoke.left_out > 0)
        remarks.said.push_back(say(sentences::rows_without_a_gas, {{"count", std::to_string(smoke.left_out)}}));
    if (smoke.rows > 1)
        remarks.said.push_back(say(sentences::readings_count_alike));
    return remarks;
}

Remarks remark_on_hood(Given const& given, Language language) {
    Speaker const say(language);
    kernels::Readings const caught = kernels::caught_by_hood(given);
    kernels::TimeMean const mean = kernels::time_mean(caught.log, given.numbers[1], given.numbers[2]);
    std::vector<kernels::Reading> read = caught.log; // the concentrations, as they were read
    for (kernels::Reading& reading : read)
        reading.temperature = given.columns[1]->numbers[reading.row - 1];
    Remarks remarks;
    if (Ceiling const ceiling = ceiling_of(read); ceiling.count > 0)
        remarks.odd.push_back(say(sentences::hood_at_ceiling, {{"reading", say.number(ceiling.reading)},
                                                               {"minutes", say.hundredths(ceiling.minutes)}}));
    double const background = given.numbers[0], last = read.back().temperature;
    double const highest = std::ranges::max(read, {}, &kernels::Reading::temperature).temperature;
    if (is_absent(given.numbers[2]) && last - background > ended_early * (highest - background))
        remarks.odd.push_back(say(sentences::still_emitting, {{"reading", say.number(last)}}));
    remarks.said.push_back(say(sentences::hood_readings, {{"count", std::to_string(mean.readings)},
                                                          {"minutes", say.hundredths(mean.minutes)},
                                                          {"gap", say.hundredths(mean.longest_gap)}}));
    return remarks;
}

Remarks remark_on_room(Given const&, Language language) {
    Speaker const say(language);
    return {{}, {say(sentences::model_of_a_room), say(sentences::guideline_values)}};
}

} // namespace hearthcell::diagnosis
