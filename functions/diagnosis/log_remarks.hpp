#pragma once
// What EXPLAIN adds to the results of the log functions: what only their kernels know.

#include "functions/contract/values.hpp"

#include <span>
#include <string>

namespace hearthcell {

std::vector<std::string> remark_on_time_at(std::span<Value const> values);
std::vector<std::string> remark_on_boil_time(std::span<Value const> values);
std::vector<std::string> remark_on_heating_rate(std::span<Value const> values);
std::vector<std::string> remark_on_heat_gain(std::span<Value const> values);
std::vector<std::string> remark_on_heat_loss(std::span<Value const> values);
std::vector<std::string> remark_on_forecast(std::span<Value const> values);

} // namespace hearthcell
