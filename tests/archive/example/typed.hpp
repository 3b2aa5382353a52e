#pragma once
// Workbooks typed into a test, as the readers of files give them.

#include "extension/archive/example/example.hpp"
#include "extension/archive/example/plan.hpp"

#include <map>
#include <string>
#include <vector>

namespace hearthcell::tests::archive {

/// Cells by name: {"B5", "1640"}, {"B7", "=100-B5/300"}; all else is a word.
using Cells = std::map<std::string, std::string>;
struct TypedSheet {
    std::string name;
    Cells cells;
    std::vector<std::string> merged = {};  // "B2:C2"
    std::vector<std::string> entries = {}; // words that are no labels
};
using Typed = std::vector<TypedSheet>;

/// Such a workbook with all its words as labels, but for entries.
class TypedWorkbook {
public:
    explicit TypedWorkbook(Typed const& sheets);
    hearthcell::archive::SeenWorkbook const& seen() const { return *seen_; }

private:
    hearthcell::archive::Room room_;
    hearthcell::archive::Contents contents_;
    std::optional<hearthcell::archive::SeenWorkbook> seen_;
};

/// Written as a flat file that the readers read.
std::string flat(Typed const& sheets);
std::vector<std::vector<hearthcell::archive::Label>> labels_of(Typed const& sheets);

/// What an example puts onto a workbook: each cell with its content, "Run.B7 =100-B5/300", or "refused: …", and what is
/// left, "left: …"; a line each.
std::string carried(Typed const& old, Typed const& now, Typed const& target, bool partly = false);

} // namespace hearthcell::tests::archive
