#include "calc_rules.hpp"

#include "functions/call/call.hpp"
#include "functions/number/meaning.hpp"

#include <stdexcept>

namespace hearthcell::storm {
namespace {

constexpr CellError illegal_argument{502}, parameter_list{504}, no_value{519};

/// What arrives at the add-in: one value, or Calc's own error in its place.
using Handed = std::variant<Value, CellError>;

/// How the generated IDL declares an argument.
enum class Declared { any, block };

Declared declared(Argument const& argument) {
    return argument.optional || argument.kind == ArgumentKind::rest ? Declared::any : Declared::block;
}

Block block_of(std::size_t rows, std::size_t columns) {
    Block block{rows, columns, {}, {}};
    block.numbers.assign(rows * columns, absent);
    return block;
}

void put(Block& block, std::size_t place, Content const& content) {
    if (double const* const number = std::get_if<double>(&content))
        block.numbers[place] = *number;
    std::string const* const text = std::get_if<std::string>(&content);
    if (text == nullptr || text->empty())
        return;
    block.numbers[place] = text_in_block;
    block.texts.push_back({place, *text});
}

/// A range as it arrives; one error in it, and nothing arrives.
Handed block_in(Area const& area, Ground const& ground) {
    auto const columns = std::size_t(area.right - area.left + 1);
    Block block = block_of(std::size_t(area.bottom - area.top + 1), columns);
    int const last = std::min(area.bottom, ground.rows(area.sheet) - 1);
    for (int row = area.top; row <= last; ++row)
        for (int column = area.left; column <= area.right && column < columns_of_a_sheet; ++column) {
            Content const& content = ground.at(area.sheet, row, column);
            if (std::holds_alternative<CellError>(content))
                return parameter_list;
            put(block, std::size_t(row - area.top) * columns + std::size_t(column - area.left), content);
        }
    return Value(std::move(block));
}

/// An array as it arrives; the first error in it, where nothing arrives.
Handed block_in(Matrix const& matrix) {
    Block block = block_of(matrix.rows, matrix.columns);
    for (std::size_t i = 0; i < matrix.cells.size(); ++i) {
        if (CellError const* const error = std::get_if<CellError>(&matrix.cells[i]))
            return *error;
        put(block, i, matrix.cells[i]);
    }
    return Value(std::move(block));
}

/// An empty cell alone counts as 0.
Handed value_in(Content const& content) {
    if (CellError const* const error = std::get_if<CellError>(&content))
        return *error;
    if (std::string const* const text = std::get_if<std::string>(&content))
        return Value(*text);
    double const* const number = std::get_if<double>(&content);
    return Value(number != nullptr ? *number : 0.0);
}

struct Argued {
    Content content;                ///< of what is one value
    Area const* area = nullptr;     ///< else a range
    Matrix const* matrix = nullptr; ///< or an array
    bool omitted = false;
    std::optional<CellError> at_once; ///< the error that ends the whole formula before the function is reached
};

/// A block of one cell counts as that cell where one value is wanted.
Handed taken_apart(Handed handed) {
    Value const* const value = std::get_if<Value>(&handed);
    Block const* const block = value == nullptr ? nullptr : std::get_if<Block>(value);
    if (block == nullptr || block->numbers.size() != 1)
        return handed;
    if (!block->texts.empty())
        return Value(block->texts[0].text);
    if (is_absent(block->numbers[0])) // a range of one empty cell holds an empty text
        return Value(std::string());
    return Value(block->numbers[0]);
}

Handed any_value(Argued const& argued, Ground const& ground) {
    if (argued.matrix == nullptr && argued.area == nullptr)
        return value_in(argued.content);
    return taken_apart(argued.matrix != nullptr ? block_in(*argued.matrix) : block_in(*argued.area, ground));
}

/// One value where a block is declared is a block of one; an empty cell is 0 then.
Handed block_value(Argued const& argued, Ground const& ground) {
    if (argued.matrix != nullptr)
        return block_in(*argued.matrix);
    if (argued.area != nullptr)
        return block_in(*argued.area, ground);
    Handed const handed = value_in(argued.content);
    if (std::holds_alternative<CellError>(handed))
        return handed;
    Block block = block_of(1, 1);
    put(block, 0, std::holds_alternative<Nothing>(argued.content) ? Content(0.0) : argued.content);
    return Value(std::move(block));
}

Declared declared_at(Function const& function, std::size_t place) {
    return place < function.arguments.size() ? declared(function.arguments[place]) : Declared::any;
}

Handed hand_over(Argued const& argued, Function const& function, std::size_t place, Ground const& ground) {
    if (argued.omitted)
        return Value();
    if (declared_at(function, place) == Declared::any)
        return any_value(argued, ground);
    Handed handed = block_value(argued, ground);
    return takes_a_block(function.arguments[place].kind) ? handed : taken_apart(std::move(handed));
}

bool count_is_right(Function const& function, std::size_t given) {
    std::size_t const most = function.arguments.size();
    if (is_open_ended(function))
        return given + 1 >= most;
    for (std::size_t i = given; i < most; ++i)
        if (declared(function.arguments[i]) != Declared::any)
            return false;
    return given <= most;
}

CellError shown_error(Failure const& why) {
    switch (error_of(why.reason)) {
    case Error::value:
        return no_value;
    case Error::number:
        return {503};
    case Error::not_available:
        return {32767};
    case Error::parameters:
        return parameter_list;
    }
    throw std::logic_error("no such kind of error");
}

Result result_of(Outcome const& outcome) {
    if (double const* const number = std::get_if<double>(&outcome)) // one part of several may be a failure
        return failed(*number) ? Result(shown_error(failure_of(*number))) : Result(*number);
    if (std::string const* const text = std::get_if<std::string>(&outcome))
        return *text;
    if (Failure const* const why = std::get_if<Failure>(&outcome))
        return shown_error(*why);
    Block const& block = std::get<Block>(outcome);
    Matrix matrix{block.rows, block.columns, {}};
    for (double const number : block.numbers) {
        if (is_absent(number))
            matrix.cells.emplace_back(std::string());
        else if (failed(number))
            matrix.cells.emplace_back(shown_error(failure_of(number)));
        else
            matrix.cells.emplace_back(number);
    }
    for (Block::Text const& text : block.texts)
        matrix.cells[text.place] = text.text;
    return matrix;
}

/// An operand with nested calls worked out. `nested` keeps their blocks.
Argued argued(Operand const& operand, Ground const& ground, std::vector<std::unique_ptr<Matrix>>& nested) {
    Argued result;
    result.omitted = operand.how == Written::omitted;
    if (auto const* const inner = std::get_if<std::shared_ptr<Call>>(&operand.meaning)) {
        Result const value = storm::result_of(**inner, ground);
        if (Matrix const* const matrix = std::get_if<Matrix>(&value))
            result.matrix = nested.emplace_back(std::make_unique<Matrix>(*matrix)).get();
        else
            result.content = content_of(shown(value));
        if (CellError const* const error = std::get_if<CellError>(&value))
            result.at_once = *error;
    } else if (Area const* const area = std::get_if<Area>(&operand.meaning)) {
        if (area->one_cell)
            result.content = ground.at(area->sheet, area->top, area->left);
        else
            result.area = area;
    } else if (Matrix const* const matrix = std::get_if<Matrix>(&operand.meaning)) {
        result.matrix = matrix;
    } else if (double const* const number = std::get_if<double>(&operand.meaning)) {
        result.content = *number;
    } else if (std::string const* const text = std::get_if<std::string>(&operand.meaning)) {
        result.content = *text;
    } else if (CellError const* const error = std::get_if<CellError>(&operand.meaning)) {
        result.content = *error;
        if (operand.how == Written::unknown_name || operand.how == Written::unknown_sheet)
            result.at_once = *error;
    }
    return result;
}

} // namespace

Result result_of(Call const& call, Ground const& ground) {
    Function const& function = *call.function;
    std::vector<std::unique_ptr<Matrix>> nested;
    std::vector<Argued> arguments;
    for (Operand const& operand : call.operands) {
        arguments.push_back(argued(operand, ground, nested));
        if (arguments.back().at_once)
            return *arguments.back().at_once;
    }
    if (!count_is_right(function, arguments.size()))
        return parameter_list;
    std::vector<Value> values(arguments.size());
    bool undeclared_gap = false;
    for (std::size_t i = arguments.size(); i-- > 0;) { // from the last to the first, up to the first error
        Handed handed = hand_over(arguments[i], function, i, ground);
        if (CellError const* const error = std::get_if<CellError>(&handed))
            return *error;
        undeclared_gap = undeclared_gap || (arguments[i].omitted && declared_at(function, i) != Declared::any);
        values[i] = std::move(std::get<Value>(handed));
    }
    return undeclared_gap ? Result(illegal_argument) : result_of(hearthcell::call(function, values));
}

CellValue shown(Result const& result) {
    if (Matrix const* const matrix = std::get_if<Matrix>(&result)) {
        Content const& first = matrix->cells.at(0);
        if (double const* const number = std::get_if<double>(&first))
            return *number;
        if (CellError const* const error = std::get_if<CellError>(&first))
            return *error;
        return std::get<std::string>(first);
    }
    if (double const* const number = std::get_if<double>(&result))
        return *number;
    if (CellError const* const error = std::get_if<CellError>(&result))
        return *error;
    return std::get<std::string>(result);
}

} // namespace hearthcell::storm
