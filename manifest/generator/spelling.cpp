// How names and texts of the catalogue are written in what is made from it.

#include "functions/catalogue/names.hpp"
#include "manifest/generator/output.hpp"

#include <algorithm>
#include <vector>

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

std::string stored_name(Function const& function) {
    std::string name(service);
    name.append(".").append(function.stored);
    for (char& c : name)
        c = c >= 'a' && c <= 'z' ? char(c - 'a' + 'A') : c;
    return name;
}

bool gives_number(Function const& function) {
    return function.result.measure != Measure::words && function.result.parts.empty() && !function.result.list &&
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

std::string filled(std::string_view text, std::string_view key, std::string_view value) {
    std::string result(text);
    for (std::size_t at = result.find(key); at != std::string::npos; at = result.find(key, at + value.size()))
        result.replace(at, key.size(), value);
    return result;
}

std::string marked(Source const& source, Language language) {
    return std::string(source.title.in(language)) + (source.from_memory ? "*" : "");
}

std::string other_names(Named const& row, Language language) {
    std::string list;
    std::vector<std::string_view> seen{row.name.in(language)};
    for_every_name(row, [&](std::string_view name) {
        if (std::ranges::any_of(seen, [&](std::string_view one) { return same_name(one, name); }))
            return;
        seen.push_back(name);
        list += (list.empty() ? "" : ", ") + std::string(name);
    });
    return list;
}

std::string signature(Function const& function, Language language) {
    std::string text = "STOVE." + std::string(function.name) + "(";
    std::string_view semicolon;
    for (Argument const& argument : function.arguments) {
        text.append(semicolon).append(shown_name(argument, language));
        semicolon = "; ";
    }
    return text + ")";
}

} // namespace hearthcell::generator
