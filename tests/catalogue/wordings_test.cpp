// Reads every text of the catalogue that has four languages and grumbles where one is missing, was forgotten to be
// translated, or lost what is typed as it stands.

#include "manifest/generator/output.hpp"
#include "support/lint.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <vector>

namespace hearthcell::tests {
namespace {

struct Text {
    Wording wording;
    std::string whose;
    bool is_sentence = false; ///< ends with a stop; all others are glued to something
};

std::vector<Text> const& texts() {
    static std::vector<Text> const all = [] {
        std::vector<Text> found;
        for (Group const& group : catalogue())
            found.push_back({group.title, "A group"});
        for_every_function([&](Function const& function) {
            std::string const name(function.name);
            found.push_back({function.summary, name});
            found.push_back({function.result.name, name + ", result"});
            for (Part const& part : function.result.parts)
                found.push_back({part.name, name + ", result"});
            if (!function.caution.empty())
                found.push_back({function.caution, name + ", caution", true});
        });
        for_every_argument([&](Function const&, Argument const& argument, std::string const& whose) {
            found.push_back({argument.help, whose});
            if (!argument.absent_means.empty())
                found.push_back({argument.absent_means, whose});
        });
        return found;
    }();
    return all;
}

void for_every_text(std::function<void(Text const&, std::string_view text, Language)> const& act) {
    for (Text const& text : texts())
        for (Language const language : languages)
            act(text, text.wording.in(language), language);
}

std::size_t letters(std::string_view text) {
    return std::size_t(std::ranges::count_if(text, [](char c) { return (c & 0xC0) != 0x80; }));
}

constexpr std::string_view no_break_space = "\u00a0";

TEST(Wordings, AreTidyInEveryLanguageAndBeginAsTheEnglishOne) {
    for_every_text([](Text const& text, std::string_view words, Language) {
        if (text.is_sentence)
            EXPECT_TRUE(words.ends_with(".")) << text.whose << ": " << words;
        else
            expect_tidy(words, text.whose);
        ASSERT_FALSE(words.empty()) << text.whose << ": " << text.wording.english;
        bool const is_accented_capital = words.size() > 1 && words[0] == '\xC3' && std::uint8_t(words[1]) < 0x9F;
        EXPECT_EQ(is_upper(words[0]) || is_accented_capital, is_upper(text.wording.english[0]))
            << text.whose << ": " << words;
    });
}

TEST(Wordings, DifferFromLanguageToLanguage) {
    // Signs, and words that two languages share.
    static std::set<std::string_view> const shared{
        "n", "p", "2500 g", "CO", "CO2", "argument", "contribution", "variant", "minutes"};
    std::set<std::string_view> met;
    for (Text const& text : texts())
        for (Language const one : languages)
            for (Language const other : languages)
                if (one < other && text.wording.in(one) == text.wording.in(other)) {
                    met.insert(text.wording.english);
                    EXPECT_TRUE(shared.contains(text.wording.english))
                        << text.whose << ": \"" << text.wording.in(one) << "\" in " << tag_of(one) << " and "
                        << tag_of(other);
                }
    EXPECT_EQ(met, shared) << "an exception that is none";
}

/// The texts between quotation marks, the names of functions and the numbers, in alphabetical order: what must be the
/// same in every language, but for the decimal comma of some.
std::vector<std::string> typed_words(std::string_view text, bool with_comma) {
    std::vector<std::string> found;
    for (std::size_t at = text.find('"'); at != std::string_view::npos; at = text.find('"', at + 1)) {
        std::size_t const end = text.find('"', at + 1);
        found.emplace_back(text.substr(at, end - at));
        at = end;
    }
    for (std::size_t at = text.find("STOVE."); at != std::string_view::npos; at = text.find("STOVE.", at + 1)) {
        auto const name = text.substr(at);
        found.emplace_back(name.begin(),
                           std::ranges::find_if_not(name, [](char c) { return is_upper(c) || c == '.'; }));
    }
    auto const is_digit_at = [&](std::size_t at) { return at < text.size() && is_digit(text[at]); };
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (!is_digit_at(at))
            continue;
        std::size_t end = at;
        while (is_digit_at(end) || (is_digit_at(end + 1) && std::string_view(".,:-").find(text[end]) != text.npos))
            ++end;
        std::string number(text.substr(at, end - at));
        bool const is_part_of_a_name = (at > 0 && is_upper(text[at - 1])) || std::ranges::count(number, '.') > 1;
        if (with_comma && !is_part_of_a_name)
            std::ranges::replace(number, '.', ',');
        found.push_back(number);
        at = end;
    }
    for (std::string_view const unit : {"°C", "%", " K ", "g/MJ", "QNH", "WBT"})
        for (std::size_t at = text.find(unit); at != std::string_view::npos; at = text.find(unit, at + 1))
            found.emplace_back(unit);
    std::ranges::sort(found);
    return found;
}

bool has_decimal_comma(Language language) {
    return language == Language::french || language == Language::spanish;
}

TEST(Wordings, KeepWhatIsTypedAsItStandsAndEveryNumberAndUnit) {
    for_every_text([](Text const& text, std::string_view words, Language language) {
        EXPECT_EQ(typed_words(words, false), typed_words(text.wording.english, has_decimal_comma(language)))
            << text.whose << ": " << words;
        expect_functions_named_in(words, text.whose);
    });
}

/// What stands before each of these signs where it ends a part of a sentence: not in 31:40.
std::vector<std::string_view> before_each(std::string_view signs, std::string_view text) {
    std::vector<std::string_view> found;
    for (std::size_t at = 0; at < text.size(); ++at)
        if (signs.find(text[at]) != signs.npos && (at + 1 == text.size() || text[at + 1] == ' '))
            found.push_back(text.substr(0, at));
    return found;
}

TEST(Wordings, HaveTheSpacesAndApostrophesOfTheirLanguage) {
    for_every_text([](Text const& text, std::string_view words, Language language) {
        bool const is_french = language == Language::french;
        for (std::string_view const before : before_each(";:?!", words)) {
            EXPECT_EQ(before.ends_with(no_break_space), is_french) << text.whose << ": " << words;
            EXPECT_FALSE(before.ends_with(' ')) << text.whose << ": " << words;
        }
        for (std::string_view const before : before_each("%", words))
            EXPECT_EQ(before.ends_with(no_break_space), has_decimal_comma(language)) << text.whose << ": " << words;
        bool const is_typed_plainly = words.find('\'') != words.npos;
        EXPECT_FALSE(is_typed_plainly && language != Language::english) << text.whose << ": " << words;
    });
}

// What was seen to fit into the wizard's window, in letters: three lines of a summary and two of a help. A list of
// names is cut off there, but whole in the tooltip of a cell.
constexpr std::size_t room_for_summary = 200, room_for_help = 125, room_for_names = 390;

TEST(Wordings, AreShortEnoughForTheWizard) {
    for (Language const language : languages) {
        for_every_function([&](Function const& function) {
            std::string const shown = generator::full_summary(function, language);
            EXPECT_LE(letters(shown), room_for_summary) << shown;
        });
        for_every_argument([&](Function const& function, Argument const& argument, std::string const& whose) {
            std::string const shown = generator::full_help(function, argument, language);
            EXPECT_LE(letters(argument.help.in(language)), room_for_help) << whose << ": " << shown;
            EXPECT_LE(letters(shown), argument.lists_names ? room_for_names : room_for_help) << whose << ": " << shown;
        });
    }
}

std::string help(std::string_view name, std::size_t place, Language language) {
    Function const& function = *find_function(name);
    return generator::full_help(function, function.arguments[place], language);
}

TEST(Wordings, AreCompletedInTheirLanguageByRangeUnitAndDefault) {
    EXPECT_TRUE(help("NETFROMGROSS", 1, Language::english).ends_with(". Range 0 to 0.2. Left out: 0.062."));
    EXPECT_TRUE(help("NETFROMGROSS", 1, Language::french).ends_with(". De 0 à 0,2. Si omis\u00a0: 0,062."));
    EXPECT_TRUE(help("NETFROMGROSS", 1, Language::spanish).ends_with(". De 0 a 0,2. Si falta: 0,062."));
    EXPECT_TRUE(help("NETFROMGROSS", 1, Language::swahili).ends_with(". Kuanzia 0 hadi 0.2. Ikiachwa: 0.062."));

    EXPECT_TRUE(help("POTHEAT", 1, Language::english).find(". Range 0.1 to 2.5, or one of \"aluminium\", ") !=
                std::string::npos);
    EXPECT_TRUE(help("POTHEAT", 1, Language::french)
                    .find(". De 0,1 à 2,5, ou au choix\u00a0: \"aluminium\", \"acier inoxydable\", ") !=
                std::string::npos);
    EXPECT_TRUE(help("CALORIFICVALUE", 0, Language::french).ends_with(", … (voir le guide des fonctions)."));
    EXPECT_TRUE(help("WOODENERGY", 2, Language::english).ends_with(", see STOVE.CALORIFICVALUE. Range 5 to 50."));

    EXPECT_TRUE(help("MOISTURE", 2, Language::spanish).ends_with(". Opciones: \"wet\" (si falta), \"dry\"."));
    EXPECT_TRUE(help("BOILINGPOINTAT", 1, Language::swahili)
                    .ends_with(" hadi 9000. Ikiachwa: usomaji unachukuliwa kama ulivyo."));
}

TEST(Wordings, SayWhichPartOneGetsAndWhichWordGivesAll) {
    EXPECT_TRUE(help("SERIES", 2, Language::english).ends_with(" by its name. \"all\": all of them. Left out: mean."));
    EXPECT_TRUE(help("TIERPROBABILITY", 3, Language::french)
                    .ends_with(" par son nom. \"tout\"\u00a0: tous. Si omis\u00a0: tout."));
}

TEST(Wordings, OpenWithTheUnitOfAnArgumentAndEndWithThatOfTheResult) {
    EXPECT_TRUE(help("WOODENERGY", 2, Language::french).starts_with("MJ/kg – Pouvoir "));
    EXPECT_TRUE(help("WOODENERGY", 1, Language::english).starts_with("Share of water "));
    EXPECT_TRUE(generator::full_summary(*find_function("BOILINGPOINT"), Language::english).ends_with(", °C."));
    EXPECT_TRUE(generator::full_summary(*find_function("EFFICIENCY"), Language::english).ends_with(" fuel energy."));
}

TEST(Wordings, PutTheNameOfWhatMayBeLeftOutInBrackets) {
    EXPECT_EQ(generator::shown_name(find_function("BOILINGPOINT")->arguments[0], Language::english), "altitude");
    EXPECT_EQ(generator::shown_name(find_function("BOILINGPOINT")->arguments[1], Language::french),
              "[pression au niveau de la mer]");
    EXPECT_EQ(generator::signature(*find_function("WATERDENSITY"), Language::swahili), "STOVE.WATERDENSITY(halijoto)");
}

TEST(Wordings, NameThePartsOfABlockInTheirLanguage) {
    Function const& forecast = *find_function("BOILFORECAST");
    EXPECT_TRUE(generator::full_summary(forecast, Language::french)
                    .ends_with(". Résultats\u00a0: minutes depuis la première mesure (min), incertitude-type (min)."));
    EXPECT_TRUE(generator::full_summary(*find_function("LOGCHECK"), Language::swahili)
                    .ends_with(". Orodha: jambo, safu mlalo."));
}

TEST(Wordings, WriteANumberWithTheSeparatorOfTheLanguage) {
    EXPECT_EQ(generator::amount(1013.25, Measure::pressure, Language::english), "1013.25 hPa");
    EXPECT_EQ(generator::amount(1013.25, Measure::pressure, Language::french), "1013,25 hPa");
    EXPECT_EQ(generator::amount(-0.5, Measure::ratio, Language::spanish), "-0,5");
    EXPECT_EQ(generator::amount(0.5, Measure::minutes, Language::swahili), "0.5 min");
    EXPECT_EQ(generator::amount(10000000, Measure::energy, Language::french), "10000000 kJ");
}

TEST(TheLanguages, AreChosenByTheLocaleWithEnglishForOthers) {
    EXPECT_EQ(language_of("fr-BE"), Language::french);
    EXPECT_EQ(language_of("es"), Language::spanish);
    EXPECT_EQ(language_of("sw-TZ"), Language::swahili);
    EXPECT_EQ(language_of("en-GB"), Language::english);
    EXPECT_EQ(language_of("de"), Language::english);
    EXPECT_EQ(language_of("fro"), Language::english); // Old French has a code of three letters
    EXPECT_EQ(language_of(""), Language::english);
}

} // namespace
} // namespace hearthcell::tests
