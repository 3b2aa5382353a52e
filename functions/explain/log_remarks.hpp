#pragma once
// What EXPLAIN adds to the results of the log functions: what only their kernels know.

#include "functions/catalogue/kernel.hpp"

#include <string>

namespace hearthcell {

std::vector<std::string> remarks_on_time_at(Given const& given);
std::vector<std::string> remarks_on_boil_time(Given const& given);
std::vector<std::string> remarks_on_heating_rate(Given const& given);
std::vector<std::string> remarks_on_heat_gain(Given const& given);
std::vector<std::string> remarks_on_heat_loss(Given const& given);
std::vector<std::string> remarks_on_forecast(Given const& given);

} // namespace hearthcell
