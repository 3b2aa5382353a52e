// The README's function table is committed, so that it can be read without building: it must be what is built.

#include "manifest/generator/output.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace hearthcell::tests {
namespace {

std::string line_of(std::string const& text, std::size_t at) {
    std::size_t const start = text.rfind('\n', at) + 1;
    return text.substr(start, text.find('\n', at) - start);
}

TEST(ReadmeTable, IsTheOneThatTheCatalogueGivesToday) {
    std::ifstream file(README_FILE);
    ASSERT_TRUE(file) << "No " README_FILE;
    std::stringstream text;
    text << file.rdbuf();
    std::string const committed = text.str(), renewed = generator::with_function_table(committed);
    ASSERT_FALSE(renewed.empty()) << README_FILE " has no marks <!-- functions --> and <!-- end of functions -->";
    std::size_t at = 0;
    while (at < committed.size() && at < renewed.size() && committed[at] == renewed[at])
        ++at;
    EXPECT_TRUE(committed == renewed) << "The function table is stale. In the README:\n"
                                      << line_of(committed, at) << "\nfrom the catalogue:\n"
                                      << line_of(renewed, at)
                                      << "\nRenew it: build/hearthcell-generate readme README.md";
}

TEST(ReadmeTable, NamesEveryFunctionWithItsArgumentsUnitAndSources) {
    std::ostringstream table;
    generator::write_readme_table(table);
    for (Group const& group : catalogue())
        for (Function const& function : group.functions) {
            EXPECT_NE(table.str().find("`" + generator::signature(function, Language::english) + "`"),
                      std::string::npos)
                << function.name;
            for (Source const& source : function.sources)
                EXPECT_NE(table.str().find(source.title.english), std::string::npos) << source.title.english;
        }
}

} // namespace
} // namespace hearthcell::tests
