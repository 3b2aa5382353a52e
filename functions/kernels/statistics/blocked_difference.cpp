#include "functions/kernels/statistics/blocked_difference.hpp"

#include "functions/kernels/statistics/blocked.hpp"

#include <charconv>
#include <map>
#include <optional>
#include <string>

namespace hearthcell::kernels {
namespace {

/// The order of the arguments.
enum : unsigned { results, variants, blocks, baseline, confidence };

std::string shown(double number) {
    char text[32];
    return {text, std::to_chars(text, text + sizeof text, number).ptr};
}

/// Names in the order of their first appearance.
class Names {
public:
    std::size_t place_of(std::string const& name) {
        auto const [found, is_new] = places.try_emplace(name, all.size());
        if (is_new)
            all.push_back(name);
        return found->second;
    }
    std::optional<std::size_t> find(std::string const& name) const {
        auto const found = places.find(name);
        return found == places.end() ? std::nullopt : std::optional(found->second);
    }
    std::vector<std::string> all;

private:
    std::map<std::string, std::size_t> places;
};

/// The names that a column holds, cell by cell; a blank is an empty one.
std::vector<std::string> names_in(Block const& column) {
    std::vector<std::string> names(column.numbers.size());
    for (std::size_t i = 0; i < names.size(); ++i)
        if (!is_absent(column.numbers[i]) && !failed(column.numbers[i]))
            names[i] = shown(column.numbers[i]);
    for (Block::Text const& text : column.texts)
        names[text.place] = text.text;
    return names;
}

struct Table {
    std::vector<BlockedRun> runs;
    Names variants, blocks;
    std::vector<std::size_t> runs_of; ///< each variant

    Failure read(std::span<Value const> given);
};

Failure Table::read(std::span<Value const> given) {
    Block const& column = std::get<Block>(given[results]);
    std::vector<std::string> const variant = names_in(std::get<Block>(given[kernels::variants]));
    std::vector<std::string> const block = names_in(std::get<Block>(given[kernels::blocks]));
    std::size_t const rows = column.numbers.size();
    for (auto const& [names, place] : {std::pair(&variant, kernels::variants), std::pair(&block, kernels::blocks)})
        if (names->size() != rows)
            return {Reason::runs_differ, place};
    for (std::size_t i = 0; i < rows; ++i) {
        if (is_absent(column.numbers[i])) // a run that gave nothing
            continue;
        if (variant[i].empty() || block[i].empty())
            return {Reason::run_unnamed, variant[i].empty() ? kernels::variants : kernels::blocks, unsigned(i + 1)};
        runs.push_back({column.numbers[i], variants.place_of(variant[i]), blocks.place_of(block[i])});
        if (variants.all.size() > most_variants || blocks.all.size() > most_blocks)
            return {Reason::too_many_names};
        runs_of.resize(variants.all.size());
        ++runs_of[runs.back().variant];
    }
    return {};
}

/// The fit counts from the baseline, which may be any of the variants: it changes places with the first.
void put_first(std::vector<BlockedRun>& runs, std::size_t variant) {
    for (BlockedRun& run : runs)
        if (run.variant == variant)
            run.variant = 0;
        else if (run.variant < variant)
            ++run.variant;
}

std::string name_of(Value const& value) {
    double const* const number = std::get_if<double>(&value);
    return number != nullptr ? shown(*number) : std::get<std::string>(value);
}

} // namespace

Outcome blocked_difference(std::span<Value const> given) {
    Table table;
    if (Failure const why = table.read(given); why.reason != Reason::none)
        return why;
    if (std::holds_alternative<Block>(given[baseline]))
        return Failure{Reason::block_for_value, baseline};
    std::optional<std::size_t> const reference = table.variants.find(name_of(given[baseline]));
    if (!reference)
        return Failure{Reason::baseline_not_run, baseline};
    std::size_t const others = table.variants.all.size() - 1;
    if (others == 0)
        return Failure{Reason::baseline_alone, kernels::variants};
    put_first(table.runs, *reference);
    BlockedFit const fit = fit_blocks(table.runs, others + 1, table.blocks.all.size());
    if (!fit.estimable)
        return Failure{Reason::blocks_unconnected, kernels::blocks};
    if (!(fit.degrees_of_freedom > 0))
        return Failure{Reason::too_few_in_blocks};
    if (!fit.scatters)
        return Failure{Reason::no_scatter};

    std::vector<double> p;
    for (Contrast const& contrast : fit.contrasts)
        p.push_back(probability_beyond(contrast.difference / contrast.standard_error, fit.degrees_of_freedom));
    p = adjusted_by_holm(p);
    double const t = t_exceeded(1 - std::get<double>(given[confidence]), fit.degrees_of_freedom);
    constexpr std::size_t columns = 6;
    Block list{others, columns, {}, {}};
    std::size_t row = 0;
    for (std::size_t variant = 0; variant <= others; ++variant) {
        if (variant == *reference)
            continue;
        Contrast const& contrast = fit.contrasts[row];
        double const half_width = t * contrast.standard_error;
        list.numbers.insert(list.numbers.end(),
                            {contrast.difference, contrast.difference - half_width, contrast.difference + half_width,
                             p[row], double(table.runs_of[variant]), text_in_block});
        list.texts.push_back({row * columns + columns - 1, table.variants.all[variant]});
        ++row;
    }
    return list;
}

} // namespace hearthcell::kernels
