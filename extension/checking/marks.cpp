#include "extension/checking/marks.hpp"

#include "extension/formulas/reference.hpp"

#include <algorithm>
#include <bit>
#include <charconv>
#include <sstream>

namespace hearthcell::checking {
namespace {

constexpr std::size_t most_cells_of_mark = 20'000, digits = 16;

/// FNV-1a: the same number on every machine.
class Mark {
public:
    void add(std::string_view text) {
        for (char const c : text)
            add_byte(static_cast<unsigned char>(c));
        add_byte(0);
    }
    void add(Content const& content) {
        if (auto const* const text = std::get_if<std::string>(&content.value))
            add(*text);
        else if (auto const* const number = std::get_if<double>(&content.value))
            add_number(std::bit_cast<std::uint64_t>(*number));
        else
            add_number(std::uint64_t(std::get<CellError>(content.value).code));
    }
    void add_number(std::uint64_t number) {
        for (int byte = 0; byte < 8; ++byte, number >>= 8U)
            add_byte(static_cast<unsigned char>(number & 0xFFU));
    }
    [[nodiscard]] std::uint64_t value() const { return value_; }

private:
    void add_byte(unsigned char byte) { value_ = (value_ ^ byte) * 0x100000001B3ULL; }

    std::uint64_t value_ = 0xCBF29CE484222325ULL;
};

} // namespace

std::uint64_t mark_of(Contents const& contents, formulas::Reads const& reads, Place const& cell,
                      std::string const& formula, std::string_view which) {
    Mark mark;
    mark.add(contents.defined.sheets.at(std::size_t(cell.sheet)));
    mark.add(formulas::cell_name(cell.column, cell.row));
    mark.add(formula);
    mark.add(which);
    if (Content const* const content = contents.at(cell); content != nullptr && content->formula.empty())
        mark.add(*content);
    std::size_t left = most_cells_of_mark;
    for (Range const& range : reads.of(formula, cell))
        for (auto at = contents.cells.lower_bound(range.first);
             at != contents.cells.end() && at->first <= range.last && left > 0; ++at, --left)
            if (at->first.column >= range.first.column && at->first.column <= range.last.column) {
                mark.add(formulas::cell_name(at->first.column, at->first.row));
                mark.add(at->second);
            }
    return mark.value();
}

std::string written(std::uint64_t mark) {
    std::string text;
    for (std::size_t place = 0; place < digits; ++place, mark >>= 4U)
        text.insert(text.begin(), "0123456789abcdef"[mark & 0xFU]);
    return text;
}

std::set<std::uint64_t> marks_in(std::string_view text) {
    std::set<std::uint64_t> marks;
    std::istringstream words{std::string(text)};
    for (std::string word; words >> word;) {
        std::uint64_t mark = 0;
        char const* const last = word.data() + std::min(digits, word.size());
        auto const [end, problem] = std::from_chars(word.data(), last, mark, 16);
        if (problem == std::errc() && end == word.data() + digits)
            marks.insert(mark);
    }
    return marks;
}

} // namespace hearthcell::checking
