#pragma once
// What a tester typed into one old sheet, to be done on all sheets like it: NEW held against OLD.

#include "extension/archive/example/seen_workbook.hpp"

#include <filesystem>

namespace hearthcell::archive {

/// A formula, where the first of its kind stands.
struct ExampleFormula {
    using Where = LabelledSheet::Where;
    Where cell;
    std::string text;            // plain
    std::optional<Where> result; // the old result that it stands over or beside: the first of its kind
    std::string old_text;        // of that result, plain
    bool is_over = false;
    bool goes_down = false, goes_right = false; // as that result does
    std::vector<int> steps = {};                // how far, from the first: rows or columns, one for each of OLD's
};

struct ExampleWord {
    LabelledSheet::Where cell;
    std::string text;
};

struct ExampleSheet {
    int number = 0; // in OLD
    std::vector<ExampleFormula> formulas;
    std::vector<ExampleWord> words;
};

/// A cell in which NEW differs from OLD, as carried.csv has it.
struct Difference {
    int sheet = 0; // in OLD
    LabelledSheet::Where cell;
    std::string kind, before, after, note; // note: why it is not carried; empty: it is
};

class Example {
public:
    /// labels: of OLD's sheets. Throws std::exception where nothing can be done with it.
    Example(std::filesystem::path now, std::filesystem::path old, std::uint64_t largest,
            std::vector<std::vector<Label>> const& labels, SameWords const& same);
    Example(Example const&) = delete;
    Example& operator=(Example const&) = delete;

    [[nodiscard]] SeenWorkbook const& old() const { return *old_; }
    [[nodiscard]] SeenWorkbook const& now() const { return *now_; }
    [[nodiscard]] std::vector<ExampleSheet> const& sheets() const { return sheets_; }
    [[nodiscard]] std::vector<Difference> const& differences() const { return differences_; }

    /// The cells of OLD that the formulas for a sheet read, of a block the first; and the results that they stand over.
    [[nodiscard]] std::vector<Place> read_by(ExampleSheet const& sheet) const;

    std::filesystem::path const now_file, old_file;

private:
    void compare(int sheet, int sheet_now);
    void compare(Place const& place, ContentCell const* before, ContentCell const* after, ExampleSheet& sheet);
    void add_formula(Place const& place, ContentCell const* before, std::string text, ExampleSheet& sheet);
    [[nodiscard]] bool is_known(Place const& place, std::string const& text, ExampleSheet const& sheet) const;
    void drop_what_reads_numbers(ExampleSheet& sheet);

    Room room_;
    Contents old_contents_, now_contents_;
    std::optional<SeenWorkbook> old_, now_;
    struct InLine {
        std::size_t formula; // of its sheet's
        int rows, columns;   // from the first
    };
    std::map<Place, InLine> in_line_;  // cells that a known formula goes to
    std::vector<ExampleSheet> sheets_; // with something to carry
    std::vector<Difference> differences_;
};

} // namespace hearthcell::archive
