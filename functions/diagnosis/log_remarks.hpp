#pragma once
// What EXPLAIN adds to the results of the log functions: what only their kernels know.

#include "functions/contract/kernel.hpp"

namespace hearthcell::diagnosis {

Remarks remark_on_time_at(Given const& given, Language language);
Remarks remark_on_boil_time(Given const& given, Language language);
Remarks remark_on_heating_rate(Given const& given, Language language);
Remarks remark_on_time_mean(Given const& given, Language language);
Remarks remark_on_heat_gain(Given const& given, Language language);
Remarks remark_on_heat_loss(Given const& given, Language language);
Remarks remark_on_forecast(Given const& given, Language language);

} // namespace hearthcell::diagnosis
