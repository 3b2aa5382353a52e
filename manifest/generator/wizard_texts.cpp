#include "functions/call/part.hpp"
#include "functions/explain/phrases.hpp"

#include "manifest/generator/output.hpp"

namespace hearthcell::generator {
namespace {

// The wizard's own words around what the catalogue says.
constexpr Wording range_is{"Range {low} to {high}", "De {low} à {high}", "De {low} a {high}",
                           "Kuanzia {low} hadi {high}"};
constexpr Wording one_of{" One of {}.", " Au choix\u00a0: {}.", " Opciones: {}.", " Chagua moja: {}."};
constexpr Wording or_one_of{", or one of {}.", ", ou au choix\u00a0: {}.", ", o una de las opciones: {}.",
                            ", au chagua moja: {}."};
constexpr Wording and_more{", … (see the function guide)", ", … (voir le guide des fonctions)",
                           ", … (véase la guía de funciones)", ", … (tazama mwongozo wa vitendakazi)"};
constexpr std::size_t room_for_names = 180; ///< in bytes; the rest of a table stands in the guide
constexpr Wording left_out{"Left out: {}.", "Si omis\u00a0: {}.", "Si falta: {}.", "Ikiachwa: {}."};
constexpr Wording if_left_out{" (if left out)", " (si omis)", " (si falta)", " (ikiachwa)"};
constexpr Wording one_part_of{"Parts: {}.", "Résultats\u00a0: {}.", "Resultados: {}.", "Matokeo: {}."};
constexpr Wording or_all{" \"{}\": all of them.", " \"{}\"\u00a0: tous.", " \"{}\": todos.", " \"{}\": yote."};
constexpr Wording a_list_of{"A list of {}.", "Une liste\u00a0: {}.", "Una lista: {}.", "Orodha: {}."};

std::string range(Argument const& argument, Language language) {
    std::string const text = filled(range_is.in(language), "{low}", amount(argument.low, Measure::words, language));
    return filled(text, "{high}", amount(argument.high, Measure::words, language)); // the text opens with the unit
}

/// What leaving it out means; empty where a list of options says that.
std::string default_of(Function const& function, Argument const& argument, Language language) {
    if (!argument.optional || argument.kind == ArgumentKind::choice)
        return "";
    if (argument.kind == ArgumentKind::part)
        return std::string(part_unless_named(function, language));
    return argument.absent_means.empty() ? amount(argument.fallback, Measure::words, language)
                                         : std::string(argument.absent_means.in(language));
}

/// A range that only keeps nonsense out tells nobody anything.
bool has_telling_range(Argument const& argument) {
    bool const has_range = argument.kind == ArgumentKind::number || argument.kind == ArgumentKind::column ||
                           argument.kind == ArgumentKind::number_or_name;
    return has_range && argument.high < 1e12;
}

} // namespace

std::string amount(double number, Measure measure, Language language) {
    return quantity(Speaker(language), number, measure);
}

std::string options(Function const& function, Argument const& argument, Language language) {
    std::string list;
    auto const add = [&list](std::string_view text) {
        list += (list.empty() ? "\"" : ", \"") + std::string(text) + "\"";
    };
    for (std::string_view const choice : argument.choices) {
        add(choice);
        if (argument.optional && choice == argument.choices[0])
            list += if_left_out.in(language);
    }
    if (argument.kind == ArgumentKind::part) {
        for (Part const& part : function.result.parts)
            add(part.name.in(language));
        add(all_parts.in(language));
    }
    if (!argument.lists_names)
        return list;
    for (Named const& row : argument.table->rows) {
        if (list.size() > room_for_names)
            return list.append(and_more.in(language));
        add(row.name.in(language));
    }
    return list;
}

std::string_view part_unless_named(Function const& function, Language language) {
    return function.result.all_unless_named ? all_parts.in(language) : function.result.parts[0].name.in(language);
}

std::string full_help(Function const& function, Argument const& argument, Language language) {
    std::string_view const unit = unit_of(argument.measure);
    std::string text = (unit.empty() ? "" : std::string(unit) + " – ") + std::string(argument.help.in(language)) + ".";
    bool const is_part = argument.kind == ArgumentKind::part; // the function's own text lists them
    std::string const list = is_part ? "" : options(function, argument, language);
    bool const has_range = has_telling_range(argument);
    if (has_range)
        text += " " + range(argument, language) + (list.empty() ? "." : "");
    if (!list.empty())
        text += filled((has_range ? or_one_of : one_of).in(language), "{}", list);
    if (is_part)
        text += filled(or_all.in(language), "{}", all_parts.in(language));
    std::string const fallback = default_of(function, argument, language);
    return fallback.empty() ? text : text + " " + filled(left_out.in(language), "{}", fallback);
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
    std::string_view const unit = gives_number(function) ? unit_of(function.result.measure) : "";
    std::string text =
        std::string(function.summary.in(language)) + (unit.empty() ? "" : ", " + std::string(unit)) + ".";
    if (std::string const in_block = parts(function, language); !in_block.empty())
        text += " " + filled((function.result.list ? a_list_of : one_part_of).in(language), "{}", in_block);
    return function.caution.empty() ? text : text + " " + std::string(function.caution.in(language));
}

} // namespace hearthcell::generator
