#pragma once
// Which cells of its workbook a formula reads.

#include "extension/formulas/names.hpp"
#include "extension/formulas/place.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/table.hpp"

#include <map>
#include <string>
#include <vector>

namespace hearthcell::formulas {

class Reads {
public:
    /// The sheets in their order. What is given here must live as long.
    Reads(std::vector<std::string> const& sheets, Names const& names, std::vector<Table> const& tables);

    /// As far as they stand in the formula of a cell, or in the names that it uses: not what INDIRECT or OFFSET make of
    /// them.
    [[nodiscard]] std::vector<Range> of(std::string_view formula, Place const& cell) const;

    /// What a name stands for in the formula of a cell, where that is a number and nothing else.
    [[nodiscard]] std::optional<double> number_named(Token const& name, Place const& cell) const;

private:
    /// A formula, or what a name stands for, as it is seen from a cell.
    struct Seen {
        std::vector<Token> const& tokens;
        Place cell;
        Definition const* definition = nullptr;
    };

    [[nodiscard]] std::string_view sheet_of(Seen const& seen) const;
    [[nodiscard]] std::optional<std::size_t> name_meant(Seen const& seen, Token const& token) const;
    [[nodiscard]] std::vector<Range> cells_at(Seen const& seen, Token const& token) const;
    [[nodiscard]] std::vector<Range> cells_at(Seen const& seen, Reference const& reference) const;
    [[nodiscard]] std::optional<Range> between(Seen const& seen, std::size_t first, std::size_t last) const;

    std::vector<std::string> const& sheets_;
    std::map<std::string, int> sheet_numbers_; // by folded names
    Names const& names_;
    std::map<std::string, Table const*> tables_; // by folded names
};

} // namespace hearthcell::formulas
