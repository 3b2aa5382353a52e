#pragma once
// The tables that the benchmarks print.

#include <initializer_list>
#include <string>
#include <vector>

namespace hearthcell::benchmarks {

/// Prints tables as they grow: for reading in a terminal, or as Markdown for RESULTS.md.
class Report {
public:
    explicit Report(bool as_markdown) : markdown_(as_markdown) {}

    void note(std::string const& text) const;
    /// The first column is a text, the others are numbers.
    void head(std::initializer_list<char const*> columns);
    void row(std::string const& name, std::vector<std::string> const& figures) const;

private:
    bool markdown_;
};

std::string figure(double value, int decimals);

} // namespace hearthcell::benchmarks
