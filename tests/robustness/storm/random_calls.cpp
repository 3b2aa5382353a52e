#include "random_calls.hpp"

#include <algorithm>

namespace hearthcell::storm {
namespace {

/// A whole column costs Calc half a second to hand over.
constexpr double whole_columns = 1.0 / 1000; // of the odd arguments

} // namespace

RandomCalls::RandomCalls(Chance& chance, Operands& operands) : chance_(chance), operands_(operands) {
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            functions_.push_back(&function);
}

Call RandomCalls::next(int row) {
    row_ = row;
    operands_.start(row);
    return call(*chance_.one_of(functions_), true);
}

Call RandomCalls::call(Function const& function, bool nestable) {
    Call result{&function, {}, row_};
    double const wildness = chance_.share();
    std::vector<Wanted> const wanted = wanted_for(function);
    int const spoilt = wanted.empty() ? 0 : chance_.below(int(wanted.size()));
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        bool const is_odd = wildness > 0.92 || (wildness > 0.6 && int(i) == spoilt);
        result.operands.push_back(is_odd ? odd(nestable) : sensible(wanted[i], nestable));
    }
    if (nestable && function.name == "EXPLAIN" && chance_.happens(0.9))
        explain(*chance_.one_of(functions_), result);
    spare_time(result);
    keep_to_the_rules(result);
    if (chance_.happens(0.02))
        result.operands.push_back(operands_.number(1));
    if (chance_.happens(0.02))
        result.operands.resize(std::size_t(chance_.below(int(result.operands.size()) + 1)));
    if (result.operands.size() == 1 && result.operands[0].how == Written::omitted)
        result.operands.clear(); // F() is a call without arguments
    return result;
}

namespace {

bool has(Call const& call, Written how) {
    return std::ranges::any_of(call.operands, [how](Operand const& operand) { return operand.how == how; });
}

void leave_out(Call& call, Written how) {
    std::ranges::replace_if(
        call.operands, [how](Operand const& operand) { return operand.how == how; }, Operand{});
}

} // namespace

/// An array, which a nested call may give, too, makes Calc call once for each element of it and of all ranges beside
/// it, and hand over every long range each time: whole rows, 16,384 times 16,384 cells.
void RandomCalls::spare_time(Call& call) {
    if (has(call, Written::whole_column) || has(call, Written::whole_row)) {
        leave_out(call, Written::inline_array);
        leave_out(call, Written::nested_call);
    }
}

/// Of a range with errors Calc shows Err:504; but its first error where, among arguments without end, one is left out
/// and an array follows.
void RandomCalls::keep_to_the_rules(Call& call) {
    if (call.function->name == "EXPLAIN" && has(call, Written::omitted))
        leave_out(call, Written::inline_array);
}

void RandomCalls::explain(Function const& function, Call& call) {
    std::string const name(function.name);
    call.operands.assign(1, operands_.text(chance_.happens(0.8) ? name : "Stove." + name));
    for (Wanted const& wanted : wanted_for(function))
        call.operands.push_back(chance_.happens(0.12) ? odd(true) : sensible(wanted, true));
}

std::vector<RandomCalls::Wanted> RandomCalls::wanted_for(Function const& function) {
    Example const& example = function.examples[std::size_t(chance_.below(int(function.examples.size())))];
    std::vector<Wanted> wanted;
    bool more = true;
    for (std::size_t i = 0; i < std::max(example.arguments.size(), function.arguments.size()); ++i) {
        Argument const& argument = function.arguments[std::min(i, function.arguments.size() - 1)];
        if (i < example.arguments.size()) {
            wanted.push_back({&argument, example.arguments[i]});
            continue;
        }
        more = more && argument.kind != ArgumentKind::rest && chance_.happens(0.4);
        if (more)
            wanted.push_back({&argument, chance_.happens(0.3) ? omitted : random_cell(function, argument)});
    }
    return wanted;
}

/// Where the example says nothing.
Cell RandomCalls::random_cell(Function const& function, Argument const& argument) {
    switch (argument.kind) {
    case ArgumentKind::choice:
        return argument.choices[std::size_t(chance_.below(int(argument.choices.size())))].data();
    case ArgumentKind::part:
        return chance_.happens(0.3) ? "all" : chance_.one_of(function.result.parts).name.english.data();
    case ArgumentKind::name:
    case ArgumentKind::number_or_name:
        return chance_.one_of(argument.table->rows).name.english.data();
    default:
        return chance_.between(argument.low, argument.high);
    }
}

double RandomCalls::near(double number, Argument const& argument) {
    double const how = chance_.share();
    if (how < 0.4)
        return number;
    if (how < 0.8)
        return number * (1 + chance_.between(-0.1, 0.1));
    if (how < 0.92)
        return chance_.between(argument.low, argument.high);
    double const edge = chance_.happens(0.5) ? argument.low : argument.high;
    return chance_.happens(0.5) ? edge : std::nextafter(edge, chance_.happens(0.5) ? -1e300 : 1e300);
}

Operand RandomCalls::sensible(Wanted const& wanted, bool nestable) {
    switch (wanted.cell.kind) {
    case CellKind::omitted:
        return {};
    case CellKind::text:
        return operands_.text(std::string(wanted.cell.text));
    case CellKind::column:
        return operands_.readings(wanted.cell.column);
    case CellKind::number:
        break;
    }
    if (wanted.argument->kind == ArgumentKind::matrix)
        return operands_.correlations();
    if (nestable && chance_.happens(0.03))
        return inner_call();
    return operands_.number(near(wanted.cell.number, *wanted.argument));
}

Operand RandomCalls::odd(bool nestable) {
    auto const how = Written(chance_.below(int(Written::count)));
    if (how == Written::nested_call)
        return nestable ? inner_call() : Operand{};
    // An array in a nested call makes Calc call once for each element and nest the results: the rules end there. And of
    // a whole column a nested call may make an array as long, for which the outer call would be made a million times.
    bool const long_or_array =
        how == Written::inline_array || how == Written::whole_column || how == Written::whole_row;
    bool const spared = how == Written::whole_column && !chance_.happens(whole_columns * int(Written::count));
    if (spared || (long_or_array && !nestable))
        return operands_.anything(Written::own_cell);
    return operands_.anything(how);
}

Operand RandomCalls::inner_call() {
    auto inner = std::make_shared<Call>(call(*chance_.one_of(functions_), false));
    std::string text = inner->text();
    return {Written::nested_call, std::move(text), std::move(inner)};
}

} // namespace hearthcell::storm
