// Texts as people type them: times, names of functions, fuels and materials, options. The input is the text itself,
// behind one letter that says where it is typed.

#include "functions/call/call.hpp"
#include "functions/kernels/times/minutes.hpp"
#include "robustness/calls/promises.hpp"
#include "robustness/calls/written_call.hpp"

#include <bit>
#include <cstdio>
#include <cstdlib>

namespace {

using namespace hearthcell;

[[noreturn]] void report(std::string const& text, char const* broken) {
    std::fprintf(stderr, "\"%s\" %s\n", text.c_str(), broken);
    std::abort();
}

void keep(std::string_view function, std::vector<Value> const& values) {
    std::string const broken = tests::broken_promise(*find_function(function), values);
    if (!broken.empty())
        report(tests::write_call(*find_function(function), values), broken.c_str());
}

/// The same text as someone else types it.
std::string otherwise(std::string const& text) {
    std::string result = "  " + text + " ";
    for (char& c : result)
        if (c >= 'a' && c <= 'z')
            c = char(c - 'a' + 'A');
    return result;
}

void a_time(std::string const& text) {
    for (char const* typed : {"as it stands", "mm:ss", "hh:mm", "minutes"})
        keep("MINUTES", {text, std::string(typed)});
    for (Typed const typed :
         {Typed::as_it_stands, Typed::minutes_and_seconds, Typed::hours_and_minutes, Typed::minutes})
        if (std::bit_cast<std::uint64_t>(minutes_of(text, typed)) !=
            std::bit_cast<std::uint64_t>(minutes_of(otherwise(text), typed)))
            report(text, "is another time in capitals or with blanks around it");
    keep("MINUTES", {Block{2, 1, {text_in_block, 0.01}, {{0, text}}}, {}});
}

void a_name(std::string const& text) {
    keep("EXPLAIN", {text, 1.0});
    keep("SOURCE", {text});
    keep("CALORIFICVALUE", {text});
    keep("POTHEAT", {1000.0, text, 20.0, 90.0});
    if (find_function(text) != find_function(otherwise(text)))
        report(text, "is another function in capitals or with blanks around it");
}

void an_option(std::string const& text) {
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (Argument const& argument : function.arguments)
                if (argument.kind == ArgumentKind::choice) {
                    Scalar const one = read_scalar(argument, text), other = read_scalar(argument, otherwise(text));
                    if (one.reason != other.reason || (one.reason == Reason::none && one.number != other.number))
                        report(text, "is another option in capitals or with blanks around it");
                }
    keep("WATERHEAT", {1000.0, 20.0, 90.0, text});
    keep("SERIES", {Block{3, 1, {640, 700, 655}, {}}, {}, text});
    keep("MINUTES", {1.0625, text});
    keep("PERFORMANCETIER", {text, 0.35});
    keep("UNCERTAINTY", {std::string("WATERHEAT"), Block{4, 1, {1000, 20, 90, text_in_block}, {{3, text}}},
                         Block{4, 1, {1, 1, 1, absent}, {}}});
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) noexcept {
    if (size == 0)
        return 0;
    std::string const text(reinterpret_cast<char const*>(data) + 1, size - 1);
    switch (data[0]) {
    case 't':
        a_time(text);
        break;
    case 'n':
        a_name(text);
        break;
    default:
        an_option(text);
    }
    return 0;
}
