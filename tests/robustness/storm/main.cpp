// A storm of random calls in a real Calc. storm [--calls N] [--seed S] [--more-megabytes M]; the seed decides
// everything.

#include "document_edits.hpp"
#include "round.hpp"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <thread>

namespace {

using namespace hearthcell;

constexpr long calls_a_round = 1000, faults_shown = 40;

struct Wish {
    long calls = 20000;
    unsigned long long seed = 20260101;
    /// What the office may hold more at the end than after the warm-up. A leak of 32 bytes an evaluation would be 70 MB
    /// in 300,000 calls.
    double megabytes_more = 40;
    [[nodiscard]] long rounds() const { return (calls + calls_a_round - 1) / calls_a_round; }
};

Wish wish_of(int count, char** words) {
    Wish wish;
    for (int i = 1; i + 1 < count; i += 2) {
        if (std::strcmp(words[i], "--calls") == 0)
            wish.calls = std::strtol(words[i + 1], nullptr, 10);
        else if (std::strcmp(words[i], "--seed") == 0)
            wish.seed = std::strtoull(words[i + 1], nullptr, 10);
        else if (std::strcmp(words[i], "--more-megabytes") == 0)
            wish.megabytes_more = std::strtod(words[i + 1], nullptr);
    }
    return wish;
}

std::filesystem::path package() {
    char const* const chosen = std::getenv("HEARTHCELL_PACKAGE");
    return chosen != nullptr ? chosen : PACKAGE;
}

class Storm {
public:
    explicit Storm(Wish const& wish) : wish_(wish), office_({.package = package()}) {}

    /// Whether all was as it must be.
    bool rage() {
        double const warm = warm_up();
        for (long round = 0; round < wish_.rounds(); ++round) {
            blow(wish_.seed + static_cast<unsigned long long>(round), tally_);
            if (round % 10 == 9)
                say_how_far((round + 1) * calls_a_round);
        }
        return report(warm);
    }

private:
    /// Calc's own caches are as large as they get: an empty add-in makes it grow so, too. Gives the memory in MB.
    double warm_up() {
        {
            auto const document = storm::new_document(office_, {});
            document.sheet(storm::calls_sheet).formula("A1", "=STOVE.DIFFERENCE(Data.A:A;Data.B:B)");
            document.sheet(storm::calls_sheet).formula("A2", "=STOVE.MINUTES(Data.A:A)");
            document.sheet(storm::data_sheet).formulas("A1", {{"1", "2"}, {"2", "4"}});
        }
        storm::Tally uncounted;
        blow(wish_.seed, uncounted);
        return settled_megabytes();
    }

    /// What the office holds, when all that has been freed is given back.
    [[nodiscard]] double settled_megabytes() const {
        std::this_thread::sleep_for(std::chrono::seconds(5));
        return storm::resident_megabytes(office_.process_id());
    }

    void blow(unsigned long long seed, storm::Tally& tally) {
        storm::Chance chance(seed);
        for (std::string const& fault : storm::Round(office_, chance, calls_a_round, tally).run())
            if (++faults_ <= faults_shown)
                std::printf("--calls 1000 --seed %llu: %s\n", seed, fault.c_str());
    }

    void say_how_far(long calls) const {
        std::chrono::duration<double> const time = std::chrono::steady_clock::now() - start_;
        std::printf("%ld calls, %.0f s, %.0f MB, %ld faults\n", calls, time.count(),
                    storm::resident_megabytes(office_.process_id()), faults_);
        std::fflush(stdout);
    }

    bool report(double warm) {
        double const last = settled_megabytes();
        tally_.print();
        auto const gaps = tally_.gaps();
        for (std::string const& gap : gaps)
            std::printf("not covered: %s\n", gap.c_str());
        bool const grew = last > warm + wish_.megabytes_more;
        bool const alive = office_.alive();
        std::printf(
            "seed %llu: %ld calls, %ld results compared, %ld faults; memory %.0f MB warm, %.0f MB at the end%s\n",
            wish_.seed, wish_.rounds() * calls_a_round, tally_.compared, faults_, warm, last,
            grew ? ", which is too much more" : "");
        return alive && faults_ == 0 && gaps.empty() && !grew;
    }

    Wish wish_;
    office::Office office_;
    storm::Tally tally_;
    long faults_ = 0;
    std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

/// For the office that is started later: its memory shall tell what it holds, and nothing else.
void prepare_for_measuring() {
    // Else it grows with the number of threads that have ever handed over a whole column.
    ::setenv("MALLOC_ARENA_MAX", "1", 1);
    char const* const others = std::getenv("LD_PRELOAD"); // sanitizers must come first
    std::string const all = others != nullptr ? std::string(others) + ":" + GIVE_BACK_MEMORY : GIVE_BACK_MEMORY;
    ::setenv("LD_PRELOAD", all.c_str(), 1);
}

} // namespace

int main(int count, char** words) {
    prepare_for_measuring();
    try {
        return Storm(wish_of(count, words)).rage() ? 0 : 1;
    } catch (std::exception const& problem) {
        std::fprintf(stderr, "storm: %s\n", problem.what());
        return 1;
    }
}
