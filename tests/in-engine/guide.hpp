#pragma once
// The packaged function guide, opened in an office.

#include "calc.hpp"

#include "manifest/generator/guide/words.hpp"

namespace hearthcell::tests {

using generator::guide::Word;

/// A guide's own word, in which %1 and %2 are these values.
std::string phrase(Word which, Language language, std::string const& first = "", std::string const& second = "");

/// The columns of a block's examples.
enum Column : std::size_t { of_result = 3, of_expected = 4, of_margin = 5, of_verdict = 7 };

class Guide {
public:
    Guide(Office& office, Language which);

    void recalculate() { document.recalculate(); }
    [[nodiscard]] std::string verdict() const;
    [[nodiscard]] std::string status() const;
    [[nodiscard]] double agreeing() const;
    [[nodiscard]] double checks() const;

    struct Check {
        Sheet sheet;
        int row;
        std::vector<CellValue> cells; ///< of its row
        [[nodiscard]] std::string address(Column column) const {
            return std::string(1, char('A' + column)) + std::to_string(row);
        }
        [[nodiscard]] std::string verdict() const { return sheet.shown(address(of_verdict)); }
    };
    /// Every row with the verdict of a check, on all sheets of functions.
    [[nodiscard]] std::vector<Check> all_checks() const;

    Language language;
    Document document;

private:
    [[nodiscard]] office::NamedBlock named(std::string const& name) const;
};

/// So many examples has the catalogue, where every element of a block counts.
std::size_t checks_in_the_catalogue();

/// Tests of every guide, by language.
class FunctionGuide : public testing::TestWithParam<Language> {};
std::string name_of_language(testing::TestParamInfo<Language> const& language);

} // namespace hearthcell::tests
