#include "subjects.hpp"

#include <charconv>
#include <cmath>

namespace hearthcell::benchmarks {
namespace {

std::string text_of(double number) {
    char buffer[32];
    return {buffer, std::to_chars(buffer, buffer + sizeof buffer, number).ptr};
}

std::string replaced(std::string text, std::string const& key, std::string const& value) {
    for (std::size_t at = text.find(key); at != std::string::npos; at = text.find(key, at + value.size()))
        text.replace(at, key.size(), value);
    return text;
}

bool is_sound(Example const& example) {
    if (example.expected.kind == Expected::Kind::error)
        return false;
    for (Cell const& cell : example.arguments)
        for (double const reading : cell.column)
            if (std::isnan(reading))
                return false; // an array in a formula cannot hold an empty cell
    return true;
}

// IAPWS-IF97, equation 31, and ISO 2533 on the geopotential altitude.
constexpr char pressure_quarter[] = "SQRT(SQRT(0.101325*(1-0.0065*(6356766*A1/(6356766+A1))/288.15)^5.2558798))";
constexpr char e_of[] = "(B^2-17.073846940092*B+14.91510861353)";
constexpr char f_of[] = "(1167.0521452767*B^2+12020.82470247*B-4823.2657361591)";
constexpr char g_of[] = "(-724213.16703206*B^2-3232555.0322333*B+405113.40542057)";
constexpr char temperature_of[] =
    "(650.17534844798+D-SQRT((650.17534844798+D)^2-4*(-0.23855557567849+650.17534844798*D)))/2-273.15";

} // namespace

Formula call_of(Function const& function, Example const& example, std::string const& prefix) {
    Formula result{"=" + prefix + std::string(function.name) + "(", {}};
    std::string_view separator;
    for (Cell const& cell : example.arguments) {
        result.text += separator;
        separator = ";";
        if (cell.kind == Cell::Kind::number) {
            result.text += std::string(1, char('A' + result.inputs.size())) + "1";
            result.inputs.push_back(cell.number);
        } else if (cell.kind == Cell::Kind::text) {
            result.text += "\"" + std::string(cell.text) + "\"";
        } else if (cell.kind == Cell::Kind::column) {
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

std::vector<std::string> boiling_point_in_one_cell() {
    std::string const d =
        "(2*" + std::string(g_of) + "/(-" + f_of + "-SQRT(" + f_of + "^2-4*" + e_of + "*" + g_of + ")))";
    return {"=" + replaced(replaced(temperature_of, "D", d), "B", pressure_quarter)};
}

std::vector<std::string> boiling_point_in_columns() {
    return {"=" + std::string(pressure_quarter),
            "=" +
                replaced("2*" + std::string(g_of) + "/(-" + f_of + "-SQRT(" + f_of + "^2-4*" + e_of + "*" + g_of + "))",
                         "B", "R1"),
            "=" + replaced(temperature_of, "D", "S1")};
}

} // namespace hearthcell::benchmarks
