// Pins the numbers of this edition: whoever changes one does it knowingly.

#include "functions/call/call.hpp"
#include "robustness/calls/written_call.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <bit>
#include <cmath>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

namespace hearthcell::tests {
namespace {

/// Doubles in their order, as whole numbers in theirs.
std::uint64_t ordered(double x) {
    constexpr std::uint64_t sign = std::uint64_t{1} << 63;
    auto const bits = std::bit_cast<std::uint64_t>(x);
    return (bits & sign) != 0 ? sign - (bits & ~sign) : sign + bits;
}

/// The count of doubles from one finite number to another.
std::uint64_t ulps_between(double a, double b) {
    std::uint64_t const x = ordered(a), y = ordered(b);
    return x > y ? x - y : y - x;
}

class Bounds {
public:
    Bounds() {
        std::ifstream file(BOUNDS);
        for (std::string line; std::getline(file, line);) {
            std::istringstream words(line);
            std::string name;
            std::uint64_t ulps = 0;
            if (!line.starts_with('#') && words >> name >> ulps)
                of_function[name] = ulps;
        }
    }
    std::uint64_t of(std::string_view name) const {
        auto const own = of_function.find(std::string(name));
        return own != of_function.end() ? own->second : of_function.at("*");
    }

private:
    std::map<std::string, std::uint64_t> of_function;
};

/// A result as it is pinned: texts are no numbers, and may change their words.
std::string pinned_form(Outcome outcome) {
    if (std::holds_alternative<std::string>(outcome))
        return "text";
    if (Block* block = std::get_if<Block>(&outcome))
        for (Block::Text& text : block->texts)
            text.text = "text";
    return write_outcome(outcome);
}

/// "[1 2 #N/A]" as its words, without brackets.
std::vector<std::string> words_of(std::string text) {
    std::erase_if(text, [](char c) { return c == '[' || c == ']'; });
    std::istringstream stream(text);
    std::vector<std::string> words;
    for (std::string word; stream >> word;)
        words.push_back(word);
    return words;
}

bool is_near(std::string const& one, std::string const& other, std::uint64_t most_ulps) {
    if (one == other)
        return true;
    char *end = nullptr, *other_end = nullptr;
    double const a = std::strtod(one.c_str(), &end), b = std::strtod(other.c_str(), &other_end);
    return *end == 0 && *other_end == 0 && std::isfinite(a) && std::isfinite(b) && ulps_between(a, b) <= most_ulps;
}

bool is_near(std::string const& pinned, Outcome const& outcome, std::uint64_t most_ulps) {
    std::vector<std::string> const before = words_of(pinned), now = words_of(pinned_form(outcome));
    return std::ranges::equal(before, now, [&](std::string const& one, std::string const& other) {
        return is_near(one, other, most_ulps);
    });
}

struct Pin {
    std::string call, result;
};

/// The lines of the file, those of the comments and of the edition included; a call's result apart.
std::vector<Pin> pins() {
    std::ifstream file(PINNED);
    std::vector<Pin> lines;
    for (std::string line; std::getline(file, line);) {
        std::size_t const at = line.starts_with('#') ? std::string::npos : line.rfind(" = ");
        lines.push_back(at == std::string::npos ? Pin{line, ""} : Pin{line.substr(0, at), line.substr(at + 3)});
    }
    return lines;
}

TEST(PinnedNumbers, AreThoseOfThisEdition) {
    Bounds const bounds;
    std::ofstream renewed(PINNED_NOW);
    std::string changed;
    int calls = 0;
    for (Pin const& pin : pins()) {
        if (pin.result.empty()) {
            renewed << pin.call << "\n";
            continue;
        }
        ++calls;
        WrittenCall const written = read_call(pin.call);
        ASSERT_NE(written.function, nullptr) << pin.call << " is no call";
        Outcome const outcome = call(*written.function, written.values);
        bool const same = is_near(pin.result, outcome, bounds.of(written.function->name));
        if (!same)
            changed += "- " + pin.call + " = " + pin.result + "\n+ " + pinned_form(outcome) + "\n";
        renewed << pin.call << " = " << (same ? pin.result : pinned_form(outcome)) << "\n";
    }
    EXPECT_GE(calls, 500);
    EXPECT_TRUE(changed.empty())
        << changed
        << "Numbers of this edition have changed. Where that is meant, the next edition announces it: see "
           "manifest/RELEASES.md. Then: cp " PINNED_NOW " " PINNED;
}

TEST(PinnedNumbers, AreOfEveryFunctionThatGivesNumbers) {
    std::map<std::string_view, int> results;
    for (Pin const& pin : pins())
        if (WrittenCall const written = read_call(pin.call); written.function != nullptr && pin.result[0] != '#')
            ++results[written.function->name];
    std::set<std::string_view> const words{"EXPLAIN", "SOURCE", "VERSION"};
    for (Group const& group : catalogue())
        for (Function const& function : group.functions) {
            if (words.contains(function.name))
                continue;
            EXPECT_GE(results[function.name], 3)
                << function.name << " needs lines in " PINNED ", as \"" << function.name
                << "(...) = new\"; the other test then prints how to renew them";
        }
}

TEST(PinnedNumbers, AreComparedByTheirUnitsOfTheLastPlace) {
    EXPECT_EQ(ulps_between(1, 1), 0);
    EXPECT_EQ(ulps_between(1, std::nextafter(1, 2)), 1);
    EXPECT_EQ(ulps_between(-5e-324, 5e-324), 2);
    EXPECT_TRUE(is_near("[1 2 #N/A]", Block{1, 3, {1, std::nextafter(2, 3), failure(Reason::no_rows)}, {}}, 1));
    EXPECT_FALSE(is_near("[1 2 #N/A]", Block{1, 3, {1, std::nextafter(2, 3), failure(Reason::no_rows)}, {}}, 0));
    EXPECT_FALSE(is_near("1", Failure{Reason::no_rows}, 8));
    EXPECT_FALSE(is_near("[1 2]", Outcome(1.0), 8));
}

} // namespace
} // namespace hearthcell::tests
