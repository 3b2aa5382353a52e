#include "extension/archive/example/plan.hpp"

#include <algorithm>
#include <functional>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_named = 10;

/// The example with its constants as they are for one workbook.
ExampleSheet with_values(ExampleSheet sheet, std::vector<OtherValue> const& values, std::string const& relative) {
    for (ExampleFormula& formula : sheet.formulas)
        formula.text = with_other_values(formula.text, values, relative);
    return sheet;
}

/// How much of the labels of a sheet another one has.
double likeness(LabelledSheet const& one, LabelledSheet const& other) {
    std::size_t both = 0;
    for (std::string const& word : one.words())
        both += other.places(word).empty() ? 0 : 1;
    return one.words().empty() ? 0 : double(both) / double(one.words().size());
}

class Planning {
public:
    Planning(ExampleSet const& set, std::string const& relative, SeenWorkbook const& target)
        : set_(set), relative_(relative), target_(target) {}

    Plan result() {
        for (int sheet = 0; sheet < int(target_.size()); ++sheet)
            plan(sheet);
        list_refused();
        return std::move(plan_);
    }

private:
    struct RefusedSheet {
        int sheet;
        double likeness;
        std::string why;
    };

    void plan(int sheet) {
        if (is_blank(sheet))
            return;
        std::optional<Refused> nearest;
        double most = -1;
        std::optional<Fit> whole, partly;
        for (std::size_t number = 0; number < set_.examples.size(); ++number) {
            Example const& example = *set_.examples[number];
            for (ExampleSheet const& one : example.sheets()) {
                ExampleSheet const with_own_values = with_values(one, set_.other_values, relative_);
                auto found = fit({number, example, with_own_values, set_.partly}, target_, sheet);
                if (auto* const fits = std::get_if<Fit>(&found)) {
                    if (fits->not_carried.empty()) {
                        if (whole && !is_same(*whole, *fits))
                            return refuse_two(sheet, *whole, *fits);
                        whole = whole ? std::move(whole) : std::optional(std::move(*fits));
                    } else if (!partly || fits->writings.size() > partly->writings.size())
                        partly = std::move(*fits);
                } else if (double const like = likeness(example.old().sheet(one.number), target_.sheet(sheet));
                           like > most) {
                    most = like;
                    nearest = std::get<Refused>(found);
                }
            }
        }
        if (whole)
            return take(std::move(*whole));
        if (partly)
            return take(std::move(*partly));
        if (nearest && !is_other_sheet_of_an_example(sheet))
            refused_.push_back({sheet, most, nearest->why});
    }

    static bool is_same(Fit const& one, Fit const& other) {
        return std::ranges::equal(one.writings, other.writings, [](Writing const& a, Writing const& b) {
            return a.place == b.place && a.text == b.text;
        });
    }

    void refuse_two(int sheet, Fit const& one, Fit const& other) {
        auto const name = [&](Fit const& fit) {
            return "example " + std::to_string(fit.example + 1) + ", sheet '" +
                   set_.examples[fit.example]->old().name(fit.old_sheet) + "'";
        };
        plan_.problems.push_back({Reason::another_layout, target_.name(sheet) + ": two examples fit it that differ: " +
                                                              name(one) + ", and " + name(other)});
    }

    /// Not those without formulas that have little in common with any example, where something else is carried.
    void list_refused() {
        constexpr double little = 0.3;
        std::ranges::stable_sort(refused_, std::greater(), &RefusedSheet::likeness);
        for (RefusedSheet const& one : refused_)
            if (one.likeness >= little || has_formulas(one.sheet) || plan_.fits.empty())
                plan_.problems.push_back({Reason::another_layout, target_.name(one.sheet) + ": " + one.why});
    }

    void take(Fit fit) {
        std::string left;
        for (std::size_t at = 0; at < std::min(most_named, fit.left.size()); ++at)
            left += (at == 0 ? "" : "; ") + cell_name(fit.left[at].place) + " (" + fit.left[at].why + ")";
        if (fit.left.size() > most_named)
            left += " and " + std::to_string(fit.left.size() - most_named) + " more";
        if (!left.empty())
            plan_.problems.push_back({Reason::left_as_it_was, target_.name(fit.sheet) + ": " + left});
        for (Refused const& refused : fit.not_carried)
            plan_.problems.push_back({Reason::not_carried, target_.name(fit.sheet) + ": " + refused.why});
        plan_.fits.push_back(std::move(fit));
    }

    [[nodiscard]] bool has_formulas(int sheet) const {
        return std::ranges::any_of(target_.contents().cells(), [&](ContentCell const& cell) {
            return cell.place.sheet == sheet && cell.is_result;
        });
    }

    [[nodiscard]] bool is_blank(int sheet) const {
        return std::ranges::none_of(target_.contents().cells(), [&](ContentCell const& cell) {
            return cell.place.sheet == sheet && target_.cell(cell.place) != nullptr;
        });
    }

    /// A sheet such as that of the site, into which no example writes.
    [[nodiscard]] bool is_other_sheet_of_an_example(int sheet) const {
        constexpr double much = 0.6;
        return std::ranges::any_of(set_.examples, [&](auto const& example) {
            int const own = example->old().number_of(target_.name(sheet));
            bool const is_carried =
                std::ranges::any_of(example->sheets(), [&](ExampleSheet const& one) { return one.number == own; });
            return own >= 0 && !is_carried && likeness(example->old().sheet(own), target_.sheet(sheet)) >= much;
        });
    }

    ExampleSet const& set_;
    std::string const& relative_;
    SeenWorkbook const& target_;
    Plan plan_;
    std::vector<RefusedSheet> refused_;
};

} // namespace

Plan plan_for(ExampleSet const& set, std::string const& relative, SeenWorkbook const& target) {
    return Planning(set, relative, target).result();
}

bool are_labels_of(Contents const& contents, std::vector<std::vector<Label>> const& labels, SameWords const& same) {
    if (labels.size() != contents.sheets().size())
        return false;
    for (std::size_t sheet = 0; sheet < labels.size(); ++sheet)
        for (Label const& label : labels[sheet]) {
            ContentCell const* const cell = contents.find({int(sheet), label.row, label.column});
            auto const* const text = cell == nullptr ? nullptr : std::get_if<std::string>(&cell->value);
            if (text == nullptr || label_of(label.row, label.column, *text, same).key != label.key)
                return false;
        }
    return true;
}

} // namespace hearthcell::archive
