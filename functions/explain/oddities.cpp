#include "functions/explain/oddities.hpp"

#include "functions/explain/odd_combinations.hpp"
#include "functions/explain/slips.hpp"

namespace hearthcell {
namespace {

Oddity oddity_of(Speaker const& say, Combination const& combination, Arguments const& arguments) {
    for (std::string_view const name : combination.about)
        if (double const number = arguments[name]; !name.empty() && !std::isnan(number))
            return {say(combination.sentence), arguments.place_of(name),
                    combination.scale * number + combination.shift};
    Oddity oddity{say(combination.sentence)};
    oddity.is_advice = combination.is_advice;
    return oddity;
}

} // namespace

bool has_swapped_readings(Function const& function, std::span<Value const> values) {
    Arguments const arguments(function, values);
    return function.name == "BENCHEFFICIENCY" && end_of(arguments) < start_of(arguments);
}

std::vector<Oddity> oddities(Speaker const& say, Function const& function, std::span<Value const> values) {
    std::vector<Oddity> result;
    Arguments const arguments(function, values);
    bool const holds_no_moisture = arguments.names_a_fuel_as_fired(); // 0 is what it must be, and no empty cell
    for (std::size_t i = 0; i < function.arguments.size(); ++i) {
        Argument const& argument = function.arguments[i];
        if (holds_no_moisture && argument.measure == Measure::moisture_wet)
            continue;
        for (double const number : {arguments.at(i), arguments.for_all_rows(i)})
            for (std::string& sentence : doubt_about_zero(say, argument, number))
                result.push_back({std::move(sentence), i, absent, true});
        for (OddNumber& odd : odd_about(say, argument, arguments.at(i)))
            result.push_back({std::move(odd.sentence), i, odd.meant});
    }
    for (std::span<Combination const> const combinations : {odd_readings(), odd_results()})
        for (Combination const& combination : combinations)
            if (combination.odd(arguments))
                result.push_back(oddity_of(say, combination, arguments));
    return result;
}

} // namespace hearthcell
