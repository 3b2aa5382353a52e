#include "extension/archive/files/odf_values.hpp"

#include <charconv>
#include <chrono>

namespace hearthcell::archive {
namespace {

constexpr double hours_a_day = 24, minutes_a_day = 1440, seconds_a_day = 86400;

/// Takes a number off the front.
std::optional<double> take_number(std::string_view& text) {
    double number = 0;
    auto const [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (problem != std::errc())
        return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return number;
}

bool take(std::string_view& text, char expected) {
    if (!text.starts_with(expected))
        return false;
    text.remove_prefix(1);
    return true;
}

std::optional<double> number(std::string_view text) {
    auto const value = take_number(text);
    return text.empty() ? value : std::nullopt;
}

/// "12:30:15.5" as a part of a day.
std::optional<double> part_of_a_day(std::string_view text) {
    double sum = 0;
    for (double const in_a_day : {hours_a_day, minutes_a_day, seconds_a_day}) {
        auto const value = take_number(text);
        if (!value)
            return std::nullopt;
        sum += *value / in_a_day;
        if (!take(text, ':'))
            break;
    }
    return sum;
}

/// "PT25H30M15.5S" as days.
std::optional<double> duration(std::string_view text) {
    double const sign = take(text, '-') ? -1 : 1;
    if (!take(text, 'P'))
        return std::nullopt;
    double sum = 0;
    bool clock = false;
    while (!text.empty()) {
        if (take(text, 'T')) {
            clock = true;
            continue;
        }
        auto const value = take_number(text);
        if (!value)
            return std::nullopt;
        if (take(text, 'D'))
            sum += *value;
        else if (clock && take(text, 'H'))
            sum += *value / hours_a_day;
        else if (clock && take(text, 'M'))
            sum += *value / minutes_a_day;
        else if (clock && take(text, 'S'))
            sum += *value / seconds_a_day;
        else
            return std::nullopt;
    }
    return sign * sum;
}

Value or_nothing(std::optional<double> const& number) {
    return number ? Value(*number) : Value();
}

Value date(OdfCell const& cell) {
    auto const days = days_since_1970(cell.raw);
    return days ? Value(*days - cell.null_date) : Value();
}

} // namespace

std::optional<double> days_since_1970(std::string_view text) {
    bool const before_year_0 = take(text, '-');
    auto const whole = text.substr(0, text.find('T'));
    int year = 0;
    unsigned month = 0, day = 0;
    char const* const end = whole.data() + whole.size();
    auto part = std::from_chars(whole.data(), end, year);
    if (part.ec != std::errc() || part.ptr == end)
        return std::nullopt;
    part = std::from_chars(part.ptr + 1, end, month);
    if (part.ec != std::errc() || part.ptr == end)
        return std::nullopt;
    part = std::from_chars(part.ptr + 1, end, day);
    std::chrono::year_month_day const date{std::chrono::year(before_year_0 ? -year : year), std::chrono::month(month),
                                           std::chrono::day(day)};
    if (part.ec != std::errc() || !date.ok())
        return std::nullopt;
    auto const days = static_cast<double>(std::chrono::sys_days(date).time_since_epoch().count());
    if (whole.size() == text.size())
        return days;
    auto const rest = part_of_a_day(text.substr(whole.size() + 1));
    return rest ? std::optional(days + *rest) : std::nullopt;
}

Value value_of(OdfCell const& cell) {
    // Calc saves an error as an empty text that shows the error. The mark that it is one came only later, and the
    // oldest versions saved the number 0 with it.
    if (cell.fault)
        return Fault{error_code(cell.shown), std::string(cell.shown)};
    if (int const code = error_code(cell.shown); code != 0 && (cell.type == "string" || cell.type == "float") &&
                                                 (!cell.string_value || cell.string_value->empty()))
        return Fault{code, std::string(cell.shown)};
    if (cell.type == "float" || cell.type == "percentage" || cell.type == "currency")
        return or_nothing(number(cell.raw));
    if (cell.type == "date")
        return date(cell);
    if (cell.type == "time")
        return or_nothing(duration(cell.raw));
    if (cell.type == "boolean")
        return cell.raw == "true" ? 1.0 : 0.0;
    if (cell.type == "string")
        return cell.string_value ? *cell.string_value : std::string(cell.shown);
    return {};
}

} // namespace hearthcell::archive
