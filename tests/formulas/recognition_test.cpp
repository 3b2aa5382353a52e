// Which published form a hand-written formula is. A sheet for all: what its cells hold stands below.

#include "extension/formulas/recognition/forms.hpp"
#include "extension/formulas/recognition/recognised.hpp"
#include "functions/catalogue/arguments/performance.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>
#include <sstream>

namespace hearthcell::formulas {
namespace {

std::vector<std::string> const sheets{"Run", "Constants"};

/// Cells by their names; what begins with = is a formula.
using Cells = std::map<std::string, std::string>;

/// A run in a column: altitude, masses in kg, temperatures, times.
Cells const run{{"B1", "1240"},
                {"B2", "0.8"},
                {"B3", "5.8"},
                {"B4", "20"},
                {"B5", "94.983"},
                {"B6", "5.55"},
                {"B7", "=B3-B2"},
                {"B8", "=B5-B4"},
                {"B9", "=B3-B6"},
                {"C1", "4.186"},
                {"C2", "2260"},
                {"C3", "1.12"},
                {"C4", "0.6"},
                {"C5", "0.12"},
                {"C6", "18500"},
                {"C7", "0.05"},
                {"C8", "29500"},
                {"C9", "28"},
                {"D1", "=C1*B7*B8"},
                {"D2", "=2260*B9"},
                {"D3", "=D1+D2"},
                {"D4", "=C4*(1-1.12*C5)-1.5*C7"},
                {"D5", "=C4*(1-C5*1.12)*C6"},
                {"D6", "4.19"},
                {"D7", "2257"},
                {"D8", "=D4/B6"},
                {"E1", "=C4-C7"},
                {"E2", "=E1*(1-1.12*C5)-1.5*C8"},
                {"Constants.B1", "2260"}};

std::string written(std::optional<PublishedForm> const& form) {
    if (!form)
        return "nothing";
    std::string text = (form->is_part ? "part: " : "") + form->function;
    for (std::string_view const method : form->methods)
        text += ", " + std::string(method);
    return text;
}

std::optional<PublishedForm> form_of(std::string_view formula, Cells const& cells = run) {
    Names const names({{"cp", "", "4.186", {}}, {"latent", "", "$Constants.$B$1", {}}});
    Reads const reads(sheets, names, {});
    auto const content = [&](Place const& place) -> std::string_view {
        auto const found = cells.find((place.sheet == 1 ? "Constants." : "") + cell_name(place.column, place.row));
        return found == cells.end() ? std::string_view() : std::string_view(found->second);
    };
    Surroundings const surroundings{
        reads,
        [&](Place const& place) -> std::optional<double> {
            std::string const text(content(place));
            return text.empty() || text[0] == '=' ? std::nullopt : std::optional(std::stod(text));
        },
        [&](Place const& place) { return content(place).starts_with('=') ? content(place) : std::string_view(); }};
    return recognised(formula, {0, 20, 5}, surroundings);
}

std::string found(std::string_view formula, Cells const& cells = run) {
    return written(form_of(formula, cells));
}

void expect_all(char const* wanted, std::initializer_list<char const*> formulas) {
    for (char const* const formula : formulas)
        EXPECT_EQ(found(formula), wanted) << formula;
}

TEST(Recognition, OfBoilingPointsByALinearRule) {
    expect_all("BOILINGPOINT, WBT 4.2.3, WBT 3",
               {"=100-B1/300", "=-B1/300+100", "=100-(B1/300)", "=(30000-B1)/300", "=ROUND(100-B1/300;1)",
                "=IF(B1=\"\";\"\";100-B1/300)", "=100-[.$B$1]/300", "of:=100-[.B1]/300", "=100-B1*0.3048/300",
                "=IFERROR(100-B1/300;\"\")", "=100-1/300*B1"});
    expect_all("BOILINGPOINT", {"=100-0.0033*B1", "=100-B1*0.0034", "=100-B1/984", "=212-B1/550", "=100.0-B1/290"});
    expect_all("nothing", {"=100-B1", "=100-B1/1000", "=100+B1/300", "=100-B1/30", "=B1/300", "=1-B1/300",
                           "=100-B1/300*B2", "=99-B1/300", "=100-(B1-B2)/300*C4", "=100-B1/300-B2", "=100-0.001*B1"});
}

TEST(Recognition, OfTheHeatThatWaterTookUp) {
    expect_all("WATERHEAT, WBT 4.2.3, WBT 3", {"=4.186*B7*(B5-B4)",
                                               "=B7*4.186*(B5-B4)",
                                               "=(B5-B4)*B7*4.186",
                                               "=4.186*(B3-B2)*(B5-B4)",
                                               "=(B3-B2)*(B5-B4)*4.186",
                                               "=4186*B7*(B5-B4)",
                                               "=4186*B7*(B5-B4)/1000",
                                               "=B7/1000*4.186*(B5-B4)",
                                               "=4.186*B7*B5-4.186*B7*B4",
                                               "=4.186*B7*B8",
                                               "=C1*B7*B8",
                                               "=$C$1*$B$7*B8",
                                               "=B8*B7*C1",
                                               "=cp*B7*(B5-B4)",
                                               "=PRODUCT(4.186;B7;B5-B4)",
                                               "=SUM(B3;-B2)*4.186*(B5-B4)",
                                               "=4.186*B7*(95-B4)",
                                               "=5*4.186*(B5-B4)",
                                               "=4.186*(B5-B4)*2.5",
                                               "=-(4.186*B7)*(B4-B5)"});
    expect_all("WATERHEAT, ISO 19867-1", {"=4.18*B7*(B5-B4)", "=4180*B7*(B5-B4)"});
    expect_all("WATERHEAT", {"=4.2*B7*(B5-B4)", "=4.1868*B7*B8", "=4200*B7*(B5-B4)"});
    expect_all("nothing", {"=4.3*B7*(B5-B4)", "=B7*(B5-B4)", "=4.186*C4*C5", "=4.186*(B5-B4)", "=4.186*B7*(B5+B4)",
                           "=4.186*B7*B4*(B5-B4)", "=4.186*B7", "=4.186*B7*(B5-B4)+3", "=4.186*B7*(B5-B4)/C9",
                           "=4.186*B7*(B5-2*B4)", "=41.86*B7*(B5-B4)", "=4.186+B7*(B5-B4)", "=D6*(B5-B4)",
                           "=B7/4.186*(B5-B4)", "=4.186*SUM(B3:B6)*B1", "=STOVE.WATERHEAT(B7;B4;B5)*4.186"});
}

TEST(Recognition, OfTheHeatOfEvaporation) {
    expect_all("EVAPORATIONHEAT, WBT 4.2.3, WBT 3",
               {"=2260*B9", "=2260*(B3-B6)", "=(B3-B6)*2260", "=2.26*(B3-B6)", "=2260*B3-2260*B6", "=$C$2*(B3-B6)"});
    expect_all("EVAPORATIONHEAT", {"=2257*B9", "=2250*(B3-B6)"});
    expect_all("nothing", {"=2250*C4", "=2.26*C4", "=540*(B3-B6)", "=2300*(B3-B6)", "=2260*B9*C4", "=2260/B9",
                           "=2260+B9", "=B7*D7", "=D7*(B5-B4)"});
}

TEST(Recognition, OfUsefulHeatWhichIsMoreThanItsParts) {
    expect_all("USEFULHEAT, WBT 4.2.3, WBT 3",
               {"=4.186*B7*(B5-B4)+2260*B9", "=2260*(B3-B6)+4.186*(B3-B2)*(B5-B4)", "=D1+D2", "=D1+2260*(B3-B6)",
                "=SUM(D1;D2)", "=C1*B7*B8+C2*B9", "=(4186*B7*(B5-B4)+2260000*B9)/1000", "=(B7*B8*4.186)+(B9*2260)",
                "=4.186*(B3-B2)*(100-B4)+2260*(B3-B6)", "=C1*(B3-B2)*(B5-B4)+latent*(B3-B6)"});
    expect_all("USEFULHEAT", {"=B7*(B5-B4)+540*B9", "=B7*B8+539*(B3-B6)", "=4.2*B7*B8+2257*B9", "=4.18*B7*B8+2260*B9"});
    EXPECT_EQ(form_of("=4.186*B7*(B5-B4)+2260*B9")->form, "4.186 m ΔT + 2260 e");
    EXPECT_EQ(form_of("=B7*(B5-B4)+540*B9")->form, "m ΔT + 540 e");
    expect_all("part: USEFULHEAT, WBT 4.2.3, WBT 3",
               {"=(4.186*B7*(B5-B4)+2260*B9)/(C4*C6)", "=100*(4.186*B7*(B5-B4)+2260*B9)/(C4*18500)"});
    expect_all("nothing", {"=4.186*B7*(B5-B4)-2260*B9*B2", "=4.186*B7*(B5-B4)+226*B9", "=B7*(B5-B4)+500*B9",
                           "=4.186*B7*(B5-B4)+2260", "=4.186*B7*(B5-B4)*2260*B9", "=C4*B7*B8+C5*B9"});
}

TEST(Recognition, OfSeveralPots) {
    EXPECT_EQ(found("=4.186*B7*(B5-B4)+4.186*C4*(C9-C7)+2260*B9"), "USEFULHEAT, WBT 4.2.3, WBT 3");
    EXPECT_EQ(found("=4.186*(B7*(B5-B4)+C4*(C9-C7))+2260*B9"), "USEFULHEAT, WBT 4.2.3, WBT 3");
}

TEST(Recognition, OfWoodAndItsMoisture) {
    expect_all("EQUIVALENTDRYFUEL, WBT 3",
               {"=C4*(1-1.12*C5)", "=C4*(1-1.12*C5)-1.5*C7", "=C4-1.12*C4*C5-C7*1.5", "=(B3-B2)*(1-C5*1.12)-1.5*C7",
                "=C4*(1-1.12*C5/100)-1.5*C7", "=C4*(1-0.0112*C5)", "=C4*(1-C3*C5)-1.5*C7", "=C4*1000*(1-1.12*C5)"});
    expect_all("WOODENERGY, WBT 3",
               {"=C4*(1-1.12*C5)*C6", "=C6*C4*(1-C5*1.12)", "=C4*(1-1.12*C5)*18500", "=(B3-B2)*(1-1.12*C5)*18.5"});
    expect_all("WOODENERGY, properties, ISO 19867-1", {"=C4*(C6*(1-C5)-2443*C5)", "=C4*(C6*(1-C5/100)-24.43*C5)",
                                                       "=(B3-B2)*(C6*(1-C5)-2.443*C5)", "=C4*C6*(1-C5)-C4*C5*2443"});
    expect_all("NETASFIRED, properties, ISO 19867-1",
               {"=C6*(1-C5)-2443*C5", "=C6*(1-C5)-2.443*C5", "=C6*(1-C5/100)-0.02443*C5", "=18.5*(1-C5)-2.443*C5"});
    expect_all("NETASFIRED", {"=C6*(1-C5)-2442*C5", "=C6*(1-C5)-C5*2.44"});
    expect_all("WOODENERGY, WBT 4.2.3", {"=C4*(C6*(1-C5)-C5*(4.186*(B5-B4)+2257))"});
    expect_all("EQUIVALENTDRYFUEL, WBT 4.2.3", {"=(C4*(C6*(1-C5)-C5*(4.186*(B5-B4)+2257))-C7*C8)/C6",
                                                "=(C4*(C6*(1-C5)-C5*(4.186*(B5-B4)+2257))-C7*29500)/C6"});
    expect_all("part: EQUIVALENTDRYFUEL, WBT 3", {"=(C4*(1-1.12*C5)-1.5*C7)*C6", "=(C4*(1-1.12*C5)-1.5*C7)/C9"});
    expect_all("nothing", {"=C4*(1-C5)", "=1.5*C7", "=C4*(1-1.2*C5)", "=C4*(1+1.12*C5)", "=C4-1.12*C5", "=1.12*C5",
                           "=C4*(1-0.112*C5)", "=C4*C6*(1-C5)", "=C6*(1-C5)-2500*C5", "=C4*(1-C5)-1.5*C7", "=C4-1.12"});
}

TEST(Recognition, OfResults) {
    expect_all("EFFICIENCY, WBT 3", {"=(4.186*B7*(B5-B4)+2260*B9)/(C4*(1-1.12*C5)*C6)", "=D3/D5", "=100*D3/D5",
                                     "=D3/(D4*C6)", "=D3/D5*100", "=(D1+D2)/(D4*18500)"});
    EXPECT_EQ(found("=(4.186*(B3-B2)*(B5-B4)+2260*(B3-B6))/(((C4-C7)*(1-1.12*C5)-1.5*C8)*C6)"),
              "BENCHEFFICIENCY, WBT 3");
    EXPECT_EQ(found("=(4.186*B7*B8+2260*B9)/(E2*C6)"), "BENCHEFFICIENCY, WBT 3") << "weighings in helper columns";
    EXPECT_EQ(found("=(4.186*B7*B8+2260*B9)/(C4*(C6*(1-C5)-C5*(4.186*(B5-B4)+2257)))"), "EFFICIENCY, WBT 4.2.3");
    EXPECT_EQ(found("=(4.186*B7*B8+2260*B9)/(C4*(C6*(1-C5)-2443*C5))"), "EFFICIENCY") << "a mixture of methods";
    expect_all("FIREPOWER, WBT 3", {"=C4*(1-1.12*C5)*C6/(60*C9)", "=D4*C6/C9/60", "=D5/(C9*60)"});
    expect_all("SPECIFICFUEL, WBT 3", {"=D4/B6*75/(B5-B4)", "=D8*75/B8", "=D4*75/(B6*(B5-B4))"});
    expect_all("NORMALBOILTIME, WBT 4.2.3, WBT 3",
               {"=C9*75/(B5-B4)", "=75*C9/B8", "=C9/(B5-B4)*75", "=(C9-C7)*75/(B5-B4)"});
    expect_all("nothing", {"=D3/C9*0+C4/D6", "=75/(B5-B4)", "=C9*70/(B5-B4)", "=D1*C9*75/(B5-B4)", "=C9*75*(B5-B4)",
                           "=B6/C9*75/B7"});
    expect_all("COOKINGPOWER, WBT 4.2.3, WBT 3", {"=(4.186*B7*(B5-B4)+2260*B9)/(60*C9)", "=D3/C9/60"});
}

TEST(Recognition, OfTheAirAndOfCalorificValues) {
    expect_all("AIRPRESSURE",
               {"=1013.25*(1-0.0065*B1/288.15)^5.255", "=101325*(1-2.25577E-5*B1)^5.25588",
                "=101.325*POWER(1-0.0065*B1/288.15;5.2559)", "=1013.25*((288.15-0.0065*B1)/288.15)^5.256"});
    expect_all("NETFROMGROSS", {"=C6-21.22*C5", "=C6-212.2*C5-0.8*(C4+C7)"});
    expect_all("nothing", {"=1013.25*(1-0.0065*B1/288.15)^4.255", "=1013.25-B1/8.3", "=C6-22*C5"});
}

TEST(Recognition, OfNothingThatIsAnythingElse) {
    expect_all("nothing", {"",
                           "=",
                           "=B1",
                           "=B1+B2",
                           "=SUM(B1:B9)",
                           "=AVERAGE(B1:B3)*4.186",
                           "=\"4.186\"",
                           "=B1&B2",
                           "=4.186*5",
                           "=B1/0",
                           "=IF(B1>2;B2;B3)",
                           "=1/(B1-B1)",
                           "=B1^0.5",
                           "=-B1",
                           "=((((",
                           "=Nowhere.A1*4.186",
                           "=NOW()*75/(B5-B4)",
                           "=STOVE.BOILINGPOINT(B1)",
                           "=A1:A3*4.186",
                           "=#REF!*4.186*(B5-B4)",
                           "=D3",
                           "=D3/1000",
                           "=ROUND(D5;1)",
                           "=D3/C4",
                           "=D4/C9",
                           "=D4*B1"});
}

/// Types a formula as somebody might: in any order, with brackets that need not be, with constants in cells of their
/// own.
class Typist {
public:
    explicit Typist(unsigned seed) : chance_(seed) {}

    std::string sum(std::vector<std::string> terms) { // each but the first may begin with -
        std::shuffle(terms.begin(), terms.end(), chance_);
        std::string text;
        for (std::string const& term : terms)
            text += term.starts_with('-') || text.empty() ? term : "+" + term;
        return blanks(text);
    }
    std::string product(std::vector<std::string> factors) {
        std::shuffle(factors.begin(), factors.end(), chance_);
        std::string text;
        for (std::string const& factor : factors)
            text = text.empty() ? factor : coin() ? "(" + text + ")*" + factor : text + "*" + factor;
        return blanks(text);
    }
    std::string difference(std::string const& a, std::string const& b) {
        return coin() ? "(" + a + "-" + b + ")" : "(-" + b + "+" + a + ")";
    }
    std::string either(std::string const& one, std::string const& other) { return coin() ? one : other; }
    std::string whole(std::string const& text) {
        switch (chance_() % 4) {
        case 0:
            return "=" + text;
        case 1:
            return "=(" + text + ")";
        case 2:
            return "=ROUND(" + text + ";2)";
        default:
            return "=IF(B3=\"\";\"\";" + text + ")";
        }
    }

private:
    bool coin() { return chance_() % 2 == 0; }
    std::string blanks(std::string const& text) {
        std::string wide;
        for (char const c : text)
            wide += c == '*' && coin() ? std::string(" * ") : std::string(1, c);
        return wide;
    }
    std::mt19937 chance_;
};

TEST(Recognition, HoldsHoweverItIsTypedAndNotWithAnotherConstant) {
    std::mt19937 chance(7);
    for (unsigned seed = 0; seed < 300; ++seed) {
        Typist typist(seed);
        bool const is_off = seed % 3 == 0; // another constant: 3 to 30 % higher
        auto const constant = [&](double value, std::string const& cell) {
            double const off = is_off ? value * (1.03 + 0.27 * double(chance() % 1000) / 1000) : value;
            std::ostringstream text;
            text.precision(6);
            text << off;
            return is_off ? text.str() : typist.either(text.str(), cell);
        };
        std::string const mass = typist.either("B7", typist.difference("B3", "B2"));
        std::string const rise = typist.either("B8", typist.difference("B5", "B4"));
        std::string const lost = typist.either("B9", typist.difference("B3", "B6"));
        std::string const water = typist.product({constant(4.186, "$C$1"), mass, rise});
        std::string const heat = typist.sum({water, typist.product({typist.either("2260", "$C$2"), lost})});
        std::string const share = typist.either("(1-" + typist.product({constant(1.12, "$C$3"), "C5"}) + ")",
                                                "(-" + typist.product({constant(1.12, "$C$3"), "C5"}) + "+1)");
        std::string const dry = typist.sum({typist.product({"C4", share}), "-" + typist.product({"1.5", "C7"})});
        for (auto const& [formula, form] : std::initializer_list<std::pair<std::string, std::string>>{
                 {water, "WATERHEAT, WBT 4.2.3, WBT 3"},
                 {heat, "USEFULHEAT, WBT 4.2.3, WBT 3"},
                 {dry, "EQUIVALENTDRYFUEL, WBT 3"},
                 {"(" + heat + ")/((" + dry + ")*C6)", "EFFICIENCY, WBT 3"},
                 {typist.product({"C4", share, "C6"}), "WOODENERGY, WBT 3"}}) {
            std::string const typed = typist.whole(formula);
            EXPECT_EQ(found(typed), is_off ? "nothing" : form) << typed;
        }
    }
}

TEST(Recognition, ComesToAnEndWhateverStandsInTheCells) {
    EXPECT_EQ(found("=A1", {{"A1", "=A1"}}), "nothing");
    EXPECT_EQ(found("=A1*A1+A2", {{"A1", "=(A2+A1+1)^4"}, {"A2", "=(A1+A2+2)^4"}}), "nothing");
    std::string deep(5000, '('), wide = "=B1", product = "=B1", differences = "=B1";
    for (int at = 1; at < 32; ++at)
        differences += "+4.186*5*(C" + std::to_string(100 + at) + "-D" + std::to_string(200 + at % 31) + ")";
    for (int at = 2; at < 900; ++at) {
        wide += "+B" + std::to_string(at) + "*A" + std::to_string(at);
        product += "*(B" + std::to_string(at) + "+A1)";
    }
    for (std::string const& formula : {"=" + deep, wide, product, differences, "=" + std::string(5000, '-') + "B1"})
        EXPECT_EQ(found(formula), "nothing");
}

TEST(Recognition, NamesFunctionsAndMethodsOfTheCatalogue) {
    for (std::string_view const known : {properties, iso_19867, wbt_4, wbt_3})
        EXPECT_TRUE(std::ranges::any_of(arguments::method.choices, [&](auto const& one) { return one == known; }))
            << known;
    for (char const* const formula :
         {"=100-B1/300", "=4.186*B7*B8", "=2260*B9", "=D1+D2", "=C4*(1-1.12*C5)", "=C4*(1-1.12*C5)*C6", "=D3/D5",
          "=D3/C9/60", "=D5/C9/60", "=D8*75/B8", "=C9*75/B8", "=C6*(1-C5)-2443*C5", "=C6-21.22*C5"}) {
        ASSERT_TRUE(form_of(formula)) << formula;
        EXPECT_NE(find_function(form_of(formula)->function), nullptr) << formula;
    }
}

} // namespace
} // namespace hearthcell::formulas
