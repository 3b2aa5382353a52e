#include "extension/checking/findings.hpp"

#include "extension/formulas/number.hpp"

namespace hearthcell::checking {
namespace {

std::vector<std::string_view> split(std::string_view text, char separator) {
    std::vector<std::string_view> parts;
    for (std::size_t start = 0;;) {
        std::size_t const end = text.find(separator, start);
        parts.push_back(text.substr(start, end - start));
        if (end == std::string_view::npos)
            return parts;
        start = end + 1;
    }
}

std::optional<Finding::Kind> kind_of(std::string_view word) {
    if (word == "wrong")
        return Finding::Kind::wrong;
    if (word == "odd")
        return Finding::Kind::odd;
    return word == "empty" ? std::optional(Finding::Kind::empty_cell) : std::nullopt;
}

std::optional<Figure> figure_in(std::string_view text) {
    Figure figure;
    figure.is_share = text.ends_with('%');
    text.remove_suffix(figure.is_share ? 1 : 0);
    auto const number = formulas::number_in(text);
    figure.number = number.value_or(0);
    return number ? std::optional(figure) : std::nullopt;
}

} // namespace

Findings findings_in(std::string_view answer) {
    Findings found;
    if (answer.empty())
        return found;
    for (std::string_view const line : split(answer, '\n')) {
        auto fields = split(line, '\t');
        fields.resize(4);
        if (fields[0] == "note")
            found.notes.push_back({std::string(fields[1]), std::string(fields[2])});
        else if (auto const kind = kind_of(fields[0]))
            found.findings.push_back({*kind, std::string(fields[1]), figure_in(fields[2]), figure_in(fields[3])});
        else
            found.findings.push_back({Finding::Kind::wrong, std::string(line)});
    }
    return found;
}

} // namespace hearthcell::checking
