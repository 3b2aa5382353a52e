#include "manifest/workbook/translate.hpp"

#include "extension/formulas/quotes.hpp"
#include "extension/formulas/rewriting.hpp"
#include "functions/edition.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

namespace hearthcell::workbook {
namespace {

// Attributes that hold a formula, a condition or an address.
constexpr std::array<std::string_view, 17> formula_attributes{
    "table:formula",
    "table:expression",
    "table:condition",
    "table:base-cell-address",
    "table:cell-range-address",
    "table:cell-address",
    "table:print-ranges",
    "table:target-range-address",
    "table:end-cell-address",
    "style:condition",
    "style:base-cell-address",
    "chart:values-cell-range-address",
    "chart:label-cell-address",
    "chart:error-upper-range",
    "chart:error-lower-range",
    "draw:notify-on-update-of-ranges",
    "xlink:href",
};
// Attributes whose whole content is read by people.
constexpr std::array<std::string_view, 2> read_by_people{"table:title", "office:string-value"};
// Elements whose whole content is read by people.
constexpr std::array<std::string_view, 4> word_elements{"dc:title", "dc:description", "svg:title", "svg:desc"};
// Conditional formats of LibreOffice.
constexpr std::array<std::string_view, 3> conditional{"calcext:value", "calcext:base-cell-address",
                                                      "calcext:target-range-address"};

template <std::size_t Size> bool is_one_of(std::array<std::string_view, Size> const& names, std::string_view name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

std::string collapsed(std::string_view text) {
    std::string words;
    bool blank = false;
    for (char const c : text) {
        if (c == ' ' || c == '\n' || c == '\t' || c == '\r') {
            blank = true;
            continue;
        }
        if (blank && !words.empty())
            words += ' ';
        blank = false;
        words += c;
    }
    return words;
}

std::string with_edition(std::string text) {
    constexpr std::string_view mark = "@EDITION@";
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at))
        text.replace(at, mark.size(), edition);
    return text;
}

class Translator {
public:
    explicit Translator(Texts& texts) : texts_(texts) {}

    void name_sheets(pugi::xml_node body) {
        for (pugi::xpath_node const& found : body.select_nodes("//table:table[@table:name]")) {
            pugi::xml_attribute name = found.node().attribute("table:name");
            sheets_[name.value()] = said(name.value());
            name.set_value(sheets_[name.value()].c_str());
        }
    }

    void walk(pugi::xml_node node) {
        std::string_view const name = node.name();
        for (pugi::xml_attribute attribute : node.attributes())
            visit(name, attribute);
        if (is_one_of(word_elements, name))
            node.text().set(said(collapsed(node.text().get())).c_str());
        else if (name == "number:text" && has_words(node.text().get())) // what a format says around a number
            node.text().set(said(node.text().get()).c_str());
        else if (name == "config:config-item" &&
                 std::string_view(node.attribute("config:name").value()) == "ActiveTable")
            node.text().set(sheet(node.text().get()).c_str());
        else if (name == "text:p")
            paragraph(node);
        else
            for (pugi::xml_node child : node.children())
                walk(child);
    }

private:
    void visit(std::string_view element, pugi::xml_attribute attribute) {
        std::string_view const name = attribute.name();
        std::string const value = attribute.value();
        if (is_one_of(read_by_people, name))
            attribute.set_value(said(value).c_str());
        else if (is_one_of(formula_attributes, name) || is_one_of(conditional, name))
            attribute.set_value(with_edition(formula(value)).c_str());
        else if (element == "config:config-item-map-entry" && name == "config:name")
            attribute.set_value(sheet(value).c_str());
        else if (element == "style:master-page" && name == "style:display-name") // as Calc lists page styles
            attribute.set_value(said(value).c_str());
        else if (element == "style:default-style" || element == "style:text-properties")
            speak(attribute);
    }

    /// The language that a spelling check assumes.
    void speak(pugi::xml_attribute attribute) {
        std::string_view const name = attribute.name();
        if (name == "fo:language")
            attribute.set_value(texts_.language().c_str());
        else if (name == "fo:country")
            attribute.set_value(country().c_str());
    }

    [[nodiscard]] std::string country() const {
        std::string const& language = texts_.language();
        return language == "fr" ? "FR" : language == "es" ? "ES" : language == "sw" ? "TZ" : "GB";
    }

    /// A paragraph is a text; where parts of it look otherwise, or there is a field in it, each part is.
    void paragraph(pugi::xml_node node) {
        for (pugi::xml_node child : node.children()) {
            if (child.type() != pugi::node_pcdata) {
                paragraph(child);
                continue;
            }
            std::string const text = child.value();
            std::string const core = collapsed(text);
            if (!has_words(core))
                continue;
            bool const before = text.front() == ' ' && node.first_child() != child;
            bool const after = text.back() == ' ' && node.last_child() != child;
            child.set_value(((before ? " " : "") + said(core) + (after ? " " : "")).c_str());
        }
    }

    /// A formula, condition or address in which the sheets have their other names, and every text is translated.
    std::string formula(std::string_view written) {
        return formulas::rewritten(written, [&](formulas::Token const& token) {
            if (token.kind == formulas::TokenKind::text)
                return std::optional(formulas::quoted(said(formulas::unquoted(token.text)), '"'));
            return formulas::with_other_sheets(token, [&](std::string const& name) {
                auto const found = sheets_.find(name);
                return found == sheets_.end() ? std::nullopt : std::optional(found->second);
            });
        });
    }

    std::string said(std::string_view text) {
        return with_edition(has_words(text) ? texts_.translated(text) : std::string(text));
    }

    [[nodiscard]] std::string sheet(std::string const& name) const {
        auto const found = sheets_.find(name);
        return found == sheets_.end() ? name : found->second;
    }

    Texts& texts_;
    std::map<std::string, std::string> sheets_; // their new names by the old ones
};

} // namespace

void translate(pugi::xml_document& sheet, Texts& texts) {
    Translator translator(texts);
    translator.name_sheets(sheet.document_element());
    translator.walk(sheet.document_element());
}

} // namespace hearthcell::workbook
