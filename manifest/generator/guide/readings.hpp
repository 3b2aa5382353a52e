#pragma once
// The columns of readings that examples refer to: each stands once, on a sheet of its own.

#include "functions/catalogue/catalogue.hpp"
#include "manifest/generator/guide/sheet.hpp"

namespace hearthcell::generator::guide {

class Readings {
public:
    explicit Readings(Language language_of_guide) : language(language_of_guide) {}

    /// The cells of a column, as "A4:A34"; remembers who uses it.
    struct Cells {
        std::string first, last;
    };
    Cells cells(std::span<double const> column, Function const& user);

    [[nodiscard]] Sheet sheet() const;

private:
    struct Column {
        std::span<double const> values;
        std::vector<std::string_view> users;
    };
    Language language;
    std::vector<Column> columns;
};

} // namespace hearthcell::generator::guide
