#pragma once
// What a document holds, as far as its check looks at it: read once, and then nothing more is asked of it.

#include "extension/checking/rules.hpp"
#include "extension/formulas/place.hpp"
#include "extension/sharing/defined.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace hearthcell::checking {

using formulas::Range;

/// Calc's code of an error.
struct CellError {
    int code = 0;
    bool operator==(CellError const&) const = default;
};

/// A cell that is not empty.
struct Content {
    std::variant<double, std::string, CellError> value;
    std::string formula; // with =, or {= of an array formula; empty where the value was typed
};

struct Contents {
    sharing::Defined defined;
    std::map<Place, Content> cells; // sheet by sheet, row by row
    std::vector<Rule> rules;
    std::vector<std::pair<std::string, com::sun::star::uno::Any>> settings; // of how formulas are worked out
    sharing::Held held;
    bool too_large = false; // then nothing else is there

    [[nodiscard]] Content const* at(Place const& place) const {
        auto const found = cells.find(place);
        return found == cells.end() ? nullptr : &found->second;
    }
};

/// Cells that are read at the most: as many as a log of a day each second has, ten times over.
inline constexpr std::int64_t most_cells = 1'000'000;

/// Bytes of their texts and formulas that are read at the most.
inline constexpr std::size_t most_text = 100'000'000;

/// Asks nothing to be recalculated and changes nothing. UNO's exceptions pass.
Contents read_contents(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

} // namespace hearthcell::checking
