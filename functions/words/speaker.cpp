#include "functions/words/speaker.hpp"

#include "functions/number/in_words.hpp"
#include "functions/words/sentences.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell {

std::string Speaker::operator()(Sentence const& sentence, std::initializer_list<Filling> fillings) const {
    std::string_view const text = sentence.in(language_);
    std::string result;
    std::size_t at = 0;
    for (std::string_view place = next_place(text, at); !place.empty(); place = next_place(text, at)) {
        std::size_t const start = std::size_t(place.data() - text.data());
        result += text.substr(at, start - at);
        at = start + place.size();
        auto const filling = std::ranges::find(fillings, place.substr(1, place.size() - 2), &Filling::place);
        result += filling != fillings.end() ? std::string_view(filling->text) : place;
    }
    result += text.substr(at);
    return result;
}

std::string Speaker::number(double number) const {
    if (std::isnan(number))
        return (*this)(sentences::not_a_number);
    std::string text = in_words(number);
    if (language_ == Language::french || language_ == Language::spanish)
        std::ranges::replace(text, '.', ',');
    return text;
}

std::string Speaker::tenths(double value) const {
    return number(std::round(value * 10) / 10);
}
std::string Speaker::hundredths(double value) const {
    return number(std::round(value * 100) / 100);
}

} // namespace hearthcell
