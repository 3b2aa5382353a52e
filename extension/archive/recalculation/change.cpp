#include "extension/archive/recalculation/change.hpp"

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace hearthcell::archive {
namespace {

constexpr int digits = 15;
constexpr double clock_step = 3e-14; // days: files hold times to the nanosecond

bool same_number(Stored const& before, double stored, double now) {
    double const difference = std::abs(now - stored);
    if (difference == 0 || (before.clock && difference <= clock_step))
        return true;
    if (!std::isfinite(difference) || stored == 0)
        return false;
    // A little more than a unit of the last digit, which itself cannot be written exactly.
    return difference <= 1.01 * std::pow(10.0, std::floor(std::log10(std::abs(stored))) - (digits - 1));
}

/// Whether two numbers differ by rounding alone. Beside 0, by what is left where two times of a clock cancel.
bool differs_in_last_digits(double stored, double now) {
    double const difference = std::abs(now - stored);
    return difference <= 1e-9 * std::abs(stored) || ((stored == 0 || now == 0) && difference <= clock_step);
}

/// The few errors that .xlsx and .xls know, for Calc's many.
int coarse(int code) {
    switch (code) {
    case 502:
    case 504:
    case 505:
    case 506:
    case 507:
    case 508:
    case 509:
    case 510:
    case 511:
    case 522:
    case 523:
        return 519; // #VALUE!
    default:
        return code;
    }
}

bool same_error(Fault const& before, Fault const& after) {
    // A text that is in no table of ours is an error in another language: which one, we cannot tell.
    return before.code == 0 || after.code == link_not_followed || before.code == after.code ||
           before.code == coarse(after.code);
}

} // namespace

std::string_view words(ChangeKind kind) {
    switch (kind) {
    case ChangeKind::number:
        return "number";
    case ChangeKind::last_digits:
        return "last digits";
    case ChangeKind::text:
        return "text";
    case ChangeKind::new_error:
        return "new error";
    case ChangeKind::error_gone:
        return "error gone";
    case ChangeKind::other_error:
        return "other error";
    }
    return {};
}

std::string_view words(Volatility volatility) {
    switch (volatility) {
    case Volatility::none:
        return "no";
    case Volatility::itself:
        return "yes";
    case Volatility::follows:
        return "follows";
    }
    return {};
}

std::optional<ChangeKind> kind_of_change(Stored const& before, Value const& after) {
    auto const* const old_error = std::get_if<Fault>(&before.value);
    auto const* const new_error = std::get_if<Fault>(&after);
    if (old_error != nullptr && new_error != nullptr)
        return same_error(*old_error, *new_error) ? std::nullopt : std::optional(ChangeKind::other_error);
    if (new_error != nullptr)
        return ChangeKind::new_error;
    if (old_error != nullptr)
        return ChangeKind::error_gone;
    if (std::holds_alternative<std::monostate>(before.value))
        return std::nullopt; // nothing was saved that could have changed
    auto const* const old_number = std::get_if<double>(&before.value);
    auto const* const new_number = std::get_if<double>(&after);
    if (old_number != nullptr && new_number != nullptr) {
        if (same_number(before, *old_number, *new_number))
            return std::nullopt;
        return differs_in_last_digits(*old_number, *new_number) ? ChangeKind::last_digits : ChangeKind::number;
    }
    return before.value.index() == after.index() && written(before.value) == written(after)
               ? std::nullopt
               : std::optional(ChangeKind::text);
}

std::optional<double> relative_change(Value const& before, Value const& after) {
    auto const* const old_number = std::get_if<double>(&before);
    auto const* const new_number = std::get_if<double>(&after);
    if (old_number == nullptr || new_number == nullptr || *old_number == 0)
        return std::nullopt;
    // With the digits that changes.csv has room for, so that whatever is counted from it agrees with it.
    double const exact = (*new_number - *old_number) / std::abs(*old_number);
    return std::strtod(written_relative(exact).c_str(), nullptr);
}

std::string written_relative(double relative) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.6g", relative);
    return text.data();
}

} // namespace hearthcell::archive
