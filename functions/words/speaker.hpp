#pragma once
// Says sentences and numbers in one language.

#include "functions/words/sentence.hpp"

#include <initializer_list>
#include <string>

namespace hearthcell {

class Speaker {
public:
    /// What is put into a place of a sentence, which is named without its braces.
    struct Filling {
        std::string_view place;
        std::string text;
    };

    explicit constexpr Speaker(Language in) : language_(in) {}

    std::string operator()(Sentence const& sentence, std::initializer_list<Filling> fillings = {}) const;

    /// Six significant digits with the language's decimal sign.
    [[nodiscard]] std::string number(double number) const;
    /// To a tenth, as a temperature is shown; to a hundredth, as a time is.
    [[nodiscard]] std::string tenths(double number) const;
    [[nodiscard]] std::string hundredths(double number) const;

    [[nodiscard]] std::string text(Wording const& words) const { return std::string(words.in(language_)); }
    [[nodiscard]] constexpr Language language() const { return language_; }

private:
    Language language_;
};

} // namespace hearthcell
