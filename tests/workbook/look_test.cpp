// The sources of the templates share one look: a style of the same name is the same everywhere.

#include <filesystem>
#include <gtest/gtest.h>
#include <map>
#include <pugixml.hpp>
#include <sstream>

namespace hearthcell::workbook {
namespace {

std::map<std::filesystem::path, pugi::xml_document> sources() {
    std::map<std::filesystem::path, pugi::xml_document> found;
    for (auto const& entry : std::filesystem::directory_iterator(SAMPLE_SHEETS))
        if (entry.path().extension() == ".fods") {
            EXPECT_TRUE(found[entry.path()].load_file(entry.path().c_str())) << entry.path();
        }
    return found;
}

std::map<std::string, std::string> styles_of(pugi::xml_document const& document) {
    std::map<std::string, std::string> styles;
    for (pugi::xpath_node const& found : document.select_nodes("/office:document/office:styles/*[@style:name]")) {
        std::ostringstream text;
        found.node().print(text, "", pugi::format_raw);
        styles[std::string(found.node().name()) + " " + found.node().attribute("style:name").value()] = text.str();
    }
    return styles;
}

TEST(Templates, ShareTheirStyles) {
    auto const all = sources();
    auto const shared = styles_of(all.at(std::filesystem::path(SAMPLE_SHEETS) / "bench-record.fods"));
    ASSERT_GT(shared.size(), 30U);
    for (auto const& [file, document] : all) {
        for (auto const& [name, style] : styles_of(document)) {
            auto const found = shared.find(name);
            if (found == shared.end())
                continue;
            EXPECT_EQ(style, found->second) << file.filename() << ": " << name;
        }
    }
}

/// Calc's own colours, which may be light on dark, must not reach a cell.
TEST(Templates, SetGroundAndInkThemselvesSoThatADarkScreenHidesNothing) {
    for (auto const& [file, document] : sources()) {
        pugi::xml_node const styles = document.child("office:document").child("office:styles");
        auto const named = [&](char const* name) { return styles.find_child_by_attribute("style:name", name); };
        EXPECT_STRNE(named("Default").child("style:table-cell-properties").attribute("fo:background-color").as_string(),
                     "")
            << file;
        EXPECT_STRNE(named("Default").child("style:text-properties").attribute("fo:color").as_string(), "") << file;
        for (pugi::xpath_node const& found : styles.select_nodes("style:style[@style:family='table-cell']")) {
            pugi::xml_node style = found.node();
            while (style.attribute("style:parent-style-name"))
                style = named(style.attribute("style:parent-style-name").as_string());
            EXPECT_STREQ(style.attribute("style:name").as_string(), "Default")
                << file << ": " << found.node().attribute("style:name").as_string();
        }
    }
}

/// Calc gives the letters of a footer the look of an automatic style only: those of a common one are of ten points.
TEST(Templates, GiveTheirFootersLettersThatCalcTakes) {
    for (auto const& [file, document] : sources()) {
        pugi::xml_node const automatic = document.child("office:document").child("office:automatic-styles");
        auto const spans = document.select_nodes("//style:footer//text:span");
        EXPECT_FALSE(spans.empty()) << file;
        for (pugi::xpath_node const& span : spans) {
            char const* const name = span.node().attribute("text:style-name").as_string();
            EXPECT_TRUE(automatic.find_child_by_attribute("style:name", name)) << file << ": " << name;
        }
    }
}

/// What a choice makes needless is shown by styles without a shown name: such formats go by it, if there is one.
TEST(Templates, FormatByConditionWithStylesThatGoByTheirName) {
    for (auto const& [file, document] : sources()) {
        pugi::xml_node const styles = document.child("office:document").child("office:styles");
        for (pugi::xpath_node const& condition : document.select_nodes("//calcext:condition")) {
            char const* const name = condition.node().attribute("calcext:apply-style-name").as_string();
            pugi::xml_node const style = styles.find_child_by_attribute("style:name", name);
            EXPECT_TRUE(style) << file << ": " << name;
            EXPECT_FALSE(style.attribute("style:display-name")) << file << ": " << name;
        }
    }
}

} // namespace
} // namespace hearthcell::workbook
