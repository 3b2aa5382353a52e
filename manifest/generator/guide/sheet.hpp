#pragma once
// A sheet of the guide while it is filled, row by row.

#include "manifest/generator/guide/looks.hpp"

#include <ostream>
#include <string>
#include <vector>

namespace hearthcell::generator::guide {

enum class EntryKind { nothing, text, number, formula, link };

/// What stands in a cell, or in several that are merged into one.
struct Entry {
    EntryKind kind = EntryKind::nothing;
    std::string_view look = "entry";
    int span = 1;       ///< columns
    std::string text{}; ///< of a formula: as files hold it, without the sign of equality
    double number = 0;
    std::string target{};     ///< of a link: an address
    std::string shows{};      ///< of a formula: what it will show at most, for the height of the row
    std::string style_ends{}; ///< behind the look's name, where a number is shown with its own digits
};

Entry nothing(std::string_view look, int span = 1);
Entry text(std::string_view look, std::string_view words, int span = 1);
Entry number(std::string_view look, double value, std::string style_ends = {});
Entry formula(std::string_view look, std::string formula, std::string shows, int span = 1);
Entry link(std::string_view look, std::string_view words, std::string target, int span = 1);

class Sheet {
public:
    Sheet(std::string name_of_sheet, std::vector<double> widths_in_cm);

    /// Adds a row and gives its number, counted from 1.
    int add(std::vector<Entry> const& row);
    /// An empty row.
    void space(double height_in_cm);
    /// The cells of a column are green where the first condition holds, and red where the second does. As Calc has
    /// them: ="agrees".
    void judge(char column, int first_row, int last_row, std::string const& good, std::string const& bad);
    /// What stands so far stays in sight when the rest is scrolled.
    void freeze() { frozen = rows(); }

    [[nodiscard]] std::string const& name() const { return sheet_name; }
    [[nodiscard]] int rows() const { return int(heights.size()); }
    [[nodiscard]] int frozen_rows() const { return frozen; }
    [[nodiscard]] double height() const; // cm
    [[nodiscard]] double width() const;  // cm

    /// Row heights in hundredths of a centimetre: the style row-120 has 1.2 cm.
    [[nodiscard]] std::vector<int> const& row_heights() const { return heights; }

    /// Styles of the sheet and its columns, told apart from those of other sheets by its place among them.
    void write_styles(std::ostream& out, std::size_t place) const;
    void write(std::ostream& out, std::size_t place) const;

private:
    int add_row(double height_in_cm, std::string const& xml);

    std::string sheet_name;
    std::vector<double> widths;
    std::vector<int> heights;
    std::string cells;      ///< rows as XML
    std::string judgements; ///< conditional formats as XML
    int frozen = 0;
};

/// 'Site and water', as formulas and links name a sheet.
std::string quoted_name(std::string_view sheet);

/// A column's letters: A, B, … Z, AA, …
std::string column_name(std::size_t place);

/// "1.25cm"
std::string centimetres(double length);

/// The shortest text that gives the same number again, with a decimal point.
std::string exact(double number);

} // namespace hearthcell::generator::guide
