#include "functions/call/fuel_names.hpp"

#include "functions/catalogue/names.hpp"

namespace hearthcell {

Scalar named_value(NameTable const& table, std::string_view name) {
    NamedRows const found = find_name(table, name);
    if (found.count != 1)
        return {absent, found.count == 0 ? Reason::unknown_name : Reason::ambiguous_name};
    return {found.first->value, Reason::none, found.first->as_fired};
}

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

} // namespace hearthcell
