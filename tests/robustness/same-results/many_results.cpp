// many_results FILE: many calls and what they give, to the last bit, a line each: two builds of it are then compared.

#include "functions/call/call.hpp"
#include "many_calls.hpp"
#include "robustness/calls/written_call.hpp"

#include <bit>
#include <cinttypes>
#include <cstdio>

namespace {

using namespace hearthcell;

void print(std::FILE* file, double number) {
    std::fprintf(file, " %016" PRIx64, std::bit_cast<std::uint64_t>(number));
}

void print(std::FILE* file, Outcome const& outcome) {
    if (double const* number = std::get_if<double>(&outcome))
        print(file, *number);
    else if (Block const* block = std::get_if<Block>(&outcome))
        for (double const element : block->numbers)
            print(file, element);
    else if (Failure const* why = std::get_if<Failure>(&outcome))
        std::fprintf(file, " fails %u %u %u", unsigned(why->reason), why->argument, why->row);
    else
        std::fputs(" text", file);
}

} // namespace

int main(int count, char** arguments) {
    std::FILE* const file = count == 2 ? std::fopen(arguments[1], "w") : nullptr;
    if (file == nullptr) {
        std::fputs("many_results FILE\n", stderr);
        return 2;
    }
    constexpr unsigned of_each_example = 200;
    tests::for_many_calls(of_each_example, [&](Function const& function, std::span<Value const> values) {
        std::fprintf(file, "%s", tests::write_call(function, values).c_str());
        std::fputs(" =", file);
        print(file, call(function, values));
        std::fputs("\n", file);
    });
    return std::fclose(file) == 0 ? 0 : 1;
}
