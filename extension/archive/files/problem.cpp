#include "extension/archive/files/problem.hpp"

#include <array>
#include <utility>

namespace hearthcell::archive {
namespace {

constexpr std::array<std::pair<Reason, std::string_view>, 26> all{{
    {Reason::password, "password"},
    {Reason::corrupt, "corrupt"},
    {Reason::unsupported, "unsupported"},
    {Reason::timed_out, "timed out"},
    {Reason::memory_limit, "memory limit"},
    {Reason::crashed, "crashed the office"},
    {Reason::new_errors, "new errors"},
    {Reason::external_links, "external links kept as saved"},
    {Reason::unreadable, "unreadable"},
    {Reason::too_large, "too large"},
    {Reason::not_written, "output not written"},
    {Reason::symlink_loop, "symlink loop"},
    {Reason::not_set, "not set"},
    {Reason::not_collected, "not collected"},
    {Reason::not_compared, "not compared"},
    {Reason::nowhere, "in no workbook"},
    {Reason::locked_sheet, "sheet locked by a password"},
    {Reason::formulas_left, "formulas left"},
    {Reason::failed, "failed in the office"},
    {Reason::differs, "differs between runs"},
    {Reason::typed_over, "results typed over"},
    {Reason::text_for_number, "numbers that are texts"},
    {Reason::stored_errors, "stored errors"},
    {Reason::another_layout, "another layout"},
    {Reason::left_as_it_was, "left as it was"},
    {Reason::not_carried, "not carried"},
}};

} // namespace

std::string_view words(Reason reason) {
    for (auto const& [known, text] : all)
        if (known == reason)
            return text;
    return {};
}

Reason reason_of(std::string_view text) {
    for (auto const& [known, its_words] : all)
        if (its_words == text)
            return known;
    throw std::out_of_range("no reason is called " + std::string(text));
}

void check_size(std::string const& what, std::uint64_t size, std::uint64_t largest) {
    constexpr unsigned to_mib = 20;
    if (size > largest)
        throw Trouble(Reason::too_large, what + " " + std::to_string(size >> to_mib) + " MiB, more than the limit of " +
                                             std::to_string(largest >> to_mib) + " MiB");
}

bool may_pass(Reason reason) {
    switch (reason) {
    case Reason::timed_out:
    case Reason::memory_limit:
    case Reason::crashed:
    case Reason::unreadable:
    case Reason::not_written:
    case Reason::failed:
        return true;
    default:
        return false;
    }
}

} // namespace hearthcell::archive
