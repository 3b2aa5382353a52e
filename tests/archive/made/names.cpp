#include "names.hpp"

#include <array>
#include <string>

namespace hearthcell::tests::archive {
namespace {

std::array const folders{"2017",
                         "2019/spring",
                         "2019/autumn wood",
                         "2021/Größen und Maße",
                         "it's/nested/deeper/and/deeper still",
                         "2021/-dashes",
                         "comma, semicolon; colon: all"};

std::array const odd_stems{std::string("two words"),
                           std::string("-leading dash"),
                           std::string("--output"),
                           std::string("line\nbreak"),
                           std::string("say \"hot\""),
                           std::string("it's"),
                           std::string("naïve Grüße œuvre"),
                           std::string("湯沸かし 试验"),
                           std::string("50% of #1 & 2; a=b?c"),
                           std::string("%41%2F%00"),
                           std::string("back\\slash"),
                           std::string("$HOME `id` $(id)"),
                           std::string("*"),
                           std::string("tab\there"),
                           std::string(" blanks around "),
                           std::string(".hidden"),
                           std::string("=1+1"),
                           std::string("a.ods.old"),
                           std::string("[1] {2} <3>"),
                           std::string(230, 'n')};

/// Of ten workbooks four are .fods, three .ods, two .xlsx and one is .xls.
std::array const endings{".fods", ".ods", ".fods", ".xlsx", ".fods", ".ods", ".xls", ".fods", ".ods", ".xlsx"};

/// The places in a group of ten that get an odd name: one of each format.
bool is_odd(int place) {
    return place == 0 || place == 1 || place == 3 || place == 6;
}

} // namespace

std::filesystem::path path_of(int number) {
    auto const group = static_cast<std::size_t>(number / 10);
    int const place = number % 10;
    std::string const plain = "run " + std::to_string(number);
    std::string const stem = is_odd(place) && group < odd_stems.size() ? odd_stems[group] : plain;
    return std::filesystem::path(folders[group % folders.size()]) / (stem + endings[static_cast<std::size_t>(place)]);
}

} // namespace hearthcell::tests::archive
