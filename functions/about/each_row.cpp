#include "functions/about/each_row.hpp"

#include "functions/about/name_asked.hpp"
#include "functions/call/call.hpp"
#include "functions/catalogue/catalogue.hpp"
#include "functions/contract/cells.hpp"
#include "functions/explain/explain.hpp"
#include "functions/words/sentences.hpp"
#include "functions/words/speaker.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace hearthcell {
namespace {

/// A call for each row, as a cell asks for it.
struct Rows {
    Function const* function = nullptr;
    std::vector<Value> arguments; ///< of the row read last; single values stay
    struct Column {
        std::size_t place; ///< among the arguments
        Cells cells;
    };
    std::vector<Column> columns;
    std::size_t count = 1; ///< up to the last row that holds anything, but one where none does
    bool across = false;   ///< the blocks are rows, and so is the result
    Failure failure;

    /// Reads the next row; false where it is empty in every block.
    bool read_next();
};

/// The next cell's value; false where it is empty. A lone empty cell reaches every function as 0: through a column it
/// is no other.
bool read(Cells& cells, Value& value) {
    value = cells.next();
    if (!std::holds_alternative<std::monostate>(value))
        return true;
    value = 0.0;
    return false;
}

bool Rows::read_next() {
    bool holds_something = columns.empty();
    for (Column& column : columns)
        holds_something = read(column.cells, arguments[column.place]) || holds_something;
    return holds_something;
}

/// EXPLAIN of a function about functions could ask itself on and on.
bool asks_itself(Function const& function, std::span<Value const> arguments) {
    if (!is_open_ended(function))
        return false;
    std::string const* const name = std::get_if<std::string>(&value_at(arguments, 0));
    Function const* const explained = name == nullptr ? nullptr : find_function(read_name_asked(*name).name);
    return explained == nullptr || is_open_ended(*explained);
}

/// The blocks must be alike: all columns, or all rows, of one length. A block of one cell is a single value.
Failure add_columns(Rows& rows, std::span<Value const> given) {
    Block const* first = nullptr;
    for (std::size_t i = 0; i < given.size(); ++i) {
        Block const* const block = std::get_if<Block>(&given[i]);
        if (block == nullptr)
            continue;
        if (block->numbers.size() == 1) {
            Cells only(*block);
            read(only, rows.arguments[i]);
            continue;
        }
        if (block->numbers.empty() || (block->rows > 1 && block->columns > 1)) // empty: what no cell can hold
            return {Reason::block_for_column, 1};
        if (first != nullptr && (block->rows != first->rows || block->columns != first->columns))
            return {Reason::columns_differ, 1};
        if (first == nullptr)
            first = block;
        rows.columns.push_back({i, Cells(*block)});
        rows.count = std::max(rows.count, used_cells(*block));
    }
    rows.across = first != nullptr && first->columns > 1;
    return {};
}

Rows read_rows(std::span<Value const> given) {
    Rows rows;
    rows.function = find_function(std::get<std::string>(given[0]));
    if (rows.function == nullptr) {
        rows.failure = {Reason::unknown_name, 0};
        return rows;
    }
    std::span<Value const> const arguments = given.subspan(1);
    if (rows.function->result.list || asks_itself(*rows.function, arguments)) {
        rows.failure = {Reason::several_values, 0};
        return rows;
    }
    rows.arguments.assign(arguments.begin(), arguments.end());
    rows.failure = add_columns(rows, arguments);
    return rows;
}

/// Where a row's result goes.
class Results {
public:
    explicit Results(std::size_t count) { block_.numbers.reserve(count); }

    void add_blank() { block_.numbers.push_back(absent); }
    void add(double number) {
        Failure const why = failure_of(number); // its argument is one of the function that is called, not of ours
        block_.numbers.push_back(why.reason == Reason::none ? number : failure(why.reason));
    }
    void add(Outcome const& outcome) {
        if (std::string const* const text = std::get_if<std::string>(&outcome)) {
            block_.texts.push_back({block_.numbers.size(), *text});
            block_.numbers.push_back(text_in_block);
        } else if (double const* const number = std::get_if<double>(&outcome)) {
            block_.numbers.push_back(*number);
        } else {
            Failure const* const why = std::get_if<Failure>(&outcome); // or all parts of a result are asked for
            block_.numbers.push_back(failure(why != nullptr ? why->reason : Reason::several_values));
        }
    }
    Block take(bool across) && {
        block_.rows = across ? 1 : block_.numbers.size();
        block_.columns = across ? block_.numbers.size() : 1;
        return std::move(block_);
    }

private:
    Block block_;
};

/// An equation of single numbers needs no values by name: its arguments are read once, and of each row those that
/// change.
void answer_equation(Rows& rows, Results& results) {
    List<Argument, most_arguments> const& arguments = rows.function->arguments;
    std::array<Scalar, most_arguments> scalars;
    for (std::size_t i = 0; i < arguments.size(); ++i)
        scalars[i] = read_scalar(arguments[i], value_at(rows.arguments, i));
    for (std::size_t row = 0; row < rows.count; ++row) {
        if (!rows.read_next()) {
            results.add_blank();
            continue;
        }
        for (Rows::Column const& column : rows.columns)
            scalars[column.place] = read_scalar(arguments[column.place], rows.arguments[column.place]);
        results.add(call_numeric(*rows.function, std::span(scalars).first(arguments.size())));
    }
}

void answer_calls(Rows& rows, Results& results) {
    for (std::size_t row = 0; row < rows.count; ++row)
        if (rows.read_next())
            results.add(call(*rows.function, rows.arguments));
        else
            results.add_blank();
}

} // namespace

Outcome answer_each_row(std::span<Value const> given) {
    Rows rows = read_rows(given);
    if (rows.failure.reason != Reason::none)
        return rows.failure;
    Results results(rows.count);
    bool const fits = rows.arguments.size() <= rows.function->arguments.size();
    if (std::holds_alternative<Numeric>(rows.function->kernel) && fits)
        answer_equation(rows, results);
    else
        answer_calls(rows, results);
    return std::move(results).take(rows.across);
}

Remarks remark_on_rows(std::span<Value const> given, Language language) {
    constexpr std::size_t most_rows = 1000, most_sentences = 3; // a sentence takes longer than a result
    Speaker const say(language);
    Rows rows = read_rows(given);
    Remarks remarks;
    std::size_t odd = 0;
    std::size_t const looked_at = std::min(rows.count, most_rows);
    for (std::size_t row = 0; row < looked_at; ++row) {
        if (!rows.read_next())
            continue;
        std::string const what = what_is_odd(*rows.function, rows.arguments, language);
        if (!what.empty() && ++odd <= most_sentences)
            remarks.odd.push_back(say(sentences::odd_row, {{"row", std::to_string(row + 1)}, {"what", what}}));
    }
    if (odd > most_sentences)
        remarks.odd.push_back(say(sentences::more_odd_rows, {{"count", std::to_string(odd - most_sentences)}}));
    if (looked_at < rows.count)
        remarks.said.push_back(say(sentences::rows_looked_at, {{"count", std::to_string(most_rows)}}));
    return remarks;
}

std::string why_no_row(std::span<Value const> given, Language language) {
    Rows rows = read_rows(given);
    if (rows.failure.reason != Reason::none)
        return "";
    for (std::size_t row = 0; row < rows.count; ++row)
        if (rows.read_next() && std::holds_alternative<Failure>(call(*rows.function, rows.arguments)))
            return Speaker(language)(
                sentences::row_failed,
                {{"row", std::to_string(row + 1)}, {"why", explain(*rows.function, rows.arguments, language)}});
    return "";
}

} // namespace hearthcell
