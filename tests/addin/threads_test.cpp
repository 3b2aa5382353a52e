// Calls from several threads at once, as Calc's own may make them.

#include "tests/addin/loaded.hpp"

#include <gtest/gtest.h>

#include <atomic>
#include <thread>
#include <vector>

namespace hearthcell::tests {

TEST(Threads, GetTheSameResultsFromOneObject) {
    Held const stove = new_stove();
    Any const name = text("DRYMASS");
    Cells const values = column({Any(500.0), Any(0.12)});
    double const number = number_of(stove.get(), "boilingPoint", Any(1240.0), text("900"), Any());
    Any const block = any_of(stove.get(), "budget", name, values, values, Any(), Any());
    std::atomic<int> wrong = 0;
    auto const call_often = [&] {
        for (int times = 0; times < 5000; ++times) {
            stove->acquire(stove.get());
            wrong += number_of(stove.get(), "boilingPoint", Any(1240.0), text("900"), Any()) == number ? 0 : 1;
            wrong += any_of(stove.get(), "budget", name, values, values, Any(), Any()) == block ? 0 : 1;
            stove->release(stove.get());
            Held const another = new_stove();
        }
    };
    std::vector<std::thread> threads;
    for (int count = 0; count < 4; ++count)
        threads.emplace_back(call_often);
    for (std::thread& thread : threads)
        thread.join();
    EXPECT_EQ(wrong, 0);
    EXPECT_EQ(number_of(stove.get(), "boilingPoint", Any(1240.0), text("900"), Any()), number);
}

} // namespace hearthcell::tests
