// Loaded into the storm's office beside its own libraries: makes the C library give back to the system, every two
// seconds, what has been freed. It does so itself only at the end of its heap; so the memory of the largest block that
// was ever handed over, a hundred megabytes for each whole column, would count as held, and hide or feign a leak.

#include <malloc.h>

#include <chrono>
#include <thread>

namespace {

struct GiveBack {
    GiveBack() {
        std::thread([] {
            while (true) {
                std::this_thread::sleep_for(std::chrono::seconds(2));
                ::malloc_trim(0);
            }
        }).detach();
    }
} const give_back;

} // namespace
