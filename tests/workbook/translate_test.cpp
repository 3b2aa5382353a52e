#include "manifest/workbook/translate.hpp"

#include "functions/edition.hpp"
#include "manifest/workbook/trouble.hpp"
#include "tests/support/terms_kept.hpp"
#include "tests/support/words_shut_out.hpp"

#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <unistd.h>

namespace hearthcell::workbook {
namespace {

/// A file of texts, gone with the test.
class TextFile {
public:
    explicit TextFile(std::string_view content)
        : path_(std::filesystem::temp_directory_path() / ("hearthcell-texts-" + std::to_string(getpid()) + ".json")) {
        std::ofstream(path_) << content;
    }
    ~TextFile() { std::filesystem::remove(path_); }
    TextFile(TextFile const&) = delete;
    TextFile& operator=(TextFile const&) = delete;

    [[nodiscard]] std::filesystem::path const& path() const { return path_; }

private:
    std::filesystem::path path_;
};

pugi::xml_document sheet(std::string const& table) {
    pugi::xml_document document;
    document.load_string(("<office:document><office:body><office:spreadsheet>" + table +
                          "</office:spreadsheet></office:body></office:document>")
                             .c_str());
    return document;
}

constexpr char runs[] = R"([{"en": "Runs", "fr": "Essais", "es": "Ensayos", "sw": "Majaribio"}, {"all": "kJ"}])";

TEST(Translation, ReachesNamesOfSheetsCellsMessagesAndFormulas) {
    TextFile const file(runs);
    Texts texts("fr", {}, file.path());
    pugi::xml_document document =
        sheet(R"(<table:content-validation><table:help-message table:title="Runs"/></table:content-validation>)"
              R"(<table:table table:name="Runs"><table:table-cell table:formula="of:=[Runs.A1]&amp;&quot;Runs&quot;">)"
              R"(<text:p>Runs</text:p><text:p>12</text:p></table:table-cell></table:table>)");
    translate(document, texts);

    EXPECT_STREQ(document.select_node("//table:help-message").node().attribute("table:title").value(), "Essais");
    EXPECT_STREQ(document.select_node("//table:table").node().attribute("table:name").value(), "Essais");
    EXPECT_STREQ(document.select_node("//table:table-cell").node().attribute("table:formula").value(),
                 "of:=['Essais'.A1]&\"Essais\"");
    EXPECT_STREQ(document.select_node("//text:p").node().text().get(), "Essais");
    EXPECT_TRUE(texts.unknown().empty());
    EXPECT_EQ(texts.unused(), std::set<std::string>{"kJ"});
}

TEST(Translation, ReachesSheetsAndTextsOfFormulasAndNoOtherWordsInThem) {
    TextFile const file(R"([{"en": "Runs", "fr": "Essais d'hiver", "es": "", "sw": ""},)"
                        R"({"en": "say \"no\"", "fr": "dites \"non\"", "es": "", "sw": ""}])");
    Texts texts("fr", {}, file.path());
    pugi::xml_document document = sheet(
        R"~(<table:table table:name="Runs"><table:table-cell table:formula="of:=RunsNeeded+Runs+[.Runs1]+[OldRuns.A1]"/>)~"
        R"~(<table:table-cell table:formula="of:=[$Runs.$B$2:.C3]&amp;&quot;say &quot;&quot;no&quot;&quot;&quot;"/>)~"
        R"~(<table:table-cell table:condition="of:cell-content-is-between([Runs.A1],2)"/><draw:a xlink:href="#Runs.A1"/>)~"
        R"~(<table:shapes table:end-cell-address="Runs.B2"/></table:table>)~");
    translate(document, texts);
    auto const value = [&](char const* attribute, int place) {
        pugi::xpath_node_set const all = document.select_nodes((std::string("//@") + attribute).c_str());
        return std::string(all[static_cast<std::size_t>(place)].attribute().value());
    };
    EXPECT_EQ(value("table:formula", 0), "of:=RunsNeeded+Runs+[.Runs1]+[OldRuns.A1]");
    EXPECT_EQ(value("table:formula", 1), "of:=[$'Essais d''hiver'.$B$2:.C3]&\"dites \"\"non\"\"\"");
    EXPECT_EQ(value("table:condition", 0), "of:cell-content-is-between(['Essais d''hiver'.A1],2)");
    EXPECT_EQ(value("xlink:href", 0), "#'Essais d''hiver'.A1");
    EXPECT_EQ(value("table:end-cell-address", 0), "'Essais d''hiver'.B2");
}

TEST(Translation, ReachesTheWordsOfANumbersFormatAndKeepsTheBlankBeforeThem) {
    TextFile const file(R"([{"en": " % less", "fr": " % de moins", "es": "", "sw": ""}])");
    Texts texts("fr", {}, file.path());
    pugi::xml_document document = sheet("<number:text> % less</number:text><number:text>/8</number:text>");
    translate(document, texts);
    pugi::xpath_node_set const all = document.select_nodes("//number:text");
    EXPECT_STREQ(all[0].node().text().get(), " % de moins");
    EXPECT_STREQ(all[1].node().text().get(), "/8");
    EXPECT_TRUE(texts.unknown().empty());
}

TEST(Translation, GivesPageStylesTheirNameInWords) {
    TextFile const file(runs);
    Texts texts("fr", {}, file.path());
    pugi::xml_document document = sheet(R"(<style:master-page style:name="Runs" style:display-name="Runs"/>)");
    translate(document, texts);
    pugi::xml_node const page = document.select_node("//style:master-page").node();
    EXPECT_STREQ(page.attribute("style:display-name").value(), "Essais");
    EXPECT_STREQ(page.attribute("style:name").value(), "Runs"); // by which sheets refer to it
}

TEST(Translation, KeepsDefinedNamesSinceArchivesAreCollectedByThem) {
    TextFile const file(runs);
    Texts texts("sw", {}, file.path());
    pugi::xml_document document = sheet(R"(<table:table table:name="Runs"/><table:named-range table:name="efficiency" )"
                                        R"(table:cell-range-address="$Runs.$A$1"/>)");
    translate(document, texts);
    pugi::xml_node const named = document.select_node("//table:named-range").node();
    EXPECT_STREQ(named.attribute("table:name").value(), "efficiency");
    EXPECT_STREQ(named.attribute("table:cell-range-address").value(), "$'Majaribio'.$A$1");
}

TEST(Translation, NotesEveryTextThatIsNotKnown) {
    TextFile const file(runs);
    Texts texts("es", {}, file.path());
    pugi::xml_document document = sheet("<text:p>Runs</text:p><text:p>Water</text:p><text:p>100 %</text:p>");
    translate(document, texts);
    EXPECT_EQ(texts.unknown(), std::set<std::string>{"Water"});
}

TEST(Translation, PutsTheEditionIn) {
    TextFile const file(R"([{"en": "made for @EDITION@", "fr": "prévu pour @EDITION@"}])");
    Texts texts("fr", {}, file.path());
    pugi::xml_document document = sheet("<text:p>made for @EDITION@</text:p>");
    translate(document, texts);
    EXPECT_EQ(document.select_node("//text:p").node().text().get(), std::string("prévu pour ") + edition);
}

TEST(Texts, MustBeThereInTheLanguageAndOnlyOnce) {
    TextFile const missing(R"([{"en": "Runs", "fr": "Essais"}])");
    EXPECT_THROW(Texts("sw", {}, missing.path()), Trouble);
    EXPECT_THROW(Texts("fr", {missing.path()}, missing.path()), Trouble);
    EXPECT_THROW(Texts("fr", {}, "/no/such/file.json"), Trouble);
}

TEST(Translation, TakesTermsOfTheGlossaryAndNamesOfFuelsFromTheCatalogue) {
    TextFile const file(runs);
    Texts texts("es", {}, file.path());
    EXPECT_EQ(texts.translated("net char"), "carbón neto");
    EXPECT_EQ(texts.translated("charcoal"), "carbón vegetal");
    EXPECT_TRUE(texts.unknown().empty());
}

TEST(Translation, RefusesAFileThatSaysATermAnew) {
    TextFile const file(R"([{"en": "net char", "fr": "charbon", "es": "carbón", "sw": "makaa"}])");
    EXPECT_THROW(Texts("fr", {}, file.path()), Trouble);
    TextFile const fuel(R"([{"en": "charcoal", "fr": "charbon", "es": "carbón", "sw": "makaa"}])");
    EXPECT_THROW(Texts("fr", {}, fuel.path()), Trouble);
}

TEST(Texts, OfTheTemplatesKeepToTheGlossary) {
    for (auto const& entry : std::filesystem::directory_iterator(std::filesystem::path(SAMPLE_SHEETS) / "texts")) {
        std::ifstream stream(entry.path());
        for (auto const& texts : nlohmann::json::parse(stream))
            for (Language const language : languages)
                if (std::string const text = texts.value(std::string(code_of(language)), ""); !text.empty()) {
                    for (std::string_view const word : tests::words_shut_out(text, language))
                        ADD_FAILURE() << entry.path().filename() << " says \"" << word << "\": " << text;
                    for (std::string_view const term : tests::terms_lost(texts.value("en", ""), text, language))
                        ADD_FAILURE() << entry.path().filename() << " has another word for \"" << term
                                      << "\": " << text;
                }
    }
}

} // namespace
} // namespace hearthcell::workbook
