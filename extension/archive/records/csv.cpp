#include "extension/archive/records/csv.hpp"

#include "extension/archive/files/shown.hpp"

#include <csv.h>

#include <algorithm>
#include <array>
#include <charconv>

namespace hearthcell::archive {
namespace {

std::string quoted(std::string const& field) {
    std::string text(csv_write(nullptr, 0, field.data(), field.size()), '\0');
    csv_write(text.data(), text.size(), field.data(), field.size());
    return text;
}

bool needs_quotes(std::string const& field) {
    return field.find_first_of(",\"\r\n") != std::string::npos || field.starts_with(' ') || field.ends_with(' ');
}

/// What spreadsheets skip or drop at the start of a field: blanks of all kinds, quotes, what nobody sees.
constexpr std::array<std::string_view, 17> skipped{" ",      "'",      "\"",     "\n",     "\u00A0", "\u00AD",
                                                   "\u2007", "\u200B", "\u200C", "\u200D", "\u200E", "\u200F",
                                                   "\u202F", "\u2060", "\u3000", "\uFEFF", "\u2019"};

/// What a formula or an order begins with, in ordinary and in wide letters.
constexpr std::array<std::string_view, 11> opening{"=",      "+",      "-",      "@",      "\t",    "\r",
                                                   "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20", "\u2212"};

bool is_number(std::string_view text) {
    if (text.starts_with('+') && !text.starts_with("+-"))
        text.remove_prefix(1);
    double number = 0;
    auto const [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
    return problem != std::errc::invalid_argument && end == text.data() + text.size();
}

bool needs_backslash(std::string_view text) {
    if (text.starts_with('\\'))
        return true;
    std::string_view rest = text;
    auto const starts_rest = [&](std::string_view one) { return rest.starts_with(one); };
    for (auto one = skipped.begin(); one != skipped.end();) {
        one = std::ranges::find_if(skipped, starts_rest);
        if (one != skipped.end())
            rest.remove_prefix(one->size());
    }
    return std::ranges::any_of(opening, starts_rest) && !is_number(text);
}

/// Copies a text, with something done at each place where a field may begin. at_start: may write, and take off the rest
/// of the text; gives what is left of it.
template <class AtStart> std::string rewritten(std::string_view text, AtStart const& at_start) {
    std::string result;
    for (;;) {
        text = at_start(text, result);
        auto const separator = text.find_first_of(";\t|\r\n");
        if (separator == std::string_view::npos)
            return result.append(text);
        result.append(text.substr(0, separator + 1));
        text.remove_prefix(separator + 1);
    }
}

} // namespace

std::string with_backslashes(std::string_view field) {
    return rewritten(field, [](std::string_view rest, std::string& result) {
        if (needs_backslash(rest))
            result += '\\';
        return rest;
    });
}

std::string without_backslashes(std::string_view field) {
    return rewritten(
        field, [](std::string_view rest, std::string const&) { return rest.substr(rest.starts_with('\\') ? 1 : 0); });
}

std::string csv_row(std::vector<std::string> const& fields) {
    std::string row;
    for (std::string const& field : fields) {
        if (&field != &fields.front())
            row += ',';
        std::string const text = with_backslashes(harmless(field));
        row += needs_quotes(text) ? quoted(text) : text;
    }
    return row + "\r\n";
}

} // namespace hearthcell::archive
