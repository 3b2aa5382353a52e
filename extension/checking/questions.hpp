#pragma once
// The calls of a document, and how each is put to STOVE.EXPLAIN.

#include "extension/checking/contents.hpp"
#include "extension/checking/found_calls.hpp"
#include "extension/checking/outside.hpp"
#include "extension/checking/private_copy.hpp"
#include "extension/formulas/reads.hpp"
#include "functions/words/language.hpp"

namespace hearthcell::checking {

/// A call that is put to EXPLAIN.
struct Question {
    Place cell;                 // that it stands in, or that a rule is seen from
    Rule const* rule = nullptr; // where it stands outside of cells
    FoundCall call;
    std::string formula; // that it is a part of
    Trial trial;
    Answer answer; // empty text: all is well; nothing: another error came first

    [[nodiscard]] bool is_reached() const { return answer && *answer != not_reached; }

    static constexpr std::string_view not_reached = "-"; // the answer where Calc never comes to the call
};

/// Formulas that are longer, or questions that are, are left alone; and all calls beyond so many.
inline constexpr std::size_t longest_formula = 8'000, most_questions = 50'000;
/// Bytes of all questions together.
inline constexpr std::size_t most_asked = 64'000'000;

struct NotLookedAt {
    std::size_t outside = 0; // reaching out of the document while they are worked out
    std::size_t too_many = 0;
};

/// Makes the questions of one document.
class Questions {
public:
    Questions(Contents const& contents, Language language);
    Questions(Questions const&) = delete; // its parts refer to each other
    Questions& operator=(Questions const&) = delete;

    /// From a cell, and from a formula outside of cells, as setFormula() takes it.
    void add(Place const& cell, std::string const& formula);
    void add(Rule const& rule, std::string const& formula);

    std::vector<Question> all;
    NotLookedAt not_looked_at;

    [[nodiscard]] formulas::Reads const& reads() const { return reads_; }

private:
    void add(Question question, bool is_array);
    [[nodiscard]] bool is_told_by_neighbour(Place const& cell, std::string const& formula) const;
    [[nodiscard]] std::string argument_of(Question const& question, std::string const& argument) const;
    [[nodiscard]] bool is_empty_row(Question const& question) const;
    [[nodiscard]] std::optional<Place> single_cell(std::string const& argument, Place const& from) const;
    [[nodiscard]] bool has_typed(int sheet, int row) const;
    [[nodiscard]] std::string const& sheet_of(Place const& cell) const;

    Contents const& contents_;
    std::size_t asked_ = 0;         // bytes
    std::string const name_ending_; // ":check:fr"
    formulas::Names names_;
    formulas::Reads reads_;
    Outward outward_;
};

} // namespace hearthcell::checking
