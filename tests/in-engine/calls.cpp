#include "calls.hpp"

#include "functions/call/call.hpp"
#include "functions/number/meaning.hpp"

#include <charconv>
#include <cmath>
#include <stdexcept>

namespace hearthcell::tests {

std::string in_formula(double number) {
    char buffer[32];
    auto const [end, error] = std::to_chars(buffer, buffer + sizeof buffer, number);
    return {buffer, end};
}

CellError shown_error(Error error) {
    switch (error) {
    case Error::value:
        return not_a_value;
    case Error::number:
        return not_a_result;
    case Error::not_available:
        return not_available;
    case Error::parameters:
        return parameter_list;
    }
    throw std::logic_error("no such kind of error");
}

std::string Call::formula() const {
    std::string text = "=STOVE." + std::string(function->name) + "(";
    for (std::size_t i = 0; i < texts.size(); ++i)
        text += (i == 0 ? "" : ";") + texts[i];
    return text + ")";
}

CellValue Call::expected() const {
    Outcome const outcome = call(*function, values);
    if (double const* number = std::get_if<double>(&outcome))
        return *number;
    if (std::string const* text = std::get_if<std::string>(&outcome))
        return *text;
    if (Failure const* why = std::get_if<Failure>(&outcome))
        return shown_error(error_of(why->reason));
    Block const& block = std::get<Block>(outcome);
    for (Block::Text const& text : block.texts)
        if (text.place == 0)
            return text.text;
    double const first = block.numbers.at(0);
    return failed(first) ? CellValue(shown_error(error_of(failure_of(first).reason))) : CellValue(first);
}

std::string Calls::place(std::span<double const> column) {
    if (auto const there = places.find(column.data()); there != places.end())
        return there->second;
    std::string const letters{char('A' + places.size() / 26), char('A' + places.size() % 26)}; // AA, AB … ZZ
    office::TextRows rows;
    for (double const reading : column)
        rows.push_back({std::isnan(reading) ? "" : in_formula(reading)});
    sheet.formulas(letters + "1", rows);
    return places[column.data()] = "$" + letters + "$1:$" + letters + "$" + std::to_string(column.size());
}

Call Calls::of(Function const& function, Example const& example) {
    Call result{&function, {}, {}};
    for (Cell const& cell : example.arguments) {
        switch (cell.kind) {
        case CellKind::omitted:
            result.texts.emplace_back();
            result.values.emplace_back();
            break;
        case CellKind::number:
            result.texts.push_back(in_formula(cell.number));
            result.values.emplace_back(cell.number);
            break;
        case CellKind::text:
            result.texts.push_back("\"" + std::string(cell.text) + "\"");
            result.values.emplace_back(std::string(cell.text));
            break;
        case CellKind::column: {
            Block block{cell.column.size(), 1, {}, {}};
            for (double const reading : cell.column)
                block.numbers.push_back(std::isnan(reading) ? absent : reading);
            result.texts.push_back(place(cell.column));
            result.values.emplace_back(std::move(block));
            break;
        }
        }
    }
    return result;
}

Call question_about(Call const& call) {
    Call question{find_function("EXPLAIN"), call.texts, {}};
    question.texts.insert(question.texts.begin(), "\"" + std::string(call.function->name) + "\"");
    return question;
}

Example const& sound_example(Function const& function) {
    for (Example const& example : function.examples)
        if (example.expected.kind != ExpectedKind::error)
            return example;
    throw std::logic_error("STOVE." + std::string(function.name) + " has no example without an error");
}

} // namespace hearthcell::tests
