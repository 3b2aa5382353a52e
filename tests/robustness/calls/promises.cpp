#include "promises.hpp"

#include "functions/call/call.hpp"
#include "functions/explain/explain.hpp"
#include "functions/number/meaning.hpp"
#include "written_call.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <ctime>

namespace hearthcell::tests {
namespace {

// Of this thread's processor time, so that other programs do not count; the slowest call takes a tenth of it under
// the sanitizers.
constexpr double most_seconds = 2;

double seconds_of_processor() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return double(now.tv_sec) + double(now.tv_nsec) * 1e-9;
}

bool same_bits(double a, double b) {
    return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b);
}

bool same(Outcome const& a, Outcome const& b) {
    if (a.index() != b.index())
        return false;
    if (double const* number = std::get_if<double>(&a))
        return same_bits(*number, std::get<double>(b));
    if (std::string const* text = std::get_if<std::string>(&a))
        return *text == std::get<std::string>(b);
    if (Failure const* why = std::get_if<Failure>(&a)) {
        Failure const& other = std::get<Failure>(b);
        return why->reason == other.reason && why->argument == other.argument && why->row == other.row;
    }
    Block const &block = std::get<Block>(a), &other = std::get<Block>(b);
    auto const same_text = [](Block::Text const& x, Block::Text const& y) {
        return x.place == y.place && x.text == y.text;
    };
    return block.rows == other.rows && block.columns == other.columns &&
           std::ranges::equal(block.numbers, other.numbers, same_bits) &&
           std::ranges::equal(block.texts, other.texts, same_text);
}

bool is_specified(Failure const& why) {
    // `internal` is for what the LibreOffice side catches; no function says it.
    return why.reason > Reason::absent && why.reason < Reason::internal && meaning_of(why.reason).reason == why.reason;
}

std::string broken_by(Failure const& why, Function const& function, std::span<Value const> values) {
    if (!is_specified(why))
        return "fails for no specified reason";
    if (why.argument != no_argument && why.argument >= function.arguments.size())
        return "blames an argument that it does not have";
    if (why.row == 0)
        return "";
    if (why.argument == no_argument)
        return ""; // of columns that stand side by side
    Block const* const block = why.argument < values.size() ? std::get_if<Block>(&values[why.argument]) : nullptr;
    std::size_t const rows = block == nullptr ? 1 : block->numbers.size();
    return why.row <= rows ? "" : "blames a row that is not there";
}

std::string broken_by(double number, Result const& result) {
    if (!std::isfinite(number))
        return "gives a number that is not finite";
    // Of a function with several results each part has its own range.
    bool const in_range = !result.parts.empty() || (number >= result.low && number <= result.high);
    return in_range ? "" : "gives a number outside its range";
}

std::string broken_by(Block const& block, Function const& function, std::span<Value const> values) {
    if (block.rows * block.columns != block.numbers.size())
        return "gives a block of another size than it says";
    for (Block::Text const& text : block.texts)
        if (text.place >= block.numbers.size() || !same_bits(block.numbers[text.place], text_in_block))
            return "gives a text in no cell of its block";
    for (double const number : block.numbers) {
        if (std::isfinite(number) || is_absent(number))
            continue;
        if (std::string const broken = broken_by(failure_of(number), function, values); !broken.empty())
            return "has a cell that " + broken;
    }
    return "";
}

std::string broken_by(Outcome const& outcome, Function const& function, std::span<Value const> values) {
    if (double const* number = std::get_if<double>(&outcome))
        return broken_by(*number, function.result);
    if (Failure const* why = std::get_if<Failure>(&outcome))
        return broken_by(*why, function, values);
    if (Block const* block = std::get_if<Block>(&outcome))
        return broken_by(*block, function, values);
    // The check of a workbook is told nothing of a call that is fine.
    bool const may_be_silent = function.name == "EXPLAIN";
    return std::get<std::string>(outcome).empty() && !may_be_silent ? "gives an empty text" : "";
}

/// The derivative's own value is the value, to the last bit.
std::string broken_by_gradient(Function const& function, std::span<Value const> values, Outcome const& outcome) {
    double const* const value = std::get_if<double>(&outcome);
    Numeric const* const equation = std::get_if<Numeric>(&function.kernel);
    if (equation == nullptr || equation->gradient == nullptr || value == nullptr)
        return "";
    std::array<Scalar, most_arguments> scalars;
    for (std::size_t i = 0; i < function.arguments.size(); ++i)
        scalars[i] = read_scalar(function.arguments[i], i < values.size() ? values[i] : Value());
    Resolved const given = resolve(function, std::span(scalars).first(function.arguments.size()));
    std::array<double, most_arguments> slopes{};
    double const again = equation->gradient(given.numbers.data(), given.choices.data(), slopes.data());
    return same_bits(*value, again) ? "" : "gives another value with its derivatives";
}

std::string broken_by_sentence(std::string const& sentence, std::span<Value const> values) {
    if (sentence.empty())
        return "is explained by nothing";
    auto const has_brace = [](Value const& value) {
        std::string const* const text = std::get_if<std::string>(&value);
        Block const* const block = std::get_if<Block>(&value);
        return (text != nullptr && text->find('{') != std::string::npos) ||
               (block != nullptr && std::ranges::any_of(block->texts, [](Block::Text const& cell) {
                    return cell.text.find('{') != std::string::npos;
                }));
    };
    bool const left_open = sentence.find('{') != std::string::npos && std::ranges::none_of(values, has_brace);
    return left_open ? "is explained with a gap left open: " + sentence : "";
}

} // namespace

std::string broken_promise(Function const& function, std::span<Value const> values) {
    double const start = seconds_of_processor();
    Outcome const outcome = call(function, values);
    double const end = seconds_of_processor();
    if (end - start > most_seconds)
        return "takes " + std::to_string(end - start) + " s";
    if (std::string broken = broken_by(outcome, function, values); !broken.empty())
        return broken;
    if (!same(outcome, call(function, values)))
        return "gives another result the second time";
    if (std::string broken = broken_by_gradient(function, values, outcome); !broken.empty())
        return broken;
    std::string const sentence = explain(function, values);
    if (sentence != explain(function, values))
        return "is explained otherwise the second time";
    return broken_by_sentence(sentence, values);
}

} // namespace hearthcell::tests
