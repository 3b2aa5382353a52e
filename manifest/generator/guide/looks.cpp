#include "manifest/generator/guide/looks.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace hearthcell::generator::guide {
namespace {

constexpr std::string_view right = "fo:text-align=\"end\"";
constexpr std::string_view indented = "fo:text-align=\"start\" fo:margin-left=\"0.6cm\"";
constexpr std::string_view ruled = "fo:border-bottom=\"0.5pt solid #d3dbe0\"";

constexpr Look all_looks[] = {
    {.name = "title", .points = 17, .bold = true, .letters = "fo:color=\"#2f4858\""},
    {.name = "overall", .points = 12, .bold = true},
    {.name = "prose", .points = 8.5},
    {.name = "quiet", .points = 8, .letters = "fo:color=\"#566a76\""},
    {.name = "subject", .points = 14, .bold = true, .letters = "fo:color=\"#2f4858\""},
    {.name = "tally", .points = 8.5, .paragraph = right, .letters = "fo:color=\"#2f4858\""},
    {.name = "link", .points = 8.5, .paragraph = right},

    {.name = "heading",
     .points = 8,
     .bold = true,
     .cell = "fo:background-color=\"#e1e8ec\"",
     .letters = "fo:color=\"#2f4858\""},
    {.name = "heading-right",
     .points = 8,
     .bold = true,
     .cell = "fo:background-color=\"#e1e8ec\"",
     .paragraph = right,
     .letters = "fo:color=\"#2f4858\""},
    {.name = "group", .points = 10, .bold = true, .cell = "fo:background-color=\"#f2ead9\""},
    {.name = "group-count", .points = 10, .bold = true, .cell = "fo:background-color=\"#f2ead9\"", .paragraph = right},

    {.name = "name",
     .points = 11,
     .bold = true,
     .cell = "fo:background-color=\"#2f4858\"",
     .letters = "fo:color=\"#ffffff\""},
    {.name = "summary", .points = 10, .cell = "fo:background-color=\"#2f4858\"", .letters = "fo:color=\"#ffffff\""},
    {.name = "label", .points = 8.5, .bold = true, .letters = "fo:color=\"#566a76\""},
    {.name = "code", .points = 8, .monospaced = true},
    {.name = "caution", .points = 8.5, .cell = "fo:background-color=\"#fcecc9\""},
    {.name = "caution-label", .points = 8.5, .bold = true, .cell = "fo:background-color=\"#fcecc9\""},

    {.name = "entry", .points = 8.5, .cell = ruled},
    {.name = "entry-strong", .points = 8.5, .bold = true, .cell = ruled},
    {.name = "entry-code", .points = 8, .monospaced = true, .cell = ruled},
    {.name = "entry-part", .points = 8.5, .cell = ruled, .paragraph = indented},
    {.name = "count", .points = 8.5, .cell = ruled, .paragraph = right},
    {.name = "live", .points = 8.5, .bold = true, .cell = ruled, .paragraph = right},
    {.name = "live-text", .points = 8.5, .bold = true, .cell = ruled},
    {.name = "expected", .points = 8.5, .cell = ruled, .paragraph = right},
    {.name = "expected-text", .points = 8.5, .cell = ruled},
    {.name = "margin", .points = 8, .cell = ruled, .paragraph = right},
    {.name = "verdict", .points = 8.5, .bold = true, .cell = ruled},
    {.name = "group-verdict", .points = 8.5, .bold = true, .cell = "fo:background-color=\"#f2ead9\""},
    {.name = "judgement", .points = 8.5, .bold = true}, // a verdict without a rule below it
    {.name = "reading", .points = 8, .paragraph = right},
    {.name = "column", .points = 8, .bold = true, .cell = "fo:background-color=\"#e1e8ec\"", .paragraph = right},
    {.name = "users", .points = 6.5, .paragraph = right, .letters = "fo:color=\"#566a76\""},
};

// Widths of ASCII letters from the blank on, in hundredths of their size, of DejaVu Sans, which LibreOffice brings
// along; most others are narrower.
constexpr unsigned char widths[] = {32, 40, 46, 84, 64, 95, 78, 27, 39, 39, 50, 84, 32, 36,  32, 34, 64, 64, 64,
                                    64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 53, 100, 68, 69, 70, 77, 63,
                                    58, 77, 75, 29, 29, 66, 56, 86, 75, 79, 60, 79, 69, 63,  61, 73, 68, 99, 69,
                                    61, 69, 39, 34, 39, 84, 50, 50, 61, 63, 55, 63, 62, 35,  63, 63, 28, 28, 58,
                                    28, 97, 63, 61, 63, 63, 41, 52, 39, 63, 59, 82, 59, 59,  52, 64, 34, 64, 84};
constexpr double other_letter = 0.66, monospaced_letter = 0.66, bold_is_wider = 1.13;
constexpr double cm_of_point = 2.54 / 72, padding = 0.12;

double width_of(std::string_view word, Look const& look) {
    double ems = 0;
    for (char const c : word) {
        bool const continues = (c & 0xc0) == 0x80; // a further byte of the same letter
        bool const is_ascii = c >= ' ' && std::size_t(c - ' ') < std::size(widths);
        if (!continues)
            ems += look.monospaced ? monospaced_letter : is_ascii ? widths[c - ' '] / 100.0 : other_letter;
    }
    return ems * look.points * cm_of_point * (look.bold && !look.monospaced ? bold_is_wider : 1);
}

} // namespace

std::span<Look const> looks() {
    return all_looks;
}

Look const& look(std::string_view name) {
    auto const found = std::ranges::find(all_looks, name, &Look::name);
    if (found == std::end(all_looks))
        throw std::logic_error("the guide has no look named " + std::string(name));
    return *found;
}

int lines_of(std::string_view text, double width_in_cm, Look const& look) {
    constexpr double spare = 0.95; // letters on a screen are set to whole pixels
    double const room = spare * (width_in_cm - 2 * padding - (look.paragraph == indented ? 0.6 : 0));
    double const blank = width_of(" ", look);
    int lines = 1;
    double used = 0;
    while (!text.empty()) {
        std::size_t const end = std::min(text.find(' '), text.size());
        double const word = width_of(text.substr(0, end), look);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (used > 0 && used + word > room) {
            ++lines;
            used = 0;
        }
        lines += int(word / room); // a word that is too long for any line is broken
        used += std::fmod(word, room) + blank;
    }
    return lines;
}

double height_of(int lines, Look const& look) {
    return lines * look.points * 1.18 * cm_of_point + 2 * 0.06;
}

} // namespace hearthcell::generator::guide
