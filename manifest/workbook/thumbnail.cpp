#include "manifest/workbook/thumbnail.hpp"

#include "manifest/workbook/picture.hpp"

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <map>
#include <optional>
#include <string_view>
#include <vector>

namespace hearthcell::workbook {
namespace {

constexpr int width = 256;        // dots; as much as LibreOffice gives the longer side of its own
constexpr int height = 147;       // in the proportion of the place that its Template Manager has for one
constexpr double margin = 0.4;    // cm around the sheet
constexpr double padding = 0.1;   // cm between a cell's edge and its words
constexpr double thinnest = 0.35; // dots; a thinner rule would not be seen
constexpr double centimetres_a_point = 2.54 / 72;

/// "0.75pt", "3cm" or "5mm" in cm; 0 where it is none of them.
double length(std::string_view text) {
    double number = 0;
    auto const end = std::from_chars(text.data(), text.data() + text.size(), number).ptr;
    std::string_view const unit = text.substr(std::size_t(end - text.data()), 2);
    return unit == "cm" ? number : unit == "mm" ? number / 10 : unit == "pt" ? number * centimetres_a_point : 0;
}

/// "#8c3a12"; none for "transparent" and the like.
std::optional<Colour> colour(std::string_view text) {
    unsigned value = 0;
    if (!text.starts_with('#') || text.size() != 7 ||
        std::from_chars(text.data() + 1, text.data() + text.size(), value, 16).ptr != text.data() + text.size())
        return {};
    return Colour{std::uint8_t(value >> 16U), std::uint8_t(value >> 8U), std::uint8_t(value)};
}

/// The styles of a document by their names.
class Styles {
public:
    explicit Styles(pugi::xml_node document) {
        for (char const* const part : {"office:styles", "office:automatic-styles"})
            for (pugi::xml_node const style : document.child(part).children("style:style"))
                styles_[style.attribute("style:name").value()] = style;
    }

    /// A property of a style, or of the one that it rests on; empty where none has it. The first of the names that a
    /// style has is taken.
    [[nodiscard]] std::string_view property(std::string_view name, char const* kind,
                                            std::initializer_list<char const*> names) const {
        for (auto found = styles_.find(name); found != styles_.end();
             found = styles_.find(std::string_view(found->second.attribute("style:parent-style-name").value())))
            for (char const* const attribute : names)
                if (pugi::xml_attribute const value = found->second.child(kind).attribute(attribute))
                    return value.value();
        return {};
    }

private:
    std::map<std::string, pugi::xml_node, std::less<>> styles_;
};

/// A column or row of a sheet, and where it lies.
struct Line {
    pugi::xml_node node;
    double start, end; // cm
};

int repeated(pugi::xml_node node, char const* attribute) {
    return std::max(node.attribute(attribute).as_int(1), 1);
}

std::string words_of(pugi::xml_node node) {
    if (node.type() == pugi::node_pcdata)
        return node.value();
    std::string words;
    for (pugi::xml_node const child : node.children())
        words += words_of(child);
    return words;
}

class Drawing {
public:
    Drawing(pugi::xml_node document, pugi::xml_node sheet) : styles_(document), picture_(width, height) {
        collect(sheet, "table:table-column", "table:number-columns-repeated", "style:table-column-properties",
                "style:column-width", 100, columns_);
        dots_ = width / (2 * margin + (columns_.empty() ? 0 : columns_.back().end));
        collect(sheet, "table:table-row", "table:number-rows-repeated", "style:table-row-properties",
                "style:row-height", height / dots_, rows_);
        for (bool const ink : {false, true}) // words run over the grounds of the next cells
            for (std::size_t row = 0; row < rows_.size(); ++row)
                draw(row, ink);
    }

    [[nodiscard]] std::string png() const { return picture_.png(); }

private:
    struct Box {
        double left, top, right, bottom; // cm
    };

    /// Also out of groups and out of those that are printed on every page.
    void collect(pugi::xml_node from, std::string const& name, char const* repetition, char const* kind,
                 char const* size, double enough, std::vector<Line>& into) const {
        for (pugi::xml_node const child : from.children()) {
            if (child.name() != name) {
                if (std::string_view(child.name()).starts_with("table:table-"))
                    collect(child, name, repetition, kind, size, enough, into);
                continue;
            }
            bool const is_shown =
                child.attribute("table:visibility").as_string("visible") == std::string_view("visible");
            double const extent =
                is_shown ? length(styles_.property(child.attribute("table:style-name").value(), kind, {size})) : 0;
            for (int count = repeated(child, repetition); count > 0; --count) {
                double const start = into.empty() ? 0 : into.back().end;
                if (start < enough) // also one that takes no room: cells are counted by it
                    into.push_back({child, start, start + extent});
            }
        }
    }

    void draw(std::size_t row, bool ink) {
        std::size_t column = 0;
        for (pugi::xml_node const cell : rows_[row].node.children()) {
            int const cells = repeated(cell, "table:number-columns-repeated");
            for (int count = 0; count < cells && column < columns_.size(); ++count, ++column)
                if (cell.name() == std::string_view("table:table-cell"))
                    draw(cell, row, column, ink);
        }
    }

    void draw(pugi::xml_node cell, std::size_t row, std::size_t column, bool ink) {
        auto const last = [&](std::vector<Line> const& lines, std::size_t first, char const* spanned) {
            return lines[std::min(first + std::size_t(repeated(cell, spanned)), lines.size()) - 1].end;
        };
        Box const box{columns_[column].start, rows_[row].start, last(columns_, column, "table:number-columns-spanned"),
                      last(rows_, row, "table:number-rows-spanned")};
        char const* const own = cell.attribute("table:style-name").value();
        std::string_view const style =
            *own != '\0' ? own : columns_[column].node.attribute("table:default-cell-style-name").value();
        if (!ink) {
            if (auto const ground = colour(properties(style, {"fo:background-color"})))
                fill(box, *ground);
            return;
        }
        rules(style, box);
        std::string words = words_of(cell.child("text:p"));
        if (words.empty())
            words = cell.attribute("office:value").value();
        write(words, style, box);
    }

    [[nodiscard]] std::string_view properties(std::string_view style, std::initializer_list<char const*> names) const {
        return styles_.property(style, "style:table-cell-properties", names);
    }

    void fill(Box const& box, Colour ground) {
        picture_.fill((margin + box.left) * dots_, (margin + box.top) * dots_, (margin + box.right) * dots_,
                      (margin + box.bottom) * dots_, ground);
    }

    void rules(std::string_view style, Box const& box) {
        auto const rule = [&](char const* side, auto const& place) {
            std::string_view const written = properties(style, {side, "fo:border"}); // "0.75pt solid #7d868a"
            std::size_t const mark = written.find('#');
            if (mark == std::string_view::npos)
                return;
            double const half = std::max(length(written), thinnest / dots_) / 2;
            if (auto const ink = colour(written.substr(mark)))
                fill(place(half), *ink);
        };
        rule("fo:border-top", [&](double half) { return Box{box.left, box.top - half, box.right, box.top + half}; });
        rule("fo:border-bottom", [&](double half) {
            return Box{box.left, box.bottom - half, box.right, box.bottom + half};
        });
        rule("fo:border-left", [&](double half) { return Box{box.left - half, box.top, box.left + half, box.bottom}; });
        rule("fo:border-right", [&](double half) {
            return Box{box.right - half, box.top, box.right + half, box.bottom};
        });
    }

    void write(std::string_view words, std::string_view style, Box const& box) {
        auto const text = [&](char const* name) { return styles_.property(style, "style:text-properties", {name}); };
        Pen const pen{.size = length(text("fo:font-size")),
                      .is_bold = text("fo:font-weight") == "bold",
                      .ink = colour(text("fo:color")).value_or(Colour{0, 0, 0})};
        double const inner = box.right - box.left - 2 * padding, line = 1.2 * pen.size;
        std::vector<std::string_view> lines{words};
        if (properties(style, {"fo:wrap-option"}) == "wrap" && pen.size > 0)
            lines = wrapped(words, std::size_t(std::max(inner / pen.advance(), 1.0)));

        std::string_view const across = styles_.property(style, "style:paragraph-properties", {"fo:text-align"});
        std::string_view const down = properties(style, {"style:vertical-align"});
        double const below = std::max(box.bottom - box.top - double(lines.size()) * line, 0.0);
        double top = box.top + (down == "top" ? 0 : down == "bottom" ? below : below / 2);
        for (std::string_view const part : lines) {
            if (top + line / 2 > box.bottom)
                break;
            double const beside = inner - double(letters(part)) * pen.advance();
            double const indent = across == "end" ? beside : across == "center" ? beside / 2 : 0;
            write(part, box.left + padding + indent, top + 0.95 * pen.size, pen);
            top += line;
        }
    }

    struct Pen {
        double size; // cm
        bool is_bold;
        Colour ink;
        [[nodiscard]] double advance() const { return size * (is_bold ? 0.56 : 0.5); }
    };

    /// A letter is a block: most of a letter is paper, and small ones reach less high.
    void write(std::string_view line, double left, double base, Pen const& pen) {
        for (char const letter : line) {
            if (is_further_byte(letter))
                continue;
            auto const is_one_of = [&](std::string_view some) { return some.find(letter) != std::string_view::npos; };
            double const high = is_one_of(" ")                   ? 0
                                : is_one_of(".,-")               ? 0.15
                                : is_one_of("acegmnopqrsuvwxyz") ? 0.52
                                                                 : 0.73;
            double const right = left + pen.advance() * (pen.is_bold ? 0.7 : 0.5);
            fill({left, base - high * pen.size, right, base}, pen.ink);
            left += pen.advance();
        }
    }

    static bool is_further_byte(char byte) { return (std::uint8_t(byte) & 0xC0U) == 0x80U; } // of a letter in UTF-8

    static std::size_t letters(std::string_view text) {
        return text.size() - std::size_t(std::count_if(text.begin(), text.end(), is_further_byte));
    }

    /// Broken at blanks into lines of so many letters; a longer word stands on a line of its own.
    static std::vector<std::string_view> wrapped(std::string_view words, std::size_t most) {
        std::vector<std::string_view> lines;
        while (letters(words) > most) {
            std::size_t end = words.find(' ');
            if (end == std::string_view::npos)
                break;
            for (std::size_t next = end; next != std::string_view::npos && letters(words.substr(0, next)) <= most;
                 next = words.find(' ', next + 1))
                end = next;
            lines.push_back(words.substr(0, end));
            words.remove_prefix(end + 1);
        }
        lines.push_back(words);
        return lines;
    }

    Styles styles_;
    Picture picture_;
    std::vector<Line> columns_, rows_;
    double dots_ = 0; // a cm
};

} // namespace

std::string thumbnail(pugi::xml_node document) {
    return Drawing(document, document.child("office:body").child("office:spreadsheet").child("table:table")).png();
}

} // namespace hearthcell::workbook
