#pragma once
// What the formulas of an open workbook say, with the names that the workbook defines.

#include "extension/formulas/names.hpp"
#include "extension/formulas/reads.hpp"
#include "extension/office/document.hpp"
#include "extension/sharing/defined.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <set>
#include <string>
#include <vector>

namespace hearthcell::archive {

class Meanings {
public:
    /// Asks the office for every name: only where it is needed. The workbook may be closed afterwards.
    explicit Meanings(office::Document const& workbook);
    Meanings(Meanings const&) = delete; // its parts refer to each other
    Meanings& operator=(Meanings const&) = delete;

    [[nodiscard]] std::string const& sheet(formulas::Place const& cell) const;

    /// Whether a result changes by itself: with the clock, by chance, or since the office says something of itself.
    [[nodiscard]] bool is_volatile(std::string const& formula, formulas::Place const& cell) const;

    /// Our functions that it calls.
    [[nodiscard]] std::set<Function const*> functions(std::string const& formula, formulas::Place const& cell) const;

    /// The cells of the workbook that it reads.
    [[nodiscard]] std::vector<formulas::Range> reads(std::string const& formula, formulas::Place const& cell) const;

private:
    explicit Meanings(sharing::Defined defined);

    std::vector<std::string> const sheets_;
    std::vector<formulas::Table> const tables_;
    formulas::Names const names_;
    formulas::Followed<bool> const volatile_;
    formulas::Followed<Function const*> const functions_;
    formulas::Reads const reads_;
};

} // namespace hearthcell::archive
