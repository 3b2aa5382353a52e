#include "functions/explain/words.hpp"

#include "manifest/generator/output.hpp"

namespace hearthcell::generator {

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

std::string full_help(Argument const& argument) {
    std::string text = std::string(argument.help) + ".";
    bool const has_range = argument.kind == Kind::number || argument.kind == Kind::column;
    if (has_range)
        text += " Range " + allowed_words(argument) + ".";
    else if (argument.kind == Kind::choice || argument.table != nullptr)
        text += " One of " + allowed_words(argument) + ".";
    if (!argument.optional)
        return text;
    if (argument.kind == Kind::choice)
        return text + " Left out: \"" + std::string(argument.choices[0]) + "\".";
    if (!argument.absent_means.empty())
        return text + " Left out: " + std::string(argument.absent_means) + ".";
    return text + " Left out: " + in_words(argument.fallback, argument.measure) + ".";
}

std::string parts(Function const& function) {
    std::string text;
    for (Part const& part : function.result.parts) {
        std::string_view const unit = unit_of(part.measure);
        text +=
            (text.empty() ? "" : ", ") + std::string(part.name) + (unit.empty() ? "" : " (" + std::string(unit) + ")");
    }
    return text;
}

std::string full_summary(Function const& function) {
    std::string text = std::string(function.summary) + ".";
    if (std::string const in_block = parts(function); !in_block.empty())
        text += (function.result.list ? " A list of " : " Side by side: ") + in_block + ".";
    return function.caution.empty() ? text : text + " " + std::string(function.caution);
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
