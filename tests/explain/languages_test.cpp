// EXPLAIN and LOGCHECK speak English, unless a cell asks for another language; the office's own plays no part.

#include "functions/words/sentence.hpp"
#include "tests/support/asking.hpp"
#include "tests/support/calls.hpp"

namespace hearthcell::tests {
namespace {

std::string answer(std::vector<Value> const& arguments) {
    Outcome const outcome = call(*find_function("EXPLAIN"), arguments);
    std::string const* const text = std::get_if<std::string>(&outcome);
    return text != nullptr ? *text : "no text";
}
std::string asked(std::string name, std::vector<Value> arguments) {
    arguments.insert(arguments.begin(), std::move(name));
    return answer(arguments);
}

TEST(ExplainLanguages, TheNameAsksForOneBehindAColon) {
    EXPECT_EQ(asked("DRYMASS", {520.0, 14.0}), "moisture is 14, outside 0 to 0.75: 14 is 1400 %; type 14% or 0.14.");
    EXPECT_EQ(asked("DRYMASS:en", {520.0, 14.0}), asked("DRYMASS", {520.0, 14.0}));
    EXPECT_EQ(
        asked("DRYMASS:fr", {520.0, 14.0}),
        "«\u00a0humidité\u00a0» vaut 14, hors de l’intervalle de 0 à 0,75\u00a0: 14, c’est 1400\u00a0%\u00a0; tapez "
        "14% ou 0,14.");
    EXPECT_EQ(asked("DRYMASS:es", {520.0, 14.0}),
              "«humedad» vale 14, fuera del intervalo de 0 a 0,75: 14 es 1400\u00a0%; escriba 14% o 0,14.");
    EXPECT_EQ(asked("DRYMASS:sw", {520.0, 14.0}),
              "“unyevu” ni 14, nje ya 0 hadi 0.75: 14 ni 1400 %; andika 14% au 0.14.");
    EXPECT_EQ(asked(" stove.drymass : FR ", {520.0, 14.0}), asked("DRYMASS:fr", {520.0, 14.0}));
}

TEST(ExplainLanguages, AnUnknownOneIsRefusedInWords) {
    EXPECT_EQ(asked("DRYMASS:de", {520.0, 0.14}),
              "\"de\" is no language of EXPLAIN; there are \"en\", \"fr\", \"es\", \"sw\".");
    EXPECT_EQ(asked("DRYMASS:", {520.0, 0.14}),
              "\"\" is no language of EXPLAIN; there are \"en\", \"fr\", \"es\", \"sw\".");
    EXPECT_EQ(asked("pine:de", {}), "\"de\" is no language of EXPLAIN; there are \"en\", \"fr\", \"es\", \"sw\".");
    EXPECT_EQ(asked("old boots:de", {}), "no text"); // no name at all
    EXPECT_EQ(asked("old boots:fr", {}), "no text");
}

TEST(ExplainLanguages, TheCheckOfAWorkbookSpeaksThemToo) {
    std::string const spoken =
        "wrong\t«humedad» vale 14, fuera del intervalo de 0 a 0,75: 14 es 1400\u00a0%; escriba 14% "
        "o 0,14.\t447.2"; // a number for a program
    EXPECT_EQ(asked("DRYMASS:check:es", {520.0, 14.0}), spoken);
    EXPECT_EQ(asked("DRYMASS:es:check", {520.0, 14.0}), spoken);
}

TEST(ExplainLanguages, EveryKindOfAnswerIsSpoken) {
    EXPECT_EQ(asked("BOILINGPOINT:fr", {1240.0}), "Bien\u00a0: point d’ébullition local 95,8503 °C.");
    EXPECT_EQ(asked("BOILINGPOINT:sw", {1240.0}), "Sawa: kiwango cha kuchemka hapa 95.8503 °C.");
    EXPECT_EQ(asked("BOILINGPOINT:es", {845.6}),
              "Extraño: la altitud parece una presión del aire en hPa; ¿son metros?");
    EXPECT_EQ(asked("BENCHEFICIENCY:es", {1.0}), "\"BENCHEFICIENCY\" no es una función; ¿es BENCHEFFICIENCY?");
    std::string const named = asked("POTHEAT:fr", {500.0, std::string("alumini"), 20.0, 95.0});
    EXPECT_NE(named.find("\"aluminium\" vaut 0,897 kJ/(kg K), "), std::string::npos) << named;
    std::string const parts = asked("SERIES:fr", {column({0.231, 0.224, 0.229})});
    EXPECT_TRUE(parts.starts_with("Bien\u00a0: moyenne 0,228\u00a0; n 3\u00a0; écart-type 0,00360555\u00a0;")) << parts;
    EXPECT_NE(parts.find("Trois essais disent peu\u00a0: les limites sont à 4,3 erreurs-types"), std::string::npos);
}

TEST(ExplainLanguages, FunctionsAboutFunctionsPassTheLanguageOn) {
    std::string const rows =
        asked("EACHROW:es", {std::string("DRYMASS"), column({520.0, 430.0}), column({0.12, 14.0})});
    EXPECT_TRUE(rows.find("fila 2: «humedad» vale 14") != std::string::npos) << rows;
    Outcome const outcome =
        call(*find_function("EACHROW"), std::vector<Value>{std::string("EXPLAIN"), std::string("DRYMASS:fr"),
                                                           column({520.0, 430.0}), column({0.12, 14.0})});
    Block const& block = std::get<Block>(outcome);
    ASSERT_EQ(block.texts.size(), 2U);
    EXPECT_TRUE(block.texts[1].text.starts_with("«\u00a0humidité\u00a0» vaut 14")) << block.texts[1].text;
    std::string const inner =
        asked("UNCERTAINTY:fr", {std::string("DRYMASS"), column({520.0, 14.0}), column({2.0, 0.01})});
    EXPECT_TRUE(inner.starts_with("STOVE.DRYMASS ne donne aucun résultat avec ces valeurs\u00a0: «\u00a0humidité"))
        << inner;
}

TEST(SourceLanguages, AreAskedForLikeThoseOfEXPLAIN) {
    EXPECT_EQ(in_words(ask("SOURCE", {std::string("pine:fr")})),
              "\"Energies 15 (2022) 1442, moyenne d’une revue sur le bois de pin\"");
    EXPECT_EQ(in_words(ask("SOURCE", {std::string("WETBASIS:es")})),
              "\"Definición de la magnitud; ISO 18134-1, método de secado en horno (de memoria)\"");
    EXPECT_EQ(failure_in(ask("SOURCE", {std::string("charcoal:de")})).reason, Reason::unknown_name);
    EXPECT_EQ(failure_in(ask("SOURCE", {std::string("charcoal:check")})).reason, Reason::unknown_name);
}

TEST(Version, NamesTheBuildWhereItIsAskedTo) {
    std::string const alone = in_words(ask("VERSION", {})), whole = in_words(ask("VERSION", {1.0}));
    EXPECT_EQ(in_words(ask("VERSION", {0.0})), alone);
    EXPECT_EQ(whole.find(alone.substr(0, alone.size() - 1)), 0U) << whole; // within quotes
    EXPECT_GT(whole.size(), alone.size()) << whole;
}

TEST(LogCheckLanguages, AreAskedForByTheLastArgument) {
    auto const found = [](Value language) {
        return ask("LOGCHECK", {column({0.0, 2.0, 4.0, 5.0, 7.0}), column({20.0, 26.0, 32.0, 70.5, 41.0}), empty, empty,
                                empty, empty, std::move(language)});
    };
    auto const first = [&](Value language) { return block(found(std::move(language))).texts.at(0).text; };
    std::string const english =
        "A jump to 41 °C, 29.5 K below the reading 2 min before: no pot jumps like that. Was water "
        "added or the probe moved?";
    EXPECT_EQ(first(Value()), english);
    EXPECT_EQ(first(std::string("EN")), english);
    EXPECT_EQ(first(0.0), english); // an empty cell
    EXPECT_EQ(first(std::string("fr")),
              "Un saut à 41 °C, 29,5 K au-dessous de la mesure faite 2 min avant\u00a0: aucune marmite ne saute ainsi. "
              "A-t-on ajouté de l’eau ou déplacé la sonde\u00a0?");
    EXPECT_EQ(
        first(std::string("es")),
        "Un salto a 41 °C, 29,5 K por debajo de la lectura de 2 min antes: ninguna olla salta así. ¿Se añadió agua "
        "o se movió la sonda?");
    EXPECT_EQ(failure_in(found(std::string("de"))).reason, Reason::unknown_name);
}

TEST(Sentences, AreWholeOnlyWithTheSamePlacesInEveryLanguage) {
    EXPECT_TRUE(is_whole({"{a} and {b}", "{b} et {a}", "{a} y {b}", "{a} na {b}, {a}"}));
    EXPECT_FALSE(is_whole({"{a} and {b}", "{a}", "{a} y {b}", "{a} na {b}"})); // one is missing
    EXPECT_FALSE(is_whole({"{a}", "{a}", "{a} {b}", "{a}"}));                  // one too many
    EXPECT_FALSE(is_whole({"a", "a", "a", ""}));                               // a translation forgotten
}

} // namespace
} // namespace hearthcell::tests
