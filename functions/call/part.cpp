#include "functions/call/part.hpp"

#include "functions/catalogue/names.hpp"

#include <algorithm>

namespace hearthcell {
namespace {

bool is_called(Wording const& name, std::string_view typed) {
    return std::ranges::any_of(languages, [&](Language language) { return same_name(name.in(language), typed); });
}

std::size_t place_of_part(Function const& function) {
    return function.arguments.size() - 1;
}

} // namespace

bool leaves_part_out(Value const& part) {
    double const* const number = std::get_if<double>(&part);
    return std::holds_alternative<std::monostate>(part) || (number != nullptr && *number == 0);
}

std::optional<std::size_t> part_named(Function const& function, std::string_view name) {
    List<Part, 8> const& parts = function.result.parts;
    auto const found = std::ranges::find_if(parts, [&](Part const& part) { return is_called(part.name, name); });
    return found == parts.end() ? std::optional<std::size_t>() : std::size_t(found - parts.begin());
}

WantedPart wanted_part(Function const& function, std::span<Value const> arguments) {
    if (!has_parts_to_choose(function))
        return {};
    Value const& given = value_at(arguments, place_of_part(function));
    if (leaves_part_out(given))
        return function.result.all_unless_named ? WantedPart() : WantedPart{Reason::none, 0};
    std::string const* const name = std::get_if<std::string>(&given);
    if (name == nullptr)
        return {std::holds_alternative<Block>(given) ? Reason::block_for_value : Reason::number_for_text, {}};
    if (is_called(all_parts, *name))
        return {};
    std::optional<std::size_t> const place = part_named(function, *name);
    return {place ? Reason::none : Reason::unknown_name, place};
}

Outcome part_of(Outcome outcome, WantedPart const& wanted) {
    Block const* const block = std::get_if<Block>(&outcome);
    return block != nullptr && wanted.place ? outcome_of(block->numbers[*wanted.place]) : std::move(outcome);
}

std::vector<Value> asking_for_all(Function const& function, std::span<Value const> arguments) {
    std::vector<Value> values(arguments.begin(), arguments.end());
    if (!has_parts_to_choose(function))
        return values;
    values.resize(function.arguments.size());
    values.back() = std::string(all_parts);
    return values;
}

} // namespace hearthcell
