#include "functions/diagnosis/correction_remarks.hpp"

#include "functions/kernels/corrected_reading.hpp"
#include "functions/words/sentences.hpp"
#include "functions/words/speaker.hpp"

namespace hearthcell::diagnosis {
namespace {

// From where on a correction is remarked. Common practice, no source.
constexpr double far_outside = 0.5; ///< of the span of the check points
constexpr double least_slope = 0.8, greatest_slope = 1.25;

std::string on_line(Speaker const& say, kernels::Correction const& correction, double reading) {
    kernels::Line const& line = correction.line;
    if (correction.points < 3)
        return say(sentences::two_check_points);
    double const at_the_middle = line.scatter / std::sqrt(double(correction.points));
    double const uncertainty = std::hypot(at_the_middle, line.slope_uncertainty * (reading - line.minute));
    return say(sentences::line_of_check_points, {{"count", std::to_string(correction.points)},
                                                 {"scatter", say.number(line.scatter)},
                                                 {"uncertainty", say.number(uncertainty)}});
}

} // namespace

Remarks remark_on_correction(Given const& given, Language language) {
    Speaker const say(language);
    kernels::Correction const correction = kernels::correction_of(given);
    Remarks remarks;
    if (correction.line.slope < least_slope || correction.line.slope > greatest_slope)
        remarks.odd.push_back(
            say(sentences::check_points_out_of_scale, {{"slope", say.number(correction.line.slope)}}));
    if (correction.spans_outside > far_outside)
        remarks.odd.push_back(say(sentences::beyond_check_points));
    remarks.said.push_back(correction.is_offset ? say(sentences::only_an_offset)
                                                : on_line(say, correction, given.numbers[0]));
    return remarks;
}

} // namespace hearthcell::diagnosis
