#include "extension/archive/earlier_copies.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/archive/files/whole_file.hpp"
#include "extension/archive/records/finished.hpp"

#include <algorithm>
#include <optional>
#include <system_error>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_names = 10;

std::optional<std::size_t> number_of(Inputs const& inputs, std::string const& relative) {
    auto const& all = inputs.workbooks;
    auto const found = std::ranges::lower_bound(all, relative, {}, &Input::relative);
    if (found == all.end() || found->relative != relative)
        return std::nullopt;
    return static_cast<std::size_t>(found - all.begin());
}

/// Of a workbook that a stopped run did not come to: whether the run would have taken its copy as it is. Its content is
/// not read for that, which may take long.
bool would_stay(Task const& task, Records const& records, Input const& input) {
    auto const finished = records.find(input.relative);
    return finished && finished->copy_size && finished->key.starts_with(task.key("")) &&
           finished->source == state_of(input.source);
}

bool is_current(Task const& task, Records const& records, Ran const& ran, std::string const& copy) {
    auto const number = number_of(task.inputs, copy);
    if (!number)
        return false;
    if (ran.signal != 0 && ran.states[*number] == Ran::State::not_reached)
        return would_stay(task, records, task.inputs.workbooks[*number]);
    return ran.states[*number] == Ran::State::has_copy;
}

/// Why it could not be; empty: it is no more.
std::string remove(Records const& records, std::string const& copy, EarlierCopies& earlier) {
    try {
        Records::Removal const removal = records.remove_copy(copy);
        if (removal == Records::Removal::done)
            earlier.removed.push_back(copy);
        return removal == Records::Removal::was_changed ? "somebody changed it" : "";
    } catch (std::system_error const& problem) {
        return problem.code().message();
    }
}

} // namespace

EarlierCopies remove_earlier_copies(Task const& task, Ran const& ran) {
    Records const records(task.output);
    EarlierCopies earlier;
    std::vector<std::string> const all = records.copies();
    std::vector<std::string> remaining;
    for (std::string const& copy : all) {
        if (is_current(task, records, ran, copy)) {
            remaining.push_back(copy);
            continue;
        }
        std::string const why_not = remove(records, copy, earlier);
        if (why_not.empty())
            continue;
        earlier.left.emplace_back(copy, why_not);
        remaining.push_back(copy);
    }
    if (remaining.size() < all.size())
        records.keep_copies(remaining);
    return earlier;
}

std::string words_of(EarlierCopies const& earlier) {
    std::size_t const count = earlier.removed.size();
    std::string text =
        std::to_string(count) +
        (count == 1 ? " copy of an earlier run was removed, since this run has none of that workbook: "
                    : " copies of an earlier run were removed, since this run has none of these workbooks: ");
    for (std::size_t name = 0; name < std::min(count, most_names); ++name)
        text += (name == 0 ? "" : ", ") + shown(earlier.removed[name]);
    if (count > most_names)
        text += " and " + std::to_string(count - most_names) + " more";
    return text;
}

} // namespace hearthcell::archive
