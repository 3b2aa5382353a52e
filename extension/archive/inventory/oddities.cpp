// What is odd in a workbook: results typed over, numbers that are texts, stored errors.

#include "extension/archive/inventory/look.hpp"
#include "extension/archive/inventory/words.hpp"
#include "extension/formulas/moved.hpp"

#include <map>
#include <optional>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_named = 10;
constexpr int longest_gap = 5; // results in a row that were typed over

/// Cells of one kind: the first ones by name, and how many there are.
class Cells {
public:
    explicit Cells(Contents const& contents) : contents_(contents) {}

    void add(Place const& place) {
        if (number_++ < most_named)
            named_ +=
                (named_.empty() ? "" : " ") + contents_.sheets()[std::size_t(place.sheet)] + "." + cell_name(place);
    }
    void report(Reason reason, std::vector<Problem>& problems) const {
        if (number_ > 0)
            problems.push_back(
                {reason,
                 named_ + (number_ > most_named ? " and " + std::to_string(number_ - most_named) + " more" : "")});
    }

private:
    Contents const& contents_;
    std::string named_;
    std::size_t number_ = 0;
};

bool is_typed_number(ContentCell const* cell) {
    return cell != nullptr && !cell->is_result && std::holds_alternative<double>(cell->value);
}

/// Numbers between two cells of a column that hold the same formula.
void find_typed_over(Contents const& contents, Cells& found) {
    struct Last { // formula of a column
        int row = 0;
        std::string formula;
    };
    std::map<std::pair<int, int>, Last> columns; // by sheet and column
    for (ContentCell const& cell : contents.cells()) {
        if (cell.formula.empty())
            continue;
        std::string relative = formulas::relative_to(cell.place, cell.formula);
        auto const [last, is_first] = columns.try_emplace({cell.place.sheet, cell.place.column});
        int const gap = cell.place.row - last->second.row - 1;
        if (!is_first && gap > 0 && gap <= longest_gap && last->second.formula == relative) {
            bool all_typed = true;
            for (int row = last->second.row + 1; row < cell.place.row && all_typed; ++row)
                all_typed = is_typed_number(contents.find({cell.place.sheet, row, cell.place.column}));
            for (int row = last->second.row + 1; row < cell.place.row && all_typed; ++row)
                found.add({cell.place.sheet, row, cell.place.column});
        }
        last->second = {cell.place.row, std::move(relative)};
    }
}

/// Above or below a number, and a text that reads as one.
bool is_text_for_number(ContentCell const& cell, Contents const& contents) {
    auto const* const text = cell.is_result ? nullptr : std::get_if<std::string>(&cell.value);
    auto const is_number = [&](int row) {
        ContentCell const* const other = contents.find({cell.place.sheet, row, cell.place.column});
        return other != nullptr && std::holds_alternative<double>(other->value);
    };
    return text != nullptr && reads_as_number(*text) &&
           (is_number(cell.place.row - 1) || is_number(cell.place.row + 1));
}

} // namespace

std::vector<Problem> oddities_in(Contents const& contents) {
    Cells typed_over(contents), texts(contents), errors(contents);
    find_typed_over(contents, typed_over);
    for (ContentCell const& cell : contents.cells())
        if (is_text_for_number(cell, contents))
            texts.add(cell.place);
        else if (cell.is_result && std::holds_alternative<Fault>(cell.value))
            errors.add(cell.place);
    std::vector<Problem> problems;
    typed_over.report(Reason::typed_over, problems);
    texts.report(Reason::text_for_number, problems);
    errors.report(Reason::stored_errors, problems);
    return problems;
}

} // namespace hearthcell::archive
