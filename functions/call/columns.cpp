#include "functions/call/columns.hpp"

namespace hearthcell {
namespace {

/// How many readings stand above the first number, where texts are no mistake; 0 for a column without any number.
std::size_t heading_rows(Block const& column) {
    for (std::size_t i = 0; i < column.numbers.size(); ++i)
        if (!is_text(column.numbers[i]) && !is_absent(column.numbers[i]))
            return i;
    return 0;
}

/// A column in which names may stand among the numbers, with the numbers in their places.
struct NamedColumn {
    Block numbers;
    std::vector<std::size_t> as_fired; ///< where the value holds for the fuel as it is burned
    Failure failure;
};
NamedColumn with_names_read(Argument const& argument, unsigned place, Block const& column) {
    NamedColumn result{column, {}, {}};
    for (Block::Text const& name : column.texts) {
        Scalar const read = named_value(*argument.table, name.text);
        if (read.reason != Reason::none) {
            result.failure = {read.reason, place, unsigned(name.place + 1)};
            return result;
        }
        result.numbers.numbers[name.place] = read.number;
        if (read.as_fired)
            result.as_fired.push_back(name.place);
    }
    result.numbers.texts.clear();
    return result;
}

/// A value as fired leaves no moisture to be taken off: fails where the moisture beside it is not 0. `place` is that
/// of the values.
Failure check_moisture_beside(NamedColumn const& values, unsigned place, Block const& moistures) {
    bool const one_value = values.numbers.numbers.size() == 1;
    for (std::size_t const row : values.as_fired)
        for (std::size_t i = 0; i < moistures.numbers.size(); ++i) {
            bool const is_beside = one_value || moistures.numbers.size() == 1 || i == row;
            if (is_beside && moistures.numbers[i] > 0) // false for an empty cell
                return {Reason::moisture_beside_value_as_fired, place, unsigned(row + 1)};
        }
    return {};
}

} // namespace

Failure check_readings(Argument const& argument, unsigned place, Block const& column) {
    for (std::size_t i = argument.headed ? heading_rows(column) : 0; i < column.numbers.size(); ++i) {
        double const reading = column.numbers[i];
        if ((reading >= argument.low && reading <= argument.high) || is_absent(reading))
            continue;
        return {is_text(reading) ? Reason::text_for_number : Reason::out_of_range, place, unsigned(i + 1)};
    }
    return {};
}

Failure check_shape(Block const& block, unsigned place) {
    return {block.rows > 1 && block.columns > 1 ? Reason::block_for_column : Reason::none, place};
}

Failure check_column(Argument const& argument, unsigned place, Block const& column) {
    Failure const shape = check_shape(column, place);
    return shape.reason == Reason::none ? check_readings(argument, place, column) : shape;
}

Block column_of(Value const& value) {
    if (double const* number = std::get_if<double>(&value))
        return {1, 1, {*number}, {}};
    return {1, 1, {text_in_block}, {{0, std::get<std::string>(value)}}};
}

Columns::Columns(Function const& function, std::span<Value const> values) {
    own_.reserve(2 * most_arguments); // so that pointers into it stay good
    for (unsigned i = 0; i < function.arguments.size() && why_.reason == Reason::none; ++i) {
        Argument const& argument = function.arguments[i];
        if (argument.kind == ArgumentKind::part)
            break; // the last; no kernel is given it
        why_ = argument.kind == ArgumentKind::column ? add_column(argument, i, value_at(values, i))
                                                     : add_number(argument, i, value_at(values, i));
    }
}

Failure Columns::add_column(Argument const& argument, unsigned place, Value const& value) {
    if (std::holds_alternative<std::monostate>(value)) {
        columns_.push_back(nullptr);
        return {argument.optional ? Reason::none : Reason::argument_missing, place};
    }
    Block const* const block = std::get_if<Block>(&value);
    columns_.push_back(block != nullptr ? block : &own_.emplace_back(column_of(value)));
    if (argument.measure == Measure::moisture_wet)
        moistures_ = columns_.back();
    if (argument.table != nullptr && !columns_.back()->texts.empty())
        return add_names(argument, place, *columns_.back());
    return check_column(argument, place, *columns_.back());
}

/// In the place of a column with names one with their numbers; the moistures stand before it.
Failure Columns::add_names(Argument const& argument, unsigned place, Block const& column) {
    NamedColumn read = with_names_read(argument, place, column);
    if (read.failure.reason == Reason::none && moistures_ != nullptr)
        read.failure = check_moisture_beside(read, place, *moistures_);
    if (read.failure.reason != Reason::none)
        return read.failure;
    columns_.back() = &own_.emplace_back(std::move(read.numbers));
    return check_column(argument, place, *columns_.back());
}

Failure Columns::add_number(Argument const& argument, unsigned place, Value const& value) {
    Scalar const scalar = read_scalar(argument, value);
    if (scalar.reason != Reason::none)
        return {scalar.reason, place};
    if (argument.kind == ArgumentKind::choice) {
        choices_.push_back({int(scalar.number)});
        return {};
    }
    numbers_.push_back(scalar.number);
    return {allows(argument, scalar.number) ? Reason::none : Reason::out_of_range, place};
}

} // namespace hearthcell
