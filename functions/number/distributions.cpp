#include "functions/number/distributions.hpp"

// What Boost calls inside itself without the policy below must not throw either: the message of such an exception would
// be written through a stream with the process's locale.
#define BOOST_MATH_DOMAIN_ERROR_POLICY ignore_error
#define BOOST_MATH_POLE_ERROR_POLICY ignore_error
#define BOOST_MATH_OVERFLOW_ERROR_POLICY ignore_error
#define BOOST_MATH_EVALUATION_ERROR_POLICY ignore_error
#define BOOST_MATH_ROUNDING_ERROR_POLICY ignore_error
#define BOOST_MATH_INDETERMINATE_RESULT_ERROR_POLICY ignore_error
// Boost's root finder includes <iostream>, for its own debugging alone. Left out here, as if it had been there already: it
// would start the streams when the add-in is loaded, and these know files and locales.
#define _GLIBCXX_IOSTREAM 1
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/non_central_t.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

#include <cmath>

namespace hearthcell {
namespace {

namespace rules = boost::math::policies;

// Errors come back as values, never as exceptions or in errno. Plain double arithmetic: long double differs between
// processors, and these cells are called by the thousand.
using Quietly =
    rules::policy<rules::domain_error<rules::ignore_error>, rules::pole_error<rules::ignore_error>,
                  rules::overflow_error<rules::ignore_error>, rules::underflow_error<rules::ignore_error>,
                  rules::denorm_error<rules::ignore_error>, rules::rounding_error<rules::ignore_error>,
                  rules::evaluation_error<rules::ignore_error>, rules::indeterminate_result_error<rules::ignore_error>,
                  rules::promote_float<false>, rules::promote_double<false>>;
using Normal = boost::math::normal_distribution<double, Quietly>;
using ChiSquared = boost::math::chi_squared_distribution<double, Quietly>;
using StudentsT = boost::math::students_t_distribution<double, Quietly>;
using NoncentralT = boost::math::non_central_t_distribution<double, Quietly>;

} // namespace

double normal_between(double low, double high) {
    if (low > 0)
        return normal_between(-high, -low);
    return boost::math::cdf(Normal(), high) - boost::math::cdf(Normal(), low);
}

double normal_exceeded(double beyond) {
    return boost::math::quantile(boost::math::complement(Normal(), beyond));
}

double chi_square_exceeded(double beyond, double degrees_of_freedom) {
    return boost::math::quantile(boost::math::complement(ChiSquared(degrees_of_freedom), beyond));
}

double t_exceeded(double beyond, double degrees_of_freedom) {
    return boost::math::quantile(boost::math::complement(StudentsT(degrees_of_freedom), beyond / 2));
}

double probability_beyond(double t, double degrees_of_freedom) {
    return 2 * boost::math::cdf(boost::math::complement(StudentsT(degrees_of_freedom), std::fabs(t)));
}

double probability_beyond(double t, double degrees_of_freedom, double noncentrality) {
    // Certain to all digits: t is Z/W with Z above noncentrality - 9 and, from two degrees of freedom on, W below 10,
    // but for a chance of 1e-18. Boost would sum for a twentieth of a second here, and in the end throw.
    if (noncentrality > 10 * t + 9)
        return 1;
    NoncentralT const distribution(degrees_of_freedom, noncentrality);
    return boost::math::cdf(boost::math::complement(distribution, t)) + boost::math::cdf(distribution, -t);
}

} // namespace hearthcell
