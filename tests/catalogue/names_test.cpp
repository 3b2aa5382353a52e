// Pins what files and fingers remember: stored names, argument names and their order.

#include "functions/catalogue/catalogue.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <set>
#include <string>
#include <vector>

namespace hearthcell::tests {
namespace {

/// "boilingPoint(altitude; [sea-level pressure])"
std::string line_of(Function const& function) {
    std::string line = std::string(function.stored) + "(";
    std::string_view semicolon;
    for (Argument const& argument : function.arguments) {
        line += semicolon;
        semicolon = "; ";
        bool const open = argument.optional || argument.kind == ArgumentKind::rest;
        line += (open ? "[" : "") + std::string(argument.name) + (open ? "]" : "");
    }
    return line + ")";
}

std::vector<std::string> names_now() {
    std::vector<std::string> lines;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            lines.push_back(line_of(function));
    return lines;
}

std::vector<std::string> names_pinned() {
    std::ifstream file(NAMES_FILE);
    std::vector<std::string> lines;
    for (std::string line; std::getline(file, line);)
        lines.push_back(line);
    return lines;
}

std::string difference(std::vector<std::string> const& pinned, std::vector<std::string> const& now) {
    std::set<std::string> const before(pinned.begin(), pinned.end()), after(now.begin(), now.end());
    std::string text;
    for (std::string const& line : pinned)
        if (!after.contains(line))
            text += "- " + line + "\n";
    for (std::string const& line : now)
        if (!before.contains(line))
            text += "+ " + line + "\n";
    return text.empty() ? "Only the order of the functions differs.\n" : text;
}

TEST(Names, OfFunctionsAndArgumentsAreThoseThatWereShipped) {
    std::vector<std::string> const pinned = names_pinned(), now = names_now();
    if (pinned == now)
        return;
    std::ofstream file(NAMES_NOW);
    for (std::string const& line : now)
        file << line << "\n";
    FAIL()
        << "The catalogue and " NAMES_FILE " differ:\n"
        << difference(pinned, now)
        << "Sheets keep these names and this order for ever. Once an edition has shipped, no function may be renamed "
           "or taken away and no argument renamed or moved; a function may gain optional arguments at its end, "
           "nothing else.\nWhere the change is one of the allowed ones: cp " NAMES_NOW " " NAMES_FILE;
}

} // namespace
} // namespace hearthcell::tests
