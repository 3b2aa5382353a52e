#include "extension/archive/files/value.hpp"

#include "extension/formulas/reference.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <string_view>
#include <utility>

namespace hearthcell::archive {
namespace {

constexpr std::array<std::pair<int, std::string_view>, 7> named_errors{{
    {503, "#NUM!"},
    {519, "#VALUE!"},
    {521, "#NULL!"},
    {524, "#REF!"},
    {525, "#NAME?"},
    {532, "#DIV/0!"},
    {32767, "#N/A"},
}};
constexpr std::string_view numbered_error = "Err:";

} // namespace

std::string cell_name(Place const& place) {
    return formulas::cell_name(place.column, place.row);
}

std::string error_text(int code) {
    for (auto const& [known, text] : named_errors)
        if (known == code)
            return std::string(text);
    return std::string(numbered_error) + std::to_string(code);
}

int error_code(std::string_view text) {
    for (auto const& [code, known] : named_errors)
        if (known == text)
            return code;
    int code = 0;
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
