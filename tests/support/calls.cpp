#include "support/calls.hpp"

#include "functions/explain/explain.hpp"
#include "functions/words/sentences.hpp"

#include <gtest/gtest.h>

#include <cstdio>
#include <cstdlib>

namespace hearthcell::tests {
namespace {

std::string precise(double number) {
    char text[32];
    std::snprintf(text, sizeof text, "%.12g", number);
    return text;
}

std::span<Cell const> span_of(std::initializer_list<Cell> cells) {
    return {cells.begin(), cells.size()};
}

} // namespace

Function const& function_named(std::string_view name) {
    Function const* const function = find_function(name);
    if (function == nullptr) {
        std::fprintf(stderr, "No function %s in the catalogue.\n", std::string(name).c_str());
        std::abort();
    }
    return *function;
}

Outcome called(std::string_view name, std::initializer_list<Cell> arguments) {
    return call(function_named(name), values_of(span_of(arguments)));
}

double number(std::string_view name, std::initializer_list<Cell> arguments) {
    Outcome const outcome = called(name, arguments);
    if (double const* result = std::get_if<double>(&outcome))
        return *result;
    ADD_FAILURE() << in_words(name, span_of(arguments)) << " gives " << in_words(outcome) << ", not a number";
    return blank;
}

Reason reason(std::string_view name, std::initializer_list<Cell> arguments) {
    Outcome const outcome = called(name, arguments);
    if (Failure const* why = std::get_if<Failure>(&outcome))
        return why->reason;
    ADD_FAILURE() << in_words(name, span_of(arguments)) << " gives " << in_words(outcome) << ", not an error";
    return Reason::none;
}

std::string explained(std::string_view name, std::span<Cell const> arguments) {
    return explain(function_named(name), values_of(arguments));
}

std::string explained(std::string_view name, std::initializer_list<Cell> arguments) {
    return explained(name, span_of(arguments));
}

std::string in_words(std::string_view name, std::span<Cell const> arguments) {
    std::string text = std::string(name) + "(";
    std::string_view semicolon;
    for (Cell const& cell : arguments) {
        text += semicolon;
        semicolon = "; ";
        if (cell.kind == CellKind::number)
            text += precise(cell.number);
        else if (cell.kind == CellKind::text)
            text += "\"" + std::string(cell.text) + "\"";
        else if (cell.kind == CellKind::column)
            text += "a column of " + std::to_string(cell.column.size());
    }
    return text + ")";
}

std::string in_words(Outcome const& outcome) {
    if (double const* number = std::get_if<double>(&outcome))
        return precise(*number);
    if (std::string const* text = std::get_if<std::string>(&outcome))
        return "\"" + *text + "\"";
    if (Failure const* why = std::get_if<Failure>(&outcome))
        return "an error (" + std::string(sentences::of(why->reason).english) + ")";
    return "a block";
}

} // namespace hearthcell::tests
