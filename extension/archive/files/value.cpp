#include "extension/archive/files/value.hpp"

#include "extension/formulas/errors.hpp"
#include "extension/formulas/reference.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <string_view>
#include <utility>

namespace hearthcell::archive {
namespace {

constexpr std::string_view numbered_error = "Err:";

} // namespace

std::string cell_name(Place const& place) {
    return formulas::cell_name(place.column, place.row);
}

std::string error_text(int code) {
    std::string const constant(formulas::error_constant(code));
    return constant.empty() ? std::string(numbered_error) + std::to_string(code) : constant;
}

int error_code(std::string_view text) {
    int code = formulas::code_of_error_constant(text);
    if (text.starts_with(numbered_error)) {
        text.remove_prefix(numbered_error.size());
        auto const [end, problem] = std::from_chars(text.data(), text.data() + text.size(), code);
        if (problem != std::errc() || end != text.data() + text.size())
            return 0;
    }
    return code;
}

std::string written(double number) {
    std::array<char, 32> text{};
    auto const [end, problem] = std::to_chars(text.data(), text.data() + text.size(), number);
    return {text.data(), end};
}

std::string written(Value const& value) {
    if (auto const* number = std::get_if<double>(&value))
        return written(*number);
    if (auto const* text = std::get_if<std::string>(&value))
        return *text;
    if (auto const* fault = std::get_if<Fault>(&value))
        return fault->shown;
    return {};
}

} // namespace hearthcell::archive
