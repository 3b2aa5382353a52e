#include "functions/catalogue/arguments.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/kernels/comparison.hpp"
#include "functions/kernels/outlier.hpp"
#include "functions/kernels/performance_tier.hpp"
#include "functions/kernels/sample_size.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace sources;

constexpr Argument values{.name = "values",
                          .measure = Measure::ratio,
                          .low = -1e12,
                          .high = 1e12,
                          .help = "The same result of every run, in a row or a column; an empty cell is no run",
                          .kind = Kind::column};
constexpr Argument baseline_values =
    named(values, "baseline values", "Results of the runs to compare with, in a row or a column");
constexpr Argument new_values = named(values, "new values", "Results of the new runs, in a row or a column");
constexpr Argument confidence{.name = "confidence",
                              .measure = Measure::confidence,
                              .low = 0.5,
                              .high = 0.9999,
                              .help = "How sure the statement has to be, both sides together",
                              .optional = true,
                              .fallback = 0.95};
constexpr Argument pooled_variance{.name = "pooled variance",
                                   .measure = Measure::ratio,
                                   .low = 0,
                                   .high = 1,
                                   .help = "TRUE where both series may be taken to scatter alike",
                                   .optional = true,
                                   .fallback = 0,
                                   .absent_means = "FALSE, each series has its own variance"};

constexpr Part level{"level", Measure::confidence};
constexpr Part lower{"lower limit"}, upper{"upper limit"}, p{"p"}, degrees_of_freedom{"degrees of freedom"};

// Invented figures, not measurements.
constexpr std::array<double, 6> base{1020, 980, 1055, 1010, 945, 990};
constexpr std::array<double, 6> improved{640, 700, 655, 610, 690, 665};
constexpr std::array<double, 3> base_3{1020, 980, 1055};
constexpr std::array<double, 3> improved_3{640, 700, 655};
constexpr std::array<double, 8> with_gaps{640, blank, 700, 655, blank, 610, 690, 665};
constexpr std::array<double, 2> wide{20, 900}, narrow{400, 420};
constexpr std::array<double, 6> about_zero{-1, 1, -2, 2, -3, 3};
constexpr std::array<double, 1> one_run{640};
constexpr std::array<double, 3> all_alike{0.1, 0.1, 0.1};
constexpr std::array<double, 7> one_apart{26.1, 25.8, blank, 26.4, 25.9, 31.0, 26.2};
constexpr std::array<double, 10> sleep_1{0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
constexpr std::array<double, 10> sleep_2{1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};

constexpr std::array<Expected, 7> series_at_95{
    {{6, 0}, {660, 1e-12}, {33.0151480, 5e-8}, {0.0500230, 5e-8}, {625.35273, 5e-6}, {694.64727, 5e-6}, {0.95, 0}}};
constexpr std::array<Expected, 7> series_at_90{
    {{6, 0}, {660, 1e-12}, {33.0151480, 5e-8}, {0.0500230, 5e-8}, {632.84042, 5e-6}, {687.15958, 5e-6}, {0.9, 0}}};
constexpr std::array<Expected, 7> series_about_zero{{{6, 0},
                                                     {0, 0},
                                                     {2.366431913, 5e-10},
                                                     {Error::number},
                                                     {-2.48341798914, 5e-11},
                                                     {2.48341798914, 5e-11},
                                                     {0.95, 0}}};
constexpr std::array<Expected, 6> sleep_difference{{{1.58, 1e-12},
                                                    {-0.205483231, 5e-10},
                                                    {3.365483231, 5e-10},
                                                    {0.0793941402, 5e-11},
                                                    {17.776473516, 5e-10},
                                                    {0.95, 0}}};
constexpr std::array<Expected, 6> pooled_saving{
    {{0.34, 1e-12}, {0.300757170876, 5e-13}, {0.377876149824, 5e-13}, {1.27279127e-8, 5e-17}, {10, 0}, {0.95, 0}}};
constexpr std::array<Expected, 6> own_saving{{{0.34, 1e-12},
                                              {0.301229738013, 5e-13},
                                              {0.377195333999, 5e-13},
                                              {3.16893732e-8, 5e-17},
                                              {9.27686662366, 5e-12},
                                              {0.95, 0}}};
constexpr std::array<Expected, 6> pooled_saving_of_3{{{0.346972176759, 5e-13},
                                                      {0.280013602772, 5e-13},
                                                      {0.410062828319, 5e-13},
                                                      {0.000232989724573, 5e-16},
                                                      {4, 0},
                                                      {0.95, 0}}};
constexpr std::array<Expected, 6> own_saving_of_3{{{0.346972176759, 5e-13},
                                                   {0.280519491918, 5e-13},
                                                   {0.40864072355, 5e-12},
                                                   {0.000319930611139, 5e-16},
                                                   {3.78618085034, 5e-12},
                                                   {0.95, 0}}};
constexpr std::array<Expected, 6> unbounded_saving{{{0.108695652174, 5e-13},
                                                    {Error::not_available},
                                                    {Error::not_available},
                                                    {0.927966017456, 5e-13},
                                                    {1.00130038637, 5e-12},
                                                    {0.95, 0}}};

constexpr Function functions[] = {
    {.name = "SERIES",
     .stored = "series",
     .summary = "Mean and scatter of repeated runs, and limits for their true mean",
     .arguments = {values, confidence},
     .result = {.name = "series",
                .parts = {{"n"},
                          {"mean"},
                          {"standard deviation"},
                          {"coefficient of variation", Measure::share},
                          lower,
                          upper,
                          level}},
     .kernel = Columnar{kernels::series},
     .equations = {"mean ± t(n - 1) s/√n, both sides; s from n - 1"},
     .sources = {student_limits},
     .examples = {{{improved}, series_at_95, "Recomputed with R 4.2"},
                  {{improved, 0.9}, series_at_90, "Recomputed with R 4.2"},
                  {{with_gaps}, series_at_95, "Empty cells are no runs"},
                  {{about_zero}, series_about_zero, "A share of a mean of 0 is none; the rest recomputed with R 4.2"},
                  {{one_run}, {Error::not_available}, "One run does not scatter"}}},
    {.name = "DIFFERENCE",
     .stored = "difference",
     .summary = "Difference of two series of runs, new less baseline, and whether it is real",
     .arguments = {baseline_values, new_values, confidence},
     .result = {.name = "difference", .parts = {{"difference"}, lower, upper, p, degrees_of_freedom, level}},
     .kernel = Columnar{kernels::difference},
     .equations = {"Welch's t test: each series has its own variance, degrees of freedom by Satterthwaite"},
     .sources = {welch},
     .examples = {{{sleep_1, sleep_2}, sleep_difference, "Student's sleep data as R ships them; R's t.test"},
                  {{all_alike, all_alike}, {Error::number}, "No scatter at all"},
                  {{base, one_run}, {Error::not_available}, "One run does not scatter"}}},
    {.name = "SAVING",
     .stored = "saving",
     .summary = "Share that the new runs use less than the baseline; negative when they use more",
     .arguments = {baseline_values, new_values, confidence, pooled_variance},
     .result = {.name = "saving",
                .parts = {{"saving", Measure::share},
                          {"lower limit", Measure::share},
                          {"upper limit", Measure::share},
                          p,
                          degrees_of_freedom,
                          level}},
     .kernel = Columnar{kernels::saving},
     .equations =
         {"1 - Q, Q = new mean/baseline mean; limits by Fieller's theorem, degrees of freedom by Satterthwaite "
          "for new - Q baseline, or n1 + n2 - 2 with a pooled variance"},
     .sources = {fieller, welch},
     .examples = {{{base, improved, omitted, 1}, pooled_saving, "R 4.2, the t test inverted by root finding"},
                  {{base, improved}, own_saving, "R 4.2, the t test inverted by root finding"},
                  {{base_3, improved_3, omitted, 1}, pooled_saving_of_3, "R 4.2, the t test inverted by root finding"},
                  {{base_3, improved_3}, own_saving_of_3, "R 4.2, the t test inverted by root finding"},
                  {{wide, narrow}, unbounded_saving, "A baseline that could be 0 has no bounded limits"},
                  {{about_zero, improved}, {Error::number}, "No share of a mean of 0"}}},
    {.name = "RUNSNEEDED",
     .stored = "runsNeeded",
     .summary = "Runs of each of two variants that are needed to show a change",
     .arguments = {{.name = "coefficient of variation",
                    .measure = Measure::share,
                    .low = 0.001,
                    .high = 1,
                    .help = "Scatter of one run as a share of the mean, see STOVE.SERIES"},
                   {.name = "smallest change",
                    .measure = Measure::share,
                    .low = 0.001,
                    .high = 1,
                    .help = "Smallest change that matters, as a share of the mean"},
                   confidence,
                   {.name = "power",
                    .measure = Measure::confidence,
                    .low = 0.5,
                    .high = 0.9999,
                    .help = "Chance that a change of this size shows",
                    .optional = true,
                    .fallback = 0.8}},
     .result = {"runs of each variant", Measure::ratio, 2, kernels::most_runs},
     .kernel = stepwise<[](double variation, double change, double sure, double power) {
         return kernels::runs_needed(variation, change, sure, power);
     }>,
     .equations = {"the least n with P(|t| > t(2n - 2)) ≥ power, t noncentral by change/variation √(n/2)"},
     .sources = {power_of_t},
     .examples = {{{0.05, 0.1}, {6, 0}, "R 4.2, power.t.test: 5.09"},
                  {{0.1, 0.1, 0.95, 0.9}, {23, 0}, "R 4.2, example of power.t.test: 22.02110"},
                  {{0.1, 0.05}, {64, 0}, "Cohen 1988, effect 0.5: 64; R 4.2: 63.76561"},
                  {{0.15, 0.2}, {10, 0}, "R 4.2, power.t.test"},
                  {{1, 0.001}, {Error::number}, "More than 10000 runs"},
                  {{5, 10}, {Error::number}, "Per cent typed without the sign"}}},
    {.name = "OUTLIER",
     .stored = "outlier",
     .summary = "Which run stands apart from the others, 0 for none",
     .arguments = {values, confidence},
     .result = {"place of the run that stands apart (0: none)", Measure::ratio, 0, 1e9},
     .kernel = Columnar{kernels::outlier},
     .equations = {"Grubbs' test, two-sided: the farthest run against (n - 1)/√n √(t²/(n - 2 + t²))"},
     .sources = {grubbs},
     .examples = {{{one_apart}, {6, 0}, "G 2.0298 above 1.8871, recomputed with R 4.2; the sixth cell"},
                  {{improved}, {0, 0}, "G 1.5145 below 1.8871, recomputed with R 4.2"},
                  {{base_3}, {Error::not_available}, "Three runs tell nothing"}}},
    {.name = "PERFORMANCETIER",
     .stored = "performanceTier",
     .summary = "Tier of the voluntary performance targets, 0 to 5",
     .arguments = {{.name = "measure",
                    .measure = Measure::words,
                    .help = "What was measured: efficiency as a fraction, CO in g/MJ delivered, PM2.5 in mg/MJ "
                            "delivered, safety or durability score",
                    .kind = Kind::choice,
                    .choices = {"efficiency", "CO", "PM2.5", "safety", "durability"}},
                   {.name = "value",
                    .measure = Measure::ratio,
                    .low = 0,
                    .high = 100000,
                    .help = "Result of the standard's own laboratory test, see STOVE.EXPLAIN",
                    .zero_is_doubtful = true}},
     .result = {"tier", Measure::ratio, 0, 5},
     .kernel = stepwise<[](double value, Choice measure) { return kernels::performance_tier(value, measure); }>,
     .equations = {"tiers 1 to 5 from 0.10, 0.20, 0.30, 0.40, 0.50 up",
                   "tiers 1 to 5 at 18.3, 11.5, 7.2, 4.4, 3.0 g/MJ or less",
                   "tiers 1 to 5 at 1031, 481, 218, 62, 5 mg/MJ or less", "tiers 1 to 5 from 60, 68, 77, 86, 95 up",
                   "tiers 1 to 5 below 35, 25, 20, 15, 10"},
     .sources = {iso_tr_19867_3},
     .caution = "A tier holds for a result of the laboratory test of ISO 19867-1 only, and for each measure by itself; "
                "results of other protocols have none.",
     .examples = {{{"efficiency", 0.35}, {3, 0}, "ISO/TR 19867-3:2018, from memory of its table"},
                  {{"CO", 11.507}, {1, 0}, "ISO/TR 19867-3:2018: tier 2 is missed by 0.007"},
                  {{"PM2.5", 62}, {4, 0}, "ISO/TR 19867-3:2018: the limit itself has the tier"},
                  {{"durability", 10}, {4, 0}, "ISO/TR 19867-3:2018: tier 5 is below 10"},
                  {{"efficiency", 35}, {Error::number}, "Per cent typed without the sign"},
                  {{"smoke", 5}, {Error::not_available}, "No such measure"}}},
};

} // namespace

std::span<Function const> repeated_runs() {
    return functions;
}

} // namespace hearthcell
