#include "extension/archive/recalculation/by_methods.hpp"

#include "extension/archive/recalculation/cells_by_place.hpp"
#include "extension/archive/recalculation/formula_cells.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/defined.hpp"
#include "extension/sharing/writable.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>

#include <algorithm>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_formulas = 20'000; // written four times each

/// The formulas that take a method; none where one of them cannot be given another.
std::map<Place, std::string> formulas_with_methods(office::Document const& workbook) {
    std::map<Place, std::string> found;
    for (formulas::Definition const& name : sharing::read_defined(workbook.model()).names)
        if (with_method(name.content, methods[0]))
            return {};
    bool possible = true;
    visit_formulas(workbook, [&](Place const& place, Value const&, Formula const& formula) {
        std::string const& text = formula();
        if (text.find("STOVE.") == std::string::npos || !with_method(text, methods[0]))
            return;
        possible = possible && !text.starts_with('{') && found.size() < most_formulas;
        if (possible)
            found[place] = text;
    });
    return possible ? found : std::map<Place, std::string>();
}

/// Lifts the protection of sheets meanwhile.
class Unlocked {
public:
    Unlocked(office::Document const& workbook, std::map<Place, std::string> const& formulas) {
        Reference<css::container::XIndexAccess> const sheets(workbook.model()->getSheets(), UNO_QUERY_THROW);
        for (auto const& [place, formula] : formulas)
            if (sheets_.empty() || last_ != place.sheet) {
                last_ = place.sheet;
                sheets_.push_back(std::make_unique<sharing::UnprotectedSheet>(
                    Reference<css::sheet::XSpreadsheet>(sheets->getByIndex(last_), UNO_QUERY_THROW)));
            }
    }
    [[nodiscard]] bool all() const {
        return std::all_of(sheets_.begin(), sheets_.end(), [](auto const& sheet) { return sheet->is_writable(); });
    }

private:
    std::vector<std::unique_ptr<sharing::UnprotectedSheet>> sheets_;
    int last_ = -1;
};

} // namespace

std::map<Place, ByMethods> by_methods(office::Document const& workbook, std::set<Place> const& cells) {
    auto const as_it_is = formulas_with_methods(workbook);
    if (as_it_is.empty())
        return {};
    return office::asking("computing by each method", [&] {
        std::map<Place, ByMethods> results;
        Unlocked const unlocked(workbook, as_it_is);
        if (!unlocked.all())
            return results;
        sharing::Calculation const waiting(workbook.model(), false);
        Reference<css::sheet::XCalculatable> const document(workbook.model(), UNO_QUERY_THROW);
        for (std::size_t method = 0; method < methods.size(); ++method) {
            auto changed = as_it_is;
            for (auto& [place, formula] : changed)
                formula = with_method(formula, methods.at(method)).value_or(formula);
            write_formulas(workbook, changed);
            document->calculate();
            for (auto const& [place, value] : values_at(workbook, cells))
                if (auto const* const number = std::get_if<double>(&value))
                    results[place].at(method) = *number;
        }
        write_formulas(workbook, as_it_is);
        document->calculate();
        return results;
    });
}

} // namespace hearthcell::archive
