// A storm of random calls in a real Calc. storm [--calls N] [--seed S]: S decides everything.

#include "document_edits.hpp"
#include "round.hpp"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>

namespace {

using namespace hearthcell;

constexpr long calls_a_round = 1000;
/// Memory after the last round may exceed that after the first tenth by so much: Calc's own shared texts and caches
/// grow that far, a leak of 100 bytes a call goes far beyond.
constexpr double megabytes_more = 48;

struct Wish {
    long calls = 20000;
    std::uint64_t seed = 20260101;
    long rounds() const { return (calls + calls_a_round - 1) / calls_a_round; }
};

Wish wish_of(int count, char** words) {
    Wish wish;
    for (int i = 1; i + 1 < count; i += 2) {
        if (std::strcmp(words[i], "--calls") == 0)
            wish.calls = std::strtol(words[i + 1], nullptr, 10);
        else if (std::strcmp(words[i], "--seed") == 0)
            wish.seed = std::strtoull(words[i + 1], nullptr, 10);
    }
    return wish;
}

std::filesystem::path package() {
    char const* const chosen = std::getenv("HEARTHCELL_PACKAGE");
    return chosen != nullptr ? chosen : PACKAGE;
}

int storm_of(Wish const& wish) {
    auto const start = std::chrono::steady_clock::now();
    ::setenv("MALLOC_MMAP_THRESHOLD_", "131072", 1); // the office gives large blocks back at once
    office::Office office({.package = package()});
    storm::Tally tally;
    double warm = 0, last = 0;
    long faults = 0;
    for (long round = 0; round < wish.rounds(); ++round) {
        storm::Chance chance(wish.seed + std::uint64_t(round));
        for (std::string const& fault : storm::Round(office, chance, int(calls_a_round), tally).run())
            if (++faults <= 40)
                std::printf("round %ld (--seed %llu): %s\n", round,
                            static_cast<unsigned long long>(wish.seed + std::uint64_t(round)), fault.c_str());
        last = storm::resident_megabytes(office.process_id());
        if (round == wish.rounds() / 10)
            warm = last;
        if (wish.rounds() <= 20 || round % 10 == 9) {
            std::chrono::duration<double> const time = std::chrono::steady_clock::now() - start;
            std::printf("%ld calls, %.0f s, %.0f MB, %ld faults\n", (round + 1) * calls_a_round, time.count(), last,
                        faults);
            std::fflush(stdout);
        }
    }
    tally.print();
    std::printf(
        "seed %llu: %ld calls, %ld results compared, %ld faults; memory %.0f MB after a tenth, %.0f MB at the end\n",
        static_cast<unsigned long long>(wish.seed), wish.rounds() * calls_a_round, tally.compared, faults, warm, last);
    auto const gaps = tally.gaps();
    for (std::string const& gap : gaps)
        std::printf("not covered: %s\n", gap.c_str());
    bool const leaks = last > warm + megabytes_more;
    if (leaks)
        std::printf("the office's memory grew by more than %.0f MB\n", megabytes_more);
    return faults == 0 && gaps.empty() && !leaks && office.alive() ? 0 : 1;
}

} // namespace

int main(int count, char** words) {
    try {
        return storm_of(wish_of(count, words));
    } catch (std::exception const& problem) {
        std::fprintf(stderr, "storm: %s\n", problem.what());
        return 1;
    }
}
