#include "extension/archive/recalculation/tally.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace hearthcell::archive {
namespace {

constexpr std::array limits{1e-4, 1e-3, 1e-2, 1e-1}; // upper ends of the classes but the last

void widen(Tally::Group& group, std::optional<double> const& low, std::optional<double> const& high) {
    if (low)
        group.low = group.low ? std::min(*group.low, *low) : *low;
    if (high)
        group.high = group.high ? std::max(*group.high, *high) : *high;
}

nlohmann::json or_null(std::optional<double> const& number) {
    return number ? nlohmann::json(*number) : nlohmann::json();
}

std::optional<double> number_in(nlohmann::json const& json) {
    return json.is_number() ? std::optional(json.get<double>()) : std::nullopt;
}

} // namespace

std::array<std::string_view, 5> const size_words{"up to 0.01 %", "0.01 to 0.1 %", "0.1 to 1 %", "1 to 10 %",
                                                 "over 10 %"};

std::size_t size_class(double relative) {
    auto const found = std::lower_bound(limits.begin(), limits.end(), std::abs(relative));
    return static_cast<std::size_t>(found - limits.begin());
}

void Tally::count(Change const& change) {
    if (change.volatility != Volatility::none) {
        ++volatile_cells;
        return;
    }
    if (change.kind == ChangeKind::last_digits) {
        ++last_digits;
        return;
    }
    ++kinds[std::string(words(change.kind))];
    std::set<Function const*> called = change.functions;
    if (called.empty())
        called.insert(nullptr);
    for (Function const* const function : called) {
        Group& group = functions[function == nullptr ? std::string() : "STOVE." + std::string(function->name)];
        ++group.cells;
        group.own += change.own ? 1 : 0;
        widen(group, change.relative, change.relative);
    }
    if (change.relative)
        ++sizes.at(size_class(*change.relative));
}

void Tally::add(Tally const& other) {
    formulas += other.formulas;
    ours += other.ours;
    given += other.given;
    stored_errors += other.stored_errors;
    without_result += other.without_result;
    unchanged += other.unchanged;
    links_not_followed += other.links_not_followed;
    volatile_cells += other.volatile_cells;
    last_digits += other.last_digits;
    for (auto const& [kind, cells] : other.kinds)
        kinds[kind] += cells;
    for (auto const& [name, theirs] : other.functions) {
        Group& group = functions[name];
        group.cells += theirs.cells;
        group.own += theirs.own;
        widen(group, theirs.low, theirs.high);
    }
    for (std::size_t at = 0; at < sizes.size(); ++at)
        sizes.at(at) += other.sizes.at(at);
}

std::uint64_t Tally::changed() const {
    std::uint64_t sum = 0;
    for (auto const& [kind, cells] : kinds)
        sum += cells;
    return sum;
}

void to_json(nlohmann::json& json, Tally const& tally) {
    json = {{"formulas", tally.formulas},
            {"ours", tally.ours},
            {"given", tally.given},
            {"stored_errors", tally.stored_errors},
            {"without_result", tally.without_result},
            {"unchanged", tally.unchanged},
            {"links_not_followed", tally.links_not_followed},
            {"changed", tally.changed()},
            {"volatile", tally.volatile_cells},
            {"last_digits", tally.last_digits},
            {"kinds", tally.kinds},
            {"sizes", tally.sizes}};
    json["functions"] = nlohmann::json::object();
    for (auto const& [name, group] : tally.functions)
        json["functions"][name] = {{"cells", group.cells},
                                   {"own", group.own},
                                   {"lowest", or_null(group.low)},
                                   {"highest", or_null(group.high)}};
}

void from_json(nlohmann::json const& json, Tally& tally) {
    json.at("formulas").get_to(tally.formulas);
    json.at("ours").get_to(tally.ours);
    json.at("given").get_to(tally.given);
    json.at("stored_errors").get_to(tally.stored_errors);
    json.at("without_result").get_to(tally.without_result);
    json.at("unchanged").get_to(tally.unchanged);
    json.at("links_not_followed").get_to(tally.links_not_followed);
    json.at("volatile").get_to(tally.volatile_cells);
    json.at("last_digits").get_to(tally.last_digits);
    json.at("kinds").get_to(tally.kinds);
    json.at("sizes").get_to(tally.sizes);
    for (auto const& [name, group] : json.at("functions").items())
        tally.functions[name] = {group.at("cells").get<std::uint64_t>(), group.at("own").get<std::uint64_t>(),
                                 number_in(group.at("lowest")), number_in(group.at("highest"))};
}

} // namespace hearthcell::archive
