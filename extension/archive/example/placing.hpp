#pragma once
// Where the cells of an example sheet go on another sheet, by labels and by the old results beside them, and their
// formulas as they are to stand there; not yet how far they go, nor over what.

#include "extension/archive/example/carrier.hpp"
#include "extension/archive/example/example.hpp"

#include <list>

namespace hearthcell::archive {

struct FitWish {
    std::size_t example = 0;
    Example const& workbooks;
    ExampleSheet const& sheet;
    bool partly = false;
};

struct Step { // from the first of its kind
    int rows = 0, columns = 0;
};
LabelledSheet::Where by(LabelledSheet::Where const& from, Step const& step);

/// A formula of the example on this sheet.
struct Placed {
    using Where = LabelledSheet::Where;
    ExampleFormula const& example;
    Where there;
    std::optional<Where> result;         // where the old result stands
    std::optional<std::string> old_text; // of that result, as it should read; nothing: that cannot be told
    CarriedFormula carried;
    std::vector<Step> steps = {};
    bool is_single = false;
};

class Placing {
public:
    using Where = LabelledSheet::Where;

    /// All must live as long.
    Placing(FitWish const& wish, SeenWorkbook const& target, int sheet);

    std::vector<std::pair<Where, Where>> words; // that are carried, in their order, and where they go
    std::list<Placed> formulas;
    std::vector<Refused> refused;

    [[nodiscard]] bool is_free_for(ExampleWord const& word, Where const& place) const;
    /// Whether a formula reads any of these cells of the example sheet.
    [[nodiscard]] bool reads_any(CarriedFormula const& formula, std::set<Where> const& cells) const;
    [[nodiscard]] Carrier const& carrier() const { return carrier_; }

private:
    void refuse(std::string why) { refused.push_back({std::move(why)}); }
    [[nodiscard]] std::variant<Where, Refused> place_of_new(Where const& cell) const;
    [[nodiscard]] std::variant<Where, Refused> place_beside(ExampleFormula const& formula, Where const& result) const;
    [[nodiscard]] bool names_a_formula(ExampleWord const& word) const;
    void place_words();
    void place_formulas();
    void carry_formulas();

    FitWish const& wish_;
    SeenWorkbook const& old_;
    SeenWorkbook const& target_;
    int const sheet_;
    LabelledSheet const& before_;
    LabelledSheet const& now_;
    Carrier carrier_;
};

} // namespace hearthcell::archive
