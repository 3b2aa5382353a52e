#include "functions/call/columns.hpp"

#include "functions/call/fuel_names.hpp"

namespace hearthcell {
namespace {

/// How many readings stand above the first number, where texts are no mistake; 0 for a column without any number.
std::size_t heading_rows(Block const& column) {
    for (std::size_t i = 0; i < column.numbers.size(); ++i)
        if (!is_text(column.numbers[i]) && !is_absent(column.numbers[i]))
            return i;
    return 0;
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
