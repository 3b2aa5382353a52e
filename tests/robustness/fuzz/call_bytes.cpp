#include "call_bytes.hpp"

#include "functions/call/part.hpp"

#include <algorithm>
#include <cmath>
#include <cstring>

namespace hearthcell::tests {
namespace {

/// The kinds of an argument. A seed has only the first four; the others lead the fuzzer into the kernels, where
/// numbers out of the blue end at the check of the ranges.
enum class Kind8 : std::uint8_t { omitted, raw_number, text, block, sensible, ramp, function_name, sensible_column };
constexpr unsigned kinds = 8;
enum class Cell8 : std::uint8_t { blank, raw_number, small_number, text };
constexpr unsigned cell_kinds = 4;

std::vector<Function const*> const& all_functions() {
    static std::vector<Function const*> const functions = [] {
        std::vector<Function const*> all;
        for (Group const& group : catalogue())
            for (Function const& function : group.functions)
                all.push_back(&function);
        return all;
    }();
    return functions;
}

class Bytes {
public:
    explicit Bytes(std::span<std::uint8_t const> bytes) : rest(bytes) {}

    unsigned byte() {
        if (rest.empty())
            return 0;
        unsigned const result = rest.front();
        rest = rest.subspan(1);
        return result;
    }
    unsigned word() {
        unsigned const low = byte();
        return low | byte() << 8;
    }
    double raw_number() {
        double result = 0;
        std::size_t const count = std::min(rest.size(), sizeof result);
        std::memcpy(&result, rest.data(), count);
        rest = rest.subspan(count);
        return result;
    }
    std::string text() {
        std::size_t const count = std::min(std::size_t(byte()), rest.size());
        std::string result(reinterpret_cast<char const*>(rest.data()), count);
        rest = rest.subspan(count);
        return result;
    }
    [[nodiscard]] bool at_end() const { return rest.empty(); }

private:
    std::span<std::uint8_t const> rest;
};

/// A value that the argument allows: somewhere in its range, one of its choices or of its names.
Value sensible(Argument const& argument, Bytes& bytes) {
    unsigned const where = bytes.word();
    if (argument.kind == ArgumentKind::choice)
        return std::string(argument.choices[where % argument.choices.size()]);
    if (argument.kind == ArgumentKind::name || (argument.kind == ArgumentKind::number_or_name && where % 2 == 0))
        return std::string(argument.table->rows[where % argument.table->rows.size()].name);
    return argument.low + (argument.high - argument.low) * double(where) / 65535;
}

/// The name of one of its results, or the word for all.
Value a_part(Function const& function, Bytes& bytes) {
    List<Part, 8> const& parts = function.result.parts;
    std::size_t const which = bytes.byte() % (parts.size() + 1);
    return std::string(which < parts.size() ? parts[which].name : all_parts);
}

Block block(Bytes& bytes) {
    Block result;
    result.rows = bytes.byte();
    result.columns = bytes.byte();
    if (result.rows * result.columns > most_cells)
        result.rows = most_cells / result.columns;
    for (std::size_t i = 0; i < result.rows * result.columns; ++i) {
        switch (Cell8(bytes.byte() % cell_kinds)) {
        case Cell8::blank:
            result.numbers.push_back(absent);
            break;
        case Cell8::raw_number:
            result.numbers.push_back(bytes.raw_number());
            break;
        case Cell8::small_number:
            result.numbers.push_back(double(bytes.word()) / 64 - 100);
            break;
        case Cell8::text:
            result.numbers.push_back(text_in_block);
            result.texts.push_back({i, bytes.text()});
            break;
        }
    }
    return result;
}

/// A column such as a log has: from a start by steps, with some noise and bent upwards or downwards.
Block ramp(Bytes& bytes) {
    Block result{bytes.byte(), 1, {}, {}};
    double const start = double(bytes.word()) / 512 - 20, step = double(int(bytes.byte()) - 40) / 16;
    double const bend = double(int(bytes.byte()) - 128) / 8192, noise = double(bytes.byte()) / 512;
    unsigned state = bytes.byte();
    for (std::size_t i = 0; i < result.rows; ++i) {
        state = state * 1664525U + 1013904223U;
        double const n = double(i);
        result.numbers.push_back(start + n * (step + bend * n) + noise * (double(state >> 16) / 32768 - 1));
    }
    return result;
}

/// A sensible value for each argument of a function, in a column.
Block sensible_column(Bytes& bytes) {
    Function const& function = *all_functions()[bytes.byte() % all_functions().size()];
    Block result{function.arguments.size(), 1, {}, {}};
    for (Argument const& argument : function.arguments) {
        Value const value = sensible(argument, bytes);
        if (std::string const* text = std::get_if<std::string>(&value))
            result.texts.push_back({result.numbers.size(), *text});
        result.numbers.push_back(std::holds_alternative<double>(value) ? std::get<double>(value) : text_in_block);
    }
    return result;
}

Value value(Function const& function, std::size_t place, Bytes& bytes) {
    switch (Kind8(bytes.byte() % kinds)) {
    case Kind8::omitted:
        return {};
    case Kind8::raw_number:
        return bytes.raw_number();
    case Kind8::text:
        return bytes.text();
    case Kind8::block:
        return block(bytes);
    case Kind8::sensible:
        if (place >= function.arguments.size())
            return {};
        return function.arguments[place].kind == ArgumentKind::part ? a_part(function, bytes)
                                                                    : sensible(function.arguments[place], bytes);
    case Kind8::ramp:
        return ramp(bytes);
    case Kind8::function_name:
        return std::string(all_functions()[bytes.byte() % all_functions().size()]->name);
    case Kind8::sensible_column:
        return sensible_column(bytes);
    }
    return {};
}

void add_number(std::string& bytes, double number) {
    char raw[sizeof number];
    std::memcpy(raw, &number, sizeof number);
    bytes.append(raw, sizeof raw);
}
void add_text(std::string& bytes, std::string_view text) {
    bytes += char(std::min(text.size(), std::size_t(255)));
    bytes += text.substr(0, 255);
}

void add_block(std::string& bytes, Block const& block) {
    bytes += char(block.rows);
    bytes += char(block.columns);
    for (std::size_t i = 0; i < block.numbers.size(); ++i) {
        auto const text = std::ranges::find(block.texts, i, &Block::Text::place);
        if (text != block.texts.end()) {
            bytes += char(Cell8::text);
            add_text(bytes, text->text);
        } else {
            bytes += char(Cell8::raw_number);
            add_number(bytes, block.numbers[i]);
        }
    }
}

} // namespace

FuzzedCall call_of(std::span<std::uint8_t const> all) {
    Bytes bytes(all);
    Function const& function = *all_functions()[bytes.byte() % all_functions().size()];
    FuzzedCall result{&function, {}};
    // One more than there are now and then, so that the check of their number is reached.
    std::size_t const count = bytes.byte() % (function.arguments.size() + 3);
    for (std::size_t i = 0; i < count; ++i)
        result.values.push_back(value(function, i, bytes));
    return result;
}

std::string bytes_of(Function const& function, std::span<Value const> values) {
    std::string bytes;
    bytes += char(std::ranges::find(all_functions(), &function) - all_functions().begin());
    bytes += char(values.size());
    for (Value const& value : values) {
        if (double const* number = std::get_if<double>(&value)) {
            bytes += char(Kind8::raw_number);
            add_number(bytes, *number);
        } else if (std::string const* text = std::get_if<std::string>(&value)) {
            bytes += char(Kind8::text);
            add_text(bytes, *text);
        } else if (Block const* block = std::get_if<Block>(&value)) {
            bytes += char(Kind8::block);
            add_block(bytes, *block);
        } else {
            bytes += char(Kind8::omitted);
        }
    }
    return bytes;
}

} // namespace hearthcell::tests
