#pragma once
// Calling a catalogue function as a cell does.

#include "functions/call/call.hpp"
#include "functions/call/part.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <gtest/gtest.h>

#include <string_view>
#include <vector>

namespace hearthcell::tests {

inline Value column(std::vector<double> values) {
    std::size_t const rows = values.size();
    return Block{rows, 1, std::move(values), {}};
}

inline Outcome outcome(std::string_view name, std::vector<Value> const& arguments) {
    Function const* const function = find_function(name);
    if (function == nullptr) {
        ADD_FAILURE() << "no function " << name;
        return Failure{Reason::internal};
    }
    return call(*function, arguments);
}

/// All parts of a result, or the values of a list; empty when something else came out.
inline std::vector<double> parts(std::string_view name, std::vector<Value> const& arguments) {
    Function const& function = *find_function(name);
    bool const names_a_part = arguments.size() == function.arguments.size();
    Outcome const result = outcome(name, names_a_part ? arguments : asking_for_all(function, arguments));
    if (Block const* block = std::get_if<Block>(&result))
        return block->numbers;
    ADD_FAILURE() << name << " gave no block";
    return {};
}

inline double number(std::string_view name, std::vector<Value> const& arguments) {
    Outcome const result = outcome(name, arguments);
    if (double const* value = std::get_if<double>(&result))
        return *value;
    ADD_FAILURE() << name << " gave no number";
    return absent;
}

/// Why nothing came out; Reason::none when something did.
inline Failure refusal(std::string_view name, std::vector<Value> const& arguments) {
    Outcome const result = outcome(name, arguments);
    Failure const* const why = std::get_if<Failure>(&result);
    return why != nullptr ? *why : Failure{};
}

/// Runs with exactly this mean and standard deviation, but for rounding: half of them below, half above.
inline std::vector<double> runs_with(std::size_t count, double mean, double deviation) {
    double const distance = count % 2 == 0 ? deviation * std::sqrt(double(count - 1) / double(count)) : deviation;
    std::vector<double> runs;
    for (std::size_t i = 0; i < count / 2; ++i) {
        runs.push_back(mean - distance);
        runs.push_back(mean + distance);
    }
    if (count % 2 != 0)
        runs.push_back(mean);
    return runs;
}

} // namespace hearthcell::tests
