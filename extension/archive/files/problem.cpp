#include "extension/archive/files/problem.hpp"

#include <array>
#include <utility>

namespace hearthcell::archive {
namespace {

constexpr std::array<std::pair<Reason, std::string_view>, 16> all{{
    {Reason::password, "password"},
    {Reason::corrupt, "corrupt"},
    {Reason::unsupported, "unsupported"},
    {Reason::timed_out, "timed out"},
    {Reason::crashed, "crashed the office"},
    {Reason::new_errors, "new errors"},
    {Reason::external_links, "external links kept as saved"},
    {Reason::unreadable, "unreadable"},
    {Reason::too_large, "too large"},
    {Reason::not_written, "output not written"},
    {Reason::symlink_loop, "symlink loop"},
    {Reason::not_set, "not set"},
    {Reason::locked_sheet, "sheet locked by a password"},
    {Reason::formulas_left, "formulas left"},
    {Reason::failed, "failed in the office"},
    {Reason::differs, "differs between runs"},
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

bool may_pass(Reason reason) {
    switch (reason) {
    case Reason::timed_out:
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
