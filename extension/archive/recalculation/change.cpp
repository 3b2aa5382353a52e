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

std::string listed(double relative) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.6g", relative);
    return text.data();
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

/// With the digits that changes.csv has room for, so that whatever is counted from it agrees with it.
double as_listed(double relative) {
    return std::strtod(listed(relative).c_str(), nullptr);
}

bool same_error(Fault const& before, Fault const& after) {
    // A text that is in no table of ours is an error in another language: which one, we cannot tell.
    return before.code == 0 || after.code == link_not_followed || before.code == after.code ||
           before.code == coarse(after.code);
}

} // namespace

std::string_view words(Kind kind) {
    switch (kind) {
    case Kind::number:
        return "number";
    case Kind::text:
        return "text";
    case Kind::new_error:
        return "new error";
    case Kind::error_gone:
        return "error gone";
    case Kind::other_error:
        return "other error";
    }
    return {};
}

std::string_view words(Restless restless) {
    switch (restless) {
    case Restless::no:
        return "no";
    case Restless::itself:
        return "yes";
    case Restless::follows:
        return "follows";
    }
    return {};
}

std::optional<Kind> kind_of_change(Stored const& before, Value const& after) {
    auto const* const old_error = std::get_if<Fault>(&before.value);
    auto const* const new_error = std::get_if<Fault>(&after);
    if (old_error != nullptr && new_error != nullptr)
        return same_error(*old_error, *new_error) ? std::nullopt : std::optional(Kind::other_error);
    if (new_error != nullptr)
        return Kind::new_error;
    if (old_error != nullptr)
        return Kind::error_gone;
    if (std::holds_alternative<std::monostate>(before.value))
        return std::nullopt; // nothing was saved that could have changed
    auto const* const old_number = std::get_if<double>(&before.value);
    auto const* const new_number = std::get_if<double>(&after);
    if (old_number != nullptr && new_number != nullptr)
        return same_number(before, *old_number, *new_number) ? std::nullopt : std::optional(Kind::number);
    return before.value.index() == after.index() && written(before.value) == written(after) ? std::nullopt
                                                                                            : std::optional(Kind::text);
}

std::optional<double> relative_change(Value const& before, Value const& after) {
    auto const* const old_number = std::get_if<double>(&before);
    auto const* const new_number = std::get_if<double>(&after);
    if (old_number == nullptr || new_number == nullptr || *old_number == 0)
        return std::nullopt;
    return as_listed((*new_number - *old_number) / std::abs(*old_number));
}

std::vector<std::string> const change_headings{"file",  "sheet",           "cell", "formula", "before",
                                               "after", "relative_change", "kind", "volatile"};

std::vector<std::string> row_of(std::string const& file, Change const& change) {
    return {file,
            change.sheet,
            cell_name(change.place),
            change.formula,
            written(change.before),
            written(change.after),
            change.relative ? listed(*change.relative) : std::string(),
            std::string(words(change.kind)),
            std::string(words(change.restless))};
}

} // namespace hearthcell::archive
