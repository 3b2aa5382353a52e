#include "extension/archive/recalculation/beside.hpp"

#include "extension/archive/recalculation/change.hpp"
#include "extension/formulas/calls.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/tokens.hpp"

#include <array>
#include <cmath>

namespace hearthcell::archive {
namespace {

constexpr double per_cent = 100;

bool is_share(Function const& function) {
    switch (function.result.parts.empty() ? function.result.measure : function.result.parts[0].measure) {
    case Measure::share:
    case Measure::moisture_wet:
    case Measure::moisture_dry:
    case Measure::mass_fraction:
        return true;
    default:
        return false;
    }
}

/// Whether a formula gives a fraction: every call of ours in it that no other one contains does.
bool gives_a_fraction(std::string const& formula) {
    auto const tokens = formulas::tokens_without_blanks(formula);
    bool any = false;
    for (std::size_t at = 0; at < tokens.size(); ++at) {
        Function const* const function = formulas::function_called(tokens[at]);
        if (function == nullptr)
            continue;
        if (!is_share(*function))
            return false;
        any = true;
        at = formulas::end_of_call(tokens, at);
    }
    return any;
}

bool is_about(double ratio, double factor) {
    return std::abs(ratio / factor - 1) < 0.05;
}

/// Old results are often in other units, which a difference would hide.
std::string other_unit(double ratio) {
    for (double const factor : {1000.0, 100.0, 60.0, 3600.0}) {
        if (is_about(ratio, factor))
            return "The old result is about " + written(factor) + " times the new one: in another unit?";
        if (is_about(ratio, 1 / factor))
            return "The new result is about " + written(factor) + " times the old one: in another unit?";
    }
    return {};
}

/// A text may be a number to who typed it.
bool is_empty_or_word(Value const& value) {
    return std::holds_alternative<std::monostate>(value) || std::holds_alternative<std::string>(value);
}

std::string why_not(Value const& before, Value const& after) {
    if (std::holds_alternative<Fault>(before))
        return "The old result is an error.";
    if (std::holds_alternative<Fault>(after))
        return "The new result is an error.";
    if (std::holds_alternative<std::string>(before))
        return "The old result is a text.";
    if (std::holds_alternative<std::string>(after))
        return "The new result is a text.";
    return std::holds_alternative<std::monostate>(before) ? "There is no old result." : "There is no new result.";
}

} // namespace

bool set_beside(ComparedRow& row, std::string const& formula) {
    auto const* const before = std::get_if<double>(&row.before);
    auto const* const after = std::get_if<double>(&row.after);
    if (before == nullptr || after == nullptr) {
        row.remark = why_not(row.before, row.after);
        return !is_empty_or_word(row.before) || !is_empty_or_word(row.after);
    }
    // Any two results of one run are nearer to each other than a third or three times.
    double const ratio = *after != 0 ? *before / *after : 0;
    row.in_per_cent = gives_a_fraction(formula) && ratio > per_cent / 3 && ratio < per_cent * 3;
    double const old = row.in_per_cent ? *before / per_cent : *before;
    row.difference = *after - old;
    row.relative = relative_change(old, *after);
    if (!row.in_per_cent)
        row.remark = other_unit(ratio);
    return true;
}

} // namespace hearthcell::archive
