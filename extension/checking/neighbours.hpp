#pragma once
// Formulas held against those above and below them.

#include "extension/checking/questions.hpp"
#include "extension/checking/remark.hpp"

#include <map>
#include <unordered_map>

namespace hearthcell::checking {

/// The formulas of each column, so that those which were filled down are known as the same.
class Columns {
public:
    /// Whether it is the first of its form.
    bool add(Place const& cell, std::string const& formula);

    struct Entry {
        int row;
        int form; // a number for each form
    };
    using Column = std::vector<Entry>; // downwards

    [[nodiscard]] std::map<std::pair<int, int>, Column> const& all() const { return columns_; } // by sheet and column
    /// The number of a formula's form as it is seen from a cell; nothing where no formula of the document has that.
    [[nodiscard]] std::optional<int> form(std::string const& formula, int column, int row) const;

private:
    std::unordered_map<std::string, int> forms_;
    std::map<std::pair<int, int>, Column> columns_;
};

/// What stands out: a formula that reads another row than those around it, a result typed over, an argument unlike all
/// others in its column, one result over two methods.
std::vector<Remark> remarks_by_neighbours(Contents const& contents, Questions const& questions, Columns const& columns,
                                          Language language);

} // namespace hearthcell::checking
