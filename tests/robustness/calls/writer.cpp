#include "functions/number/meaning.hpp"
#include "written_call.hpp"

#include <algorithm>
#include <bit>
#include <charconv>
#include <cmath>

namespace hearthcell::tests {
namespace {

std::string quoted(std::string_view text) {
    std::string result = "\"";
    for (char const c : text)
        result += c == '"' ? "\"\"" : std::string(1, c);
    return result + "\"";
}

std::string write_cell(Block const& block, std::size_t place) {
    auto const text = std::ranges::find(block.texts, place, &Block::Text::place);
    if (text != block.texts.end())
        return quoted(text->text);
    double const number = block.numbers[place];
    return is_absent(number) ? "_" : write_number(number);
}

/// Any cell by `write`, in the notation that is read back.
template <class Write> std::string write_block(Block const& block, Write write) {
    std::string result = "[";
    for (std::size_t i = 0; i < block.numbers.size(); ++i) {
        bool const next_row = block.columns > 1 && i > 0 && i % block.columns == 0;
        result += (next_row ? " / " : i > 0 ? " " : "") + write(block, i);
    }
    return result + "]";
}

std::string write_value(Value const& value) {
    if (double const* number = std::get_if<double>(&value))
        return write_number(*number);
    if (std::string const* text = std::get_if<std::string>(&value))
        return quoted(*text);
    if (Block const* block = std::get_if<Block>(&value))
        return write_block(*block, write_cell);
    return "";
}

std::string write_element(Block const& block, std::size_t place) {
    double const number = block.numbers[place];
    bool const has_text = std::ranges::find(block.texts, place, &Block::Text::place) != block.texts.end();
    if (failed(number) && !has_text)
        return std::string(sign_of(error_of(failure_of(number).reason)));
    return write_cell(block, place);
}

} // namespace

std::string write_number(double number) {
    char buffer[40];
    if (std::isnan(number)) {
        auto const [end, error] =
            std::to_chars(buffer, buffer + sizeof buffer, std::bit_cast<std::uint64_t>(number), 16);
        return "0x" + std::string(buffer, end);
    }
    auto const [end, error] = std::to_chars(buffer, buffer + sizeof buffer, number);
    return {buffer, end};
}

std::string write_call(Function const& function, std::span<Value const> values) {
    std::string result = std::string(function.name) + "(";
    for (std::size_t i = 0; i < values.size(); ++i)
        result += (i > 0 ? "; " : "") + write_value(values[i]);
    return result + ")";
}

std::string write_outcome(Outcome const& outcome) {
    if (double const* number = std::get_if<double>(&outcome))
        return write_number(*number);
    if (std::string const* text = std::get_if<std::string>(&outcome))
        return quoted(*text);
    if (Block const* block = std::get_if<Block>(&outcome))
        return write_block(*block, write_element);
    return std::string(sign_of(error_of(std::get<Failure>(outcome).reason)));
}

} // namespace hearthcell::tests
