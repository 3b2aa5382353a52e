#pragma once
// Why a workbook could not be done, or what is to be said of one that was: each reason and its words.

#include <cstdint>
#include <stdexcept>
#include <string>
#include <string_view>

namespace hearthcell::archive {

/// Why a workbook is listed in problems.csv.
enum class Reason {
    password,
    corrupt,
    unsupported,
    timed_out,
    memory_limit,
    crashed,
    new_errors,
    external_links,
    unreadable,
    too_large,
    not_written,
    symlink_loop,
    not_set,
    not_collected,
    not_compared,
    nowhere,
    locked_sheet,
    formulas_left,
    failed,
    differs,
    typed_over,
    text_for_number,
    stored_errors,
    another_layout,
    left_as_it_was,
    not_carried,
};

/// As problems.csv has it: "timed out".
std::string_view words(Reason reason);
Reason reason_of(std::string_view words); // throws std::out_of_range

/// Whether another run on the same file could end differently: such a file is not finished.
bool may_pass(Reason reason);

struct Problem {
    Reason reason;
    std::string detail;
    int attempts = 1;
};

/// A workbook cannot be done; says why.
class Trouble : public std::runtime_error {
public:
    Trouble(Reason why, std::string const& detail) : std::runtime_error(detail), reason(why) {}
    Reason reason;
};

/// Throws Trouble(too_large) where a size in bytes is above the limit. what: "it unpacks to"
void check_size(std::string const& what, std::uint64_t size, std::uint64_t largest);

} // namespace hearthcell::archive
