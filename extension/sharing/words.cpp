#include "extension/sharing/words.hpp"

namespace hearthcell::sharing {
namespace {

bool is_quote(sal_Unicode c) {
    return c == '"' || c == '\'';
}

bool is_part_of_a_word(sal_Unicode c) {
    bool const letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    return letter || (c >= '0' && c <= '9') || c == '_' || c == '.' || c > 127;
}

/// The place after a text in quotes. A doubled quote inside reads as two texts side by side, which is as good here.
sal_Int32 after_quotes(rtl::OUString const& formula, sal_Int32 place) {
    sal_Int32 const end = formula.indexOf(formula[place], place + 1);
    return end < 0 ? formula.getLength() : end + 1;
}

bool is_followed_by_arguments(rtl::OUString const& formula, sal_Int32 place) {
    while (place < formula.getLength() && formula[place] == ' ')
        ++place;
    return place < formula.getLength() && formula[place] == '(';
}

} // namespace

std::vector<Word> words_of(rtl::OUString const& formula) {
    std::vector<Word> words;
    sal_Int32 place = 0;
    while (place < formula.getLength()) {
        if (is_quote(formula[place])) {
            place = after_quotes(formula, place);
            continue;
        }
        sal_Int32 const start = place;
        while (place < formula.getLength() && is_part_of_a_word(formula[place]))
            ++place;
        if (place == start)
            ++place;
        else
            words.push_back({start, place, formula.copy(start, place - start).toAsciiLowerCase(),
                             is_followed_by_arguments(formula, place)});
    }
    return words;
}

sal_Int32 end_of_call(rtl::OUString const& formula, Word const& called) {
    sal_Int32 open = 0;
    sal_Int32 place = called.end;
    while (place < formula.getLength()) {
        sal_Unicode const c = formula[place];
        if (is_quote(c)) {
            place = after_quotes(formula, place);
            continue;
        }
        ++place;
        if (c == '(')
            ++open;
        if (c == ')' && --open == 0)
            break;
    }
    return place;
}

} // namespace hearthcell::sharing
