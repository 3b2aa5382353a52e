#include "extension/archive/recalculation/when.hpp"

#include <array>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace hearthcell::archive {
namespace {

using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::year_month_day;

constexpr auto first_day = sys_days(std::chrono::year(1899) / 12 / 30);
constexpr double minutes_a_day = 1440;

bool is_digit(char letter) {
    return letter >= '0' && letter <= '9';
}

/// A number of exactly so many digits; -1 where the text does not begin with one.
int digits(std::string_view text, std::size_t count) {
    if (text.size() < count || (text.size() > count && is_digit(text[count])))
        return -1;
    int number = 0;
    for (std::size_t at = 0; at < count; ++at) {
        if (!is_digit(text[at]))
            return -1;
        number = 10 * number + (text[at] - '0');
    }
    return number;
}

std::optional<int> year_in(std::string_view name) {
    for (std::size_t at = 0; at < name.size(); ++at)
        if (at == 0 || !is_digit(name[at - 1]))
            if (int const year = digits(name.substr(at), 4); year >= 1900 && year <= 2099)
                return year;
    return std::nullopt;
}

/// " 14:30", "T14:30:05": as part of a day.
std::optional<double> time_in(std::string_view text) {
    if (text.empty())
        return 0;
    if ((text[0] != ' ' && text[0] != 'T') || text.size() < 6 || text[3] != ':')
        return std::nullopt;
    int const hour = digits(text.substr(1), 2), minute = digits(text.substr(4), 2);
    bool const seconds = text.size() == 9 && text[6] == ':' && digits(text.substr(7), 2) >= 0;
    if (hour < 0 || hour > 23 || minute < 0 || minute > 59 || (text.size() != 6 && !seconds))
        return std::nullopt;
    return (hour * 60 + minute) / minutes_a_day;
}

} // namespace

std::optional<int> year_of(std::string_view path) {
    std::size_t end = path.rfind('/');
    while (end != std::string_view::npos && end > 0) {
        std::size_t const slash = path.rfind('/', end - 1);
        std::size_t const start = slash == std::string_view::npos ? 0 : slash + 1;
        if (auto const year = year_in(path.substr(start, end - start)))
            return year;
        end = slash;
    }
    return std::nullopt;
}

std::string folder_or_year(std::string_view path) {
    if (auto const year = year_of(path))
        return std::to_string(*year);
    std::size_t const slash = path.find('/');
    return slash == std::string_view::npos ? "(no folder)" : std::string(path.substr(0, slash));
}

std::optional<double> day_in(std::string_view text) {
    if (text.size() < 10 || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    int const year = digits(text, 4), month = digits(text.substr(5), 2), day = digits(text.substr(8), 2);
    if (year < 0 || month < 0 || day < 0)
        return std::nullopt;
    year_month_day const date = std::chrono::year(year) / month / day;
    auto const time = time_in(text.substr(10));
    if (!date.ok() || !time)
        return std::nullopt;
    return static_cast<double>((sys_days(date) - first_day).count()) + *time;
}

std::string written_day(double number) {
    double const minutes_in_all = std::round(number * minutes_a_day);
    double const whole = std::floor(minutes_in_all / minutes_a_day);
    auto const minutes = static_cast<int>(minutes_in_all - whole * minutes_a_day);
    year_month_day const date(first_day + days(static_cast<int>(whole)));
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    std::string written = text.data();
    if (minutes > 0) {
        std::snprintf(text.data(), text.size(), " %02d:%02d", minutes / 60, minutes % 60);
        written += text.data();
    }
    return written;
}

} // namespace hearthcell::archive
