#include "functions/explain/words.hpp"

#include "manifest/generator/output.hpp"

namespace hearthcell::generator {
namespace {

// The wizard's own words around what the catalogue says.
constexpr Wording range_of{"{low} to {high}", "de {low} à {high}", "de {low} a {high}", "{low} hadi {high}"};
constexpr Wording or_range_of{", or {low} to {high}", ", ou de {low} à {high}", ", o de {low} a {high}",
                              ", au {low} hadi {high}"};
constexpr Wording range_is{"Range {}.", "Plage\u00a0: {}.", "Intervalo: {}.", "Kuanzia {}."};
constexpr Wording one_of{"One of {}.", "Au choix\u00a0: {}.", "Opciones: {}.", "Chagua moja: {}."};
constexpr Wording left_out{"Left out: {}.", "Si omis\u00a0: {}.", "Si se omite: {}.", "Ikiachwa: {}."};
constexpr Wording side_by_side{"Side by side: {}.", "Côte à côte\u00a0: {}.", "En columnas contiguas: {}.",
                               "Kando kwa kando: {}."};
constexpr Wording a_list_of{"A list of {}.", "Une liste\u00a0: {}.", "Una lista: {}.", "Orodha: {}."};

} // namespace

std::string identifier(std::string_view words) {
    std::string result;
    bool capital = false;
    for (char const c : words) {
        if (c == ' ' || c == '-') {
            capital = true;
            continue;
        }
        result += capital ? char(c - 'a' + 'A') : c;
        capital = false;
    }
    return result;
}

bool gives_number(Function const& function) {
    return function.result.measure != Measure::words && function.result.parts.empty() &&
           !std::holds_alternative<Wordy>(function.kernel);
}

std::string escaped(std::string_view text) {
    std::string result;
    for (char const c : text) {
        switch (c) {
        case '&':
            result += "&amp;";
            break;
        case '<':
            result += "&lt;";
            break;
        case '>':
            result += "&gt;";
            break;
        case '"':
            result += "&quot;";
            break;
        default:
            result += c;
        }
    }
    return result;
}

std::string amount(double number, Measure measure, Language language) {
    std::string text = in_words(number);
    bool const has_comma = language == Language::french || language == Language::spanish;
    if (std::size_t const point = text.find('.'); has_comma && point != std::string::npos)
        text[point] = ',';
    std::string_view const unit = unit_of(measure);
    return text + (unit.empty() ? "" : " ") + std::string(unit);
}

std::string allowed(Argument const& argument, Language language) {
    std::string list;
    auto const add = [&list](std::string_view text) {
        list += (list.empty() ? "\"" : ", \"") + std::string(text) + "\"";
    };
    for (std::string_view const choice : argument.choices)
        add(choice);
    if (argument.table != nullptr)
        for (Named const& row : argument.table->rows)
            add(row.name);
    if (argument.kind == Kind::choice || argument.kind == Kind::name)
        return list;
    std::string range(list.empty() ? range_of.in(language) : or_range_of.in(language));
    range = filled(range, "{low}", amount(argument.low, Measure::words, language));
    return list + filled(range, "{high}", amount(argument.high, argument.measure, language));
}

std::string full_help(Argument const& argument, Language language) {
    std::string text = std::string(argument.help.in(language)) + ".";
    auto const add = [&](Wording const& sentence, std::string_view value) {
        text += " " + filled(sentence.in(language), "{}", value);
    };
    if (argument.kind == Kind::number || argument.kind == Kind::column)
        add(range_is, allowed(argument, language));
    else if (argument.kind == Kind::choice || argument.table != nullptr)
        add(one_of, allowed(argument, language));
    if (!argument.optional)
        return text;
    if (argument.kind == Kind::choice)
        add(left_out, "\"" + std::string(argument.choices[0]) + "\"");
    else if (!argument.absent_means.empty())
        add(left_out, argument.absent_means.in(language));
    else
        add(left_out, amount(argument.fallback, argument.measure, language));
    return text;
}

std::string parts(Function const& function, Language language) {
    std::string text;
    for (Part const& part : function.result.parts) {
        std::string_view const unit = unit_of(part.measure);
        text += (text.empty() ? "" : ", ") + std::string(part.name.in(language)) +
                (unit.empty() ? "" : " (" + std::string(unit) + ")");
    }
    return text;
}

std::string full_summary(Function const& function, Language language) {
    std::string text = std::string(function.summary.in(language)) + ".";
    if (std::string const in_block = parts(function, language); !in_block.empty())
        text += " " + filled((function.result.list ? a_list_of : side_by_side).in(language), "{}", in_block);
    return function.caution.empty() ? text : text + " " + std::string(function.caution.in(language));
}

std::string signature(Function const& function) {
    std::string text = "STOVE." + std::string(function.name) + "(";
    bool first = true;
    for (Argument const& argument : function.arguments) {
        text += first ? "" : "; ";
        first = false;
        bool const open = argument.optional || argument.kind == Kind::rest;
        text += (open ? "[" : "") + std::string(argument.name) + (open ? "]" : "");
    }
    return text + ")";
}

} // namespace hearthcell::generator
