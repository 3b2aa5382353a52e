#include "extension/archive/what_goes_where.hpp"

#include "extension/archive/example/constants.hpp"
#include "extension/archive/records/csv.hpp"
#include "extension/archive/records/report_file.hpp"
#include "extension/formulas/our_functions.hpp"

#include <algorithm>
#include <numeric>

namespace hearthcell::archive {
namespace {

using Counts = std::vector<std::size_t>; // of each workbook: sheets

class Listing {
public:
    Listing(std::filesystem::path const& output, ExampleSet const& set, std::vector<Input> const& workbooks)
        : set_(set), workbooks_(workbooks), carried_(output / "carried.csv"), constants_(output / "constants.csv"),
          pairs_(output / "pairs.csv") {
        carried_.add(csv_row({"example", "sheet", "cell", "kind", "before", "after", "note"}));
        constants_.add(csv_row({"example", "sheet", "cell", "function", "argument", "value", "sheets"}));
        pairs_.add(csv_row({"new", "old"}));
    }

    std::string write(std::vector<Counts> const& sheets_by_workbook) {
        auto counts = sheets_by_workbook.begin();
        for (std::size_t number = 0; number < set_.examples.size(); ++number) {
            Example const& example = *set_.examples[number];
            example_ = std::to_string(number + 1);
            for (Difference const& one : example.differences())
                carried_.add(csv_row({example_, example.old().name(one.sheet), name_of(one.cell), one.kind,
                                      formulas::as_shown(one.before), formulas::as_shown(one.after), one.note}));
            for (ExampleSheet const& sheet : example.sheets()) {
                for (ExampleFormula const& formula : sheet.formulas)
                    list(example.old().name(sheet.number), formula, *counts);
                ++counts;
            }
        }
        for (ReportFile* const file : {&carried_, &constants_, &pairs_})
            file->put_in_place();
        return std::move(to_confirm_);
    }

private:
    void list(std::string const& sheet, ExampleFormula const& formula, Counts const& counts) {
        if (formula.result)
            pairs_.add(csv_row({sheet + "." + name_of(formula.cell), sheet + "." + name_of(*formula.result)}));
        for (Constant const& one : constants_in(formula.text))
            if (one.is_factor)
                confirm("factors of units stand in the formulas themselves: see carried.csv");
            else
                for (auto const& [value, sheets] : values_of(one, counts)) {
                    std::string const into = std::to_string(sheets);
                    constants_.add(
                        csv_row({example_, sheet, name_of(formula.cell), one.function, one.argument, value, into}));
                    confirm(value + (one.argument.empty() ? "" : " as " + one.argument) +
                            (one.function.empty() ? "" : " of STOVE." + one.function) + " goes into " + into +
                            (sheets == 1 ? " sheet" : " sheets"));
                }
        std::string const everywhere = std::to_string(std::accumulate(counts.begin(), counts.end(), std::size_t{}));
        for (Assumption const& one : assumptions_of(formula.text)) {
            constants_.add(
                csv_row({example_, sheet, name_of(formula.cell), one.function, one.argument, one.holds, everywhere}));
            confirm(one.argument + " is taken as " + one.holds);
        }
    }

    /// The values that a constant has, its own first, and into how many sheets each goes.
    std::vector<std::pair<std::string, std::size_t>> values_of(Constant const& constant, Counts const& counts) const {
        std::vector<std::pair<std::string, std::size_t>> values{{constant.value, 0}};
        for (std::size_t workbook = 0; workbook < counts.size(); ++workbook) {
            OtherValue const* const other =
                constant.is_whole ? other_value_of(constant.argument, set_.other_values, workbooks_[workbook].relative)
                                  : nullptr;
            std::string const& value = other == nullptr ? constant.value : other->value;
            auto known = std::ranges::find(values, value, &std::pair<std::string, std::size_t>::first);
            if (known == values.end())
                known = values.insert(known, {value, 0});
            known->second += counts[workbook];
        }
        return values;
    }

    /// Once, in however many formulas it stands.
    void confirm(std::string const& words) {
        std::string const line = "  " + words + "\n";
        if (to_confirm_.find(line) == std::string::npos)
            to_confirm_ += line;
    }

    ExampleSet const& set_;
    std::vector<Input> const& workbooks_;
    ReportFile carried_, constants_, pairs_;
    std::string example_; // its number, as it is written
    std::string to_confirm_;
};

} // namespace

std::string write_what_goes_where(std::filesystem::path const& output, ExampleSet const& set,
                                  std::vector<Input> const& workbooks, std::vector<Counts> const& sheets_by_workbook) {
    return Listing(output, set, workbooks).write(sheets_by_workbook);
}

} // namespace hearthcell::archive
