#include "subjects.hpp"

#include <charconv>
#include <cmath>

namespace hearthcell::benchmarks {
namespace {

std::string text_of(double number) {
    char buffer[32];
    return {buffer, std::to_chars(buffer, buffer + sizeof buffer, number).ptr};
}

bool is_sound(Example const& example) {
    if (example.expected.kind == ExpectedKind::error)
        return false;
    for (Cell const& cell : example.arguments)
        for (double const reading : cell.column)
            if (std::isnan(reading))
                return false; // an array in a formula cannot hold an empty cell
    return true;
}

} // namespace

Formula call_of(Function const& function, Example const& example, std::string const& prefix) {
    Formula result{"=" + prefix + std::string(function.name) + "(", {}};
    std::string_view separator;
    for (Cell const& cell : example.arguments) {
        result.text += separator;
        separator = ";";
        if (cell.kind == CellKind::number) {
            result.text += std::string(1, char('A' + result.inputs.size())) + "1";
            result.inputs.push_back(cell.number);
        } else if (cell.kind == CellKind::text) {
            result.text += "\"" + std::string(cell.text) + "\"";
        } else if (cell.kind == CellKind::column) {
            std::string_view next = "{";
            for (double const reading : cell.column) {
                result.text += std::string(next) + text_of(reading);
                next = "|";
            }
            result.text += "}";
        }
    }
    result.text += ")";
    return result;
}

Example const* shortest_example(Function const& function) {
    Example const* best = nullptr;
    for (Example const& example : function.examples)
        if (is_sound(example) && (best == nullptr || example.arguments.size() < best->arguments.size()))
            best = &example;
    return best;
}

Example const* longest_example(Function const& function) {
    Example const* best = nullptr;
    for (Example const& example : function.examples)
        if (is_sound(example) && (best == nullptr || example.arguments.size() > best->arguments.size()))
            best = &example;
    return best;
}

} // namespace hearthcell::benchmarks
