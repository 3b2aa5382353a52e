// Any function, with any arguments: numbers of any bits, texts, blocks of any shape.

#include "robustness/calls/promises.hpp"
#include "robustness/calls/written_call.hpp"
#include "call_bytes.hpp"

#include <cstdio>
#include <cstdlib>

// noexcept: an exception ends the program, and the fuzzer reports it.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) noexcept {
    using namespace hearthcell::tests;
    FuzzedCall const call = call_of({data, size});
    std::string const broken = broken_promise(*call.function, call.values);
    if (!broken.empty()) {
        std::fprintf(stderr, "%s %s\n", write_call(*call.function, call.values).c_str(), broken.c_str());
        std::abort();
    }
    return 0;
}
