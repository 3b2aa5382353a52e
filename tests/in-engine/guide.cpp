#include "guide.hpp"

#include "functions/catalogue/catalogue.hpp"
#include "manifest/generator/output.hpp"

#include <stdexcept>

namespace hearthcell::tests {

std::string phrase(Word which, Language language, std::string const& first, std::string const& second) {
    using generator::filled;
    return filled(filled(generator::guide::word(which, language), "%1", first), "%2", second);
}

Guide::Guide(Office& office, Language which)
    : language(which), document(Document::open(office, package_of(office_with_package()) / "guide" /
                                                           (std::string(tag_of(which).substr(0, 2)) + ".ods"))) {}

office::NamedBlock Guide::named(std::string const& name) const {
    for (office::NamedBlock const& block : document.named_blocks())
        if (block.name == name)
            return block;
    throw std::runtime_error("the guide names no cell " + name);
}

std::string Guide::verdict() const {
    office::NamedBlock const block = named("guide_verdict");
    return document.sheet(block.sheet).shown(block.range);
}

std::string Guide::status() const {
    return document.sheet(0).shown("A3");
}

double Guide::agreeing() const {
    office::NamedBlock const block = named("checks_that_agree");
    return number(document.sheet(block.sheet).value(block.range));
}

double Guide::checks() const {
    office::NamedBlock const block = named("checks_in_all");
    return number(document.sheet(block.sheet).value(block.range));
}

std::vector<Guide::Check> Guide::all_checks() const {
    std::vector<Check> found;
    for (int place = 1; place + 1 < document.sheets(); ++place) {
        Sheet const sheet = document.sheet(place);
        int row = 0;
        for (auto const& cells : sheet.values("A1:H1000")) {
            ++row;
            // Titles have a verdict, too, but nothing that must be given.
            if (cells[of_verdict] != CellValue("") && cells[of_verdict] != CellValue(phrase(Word::verdict, language)) &&
                cells[of_expected] != CellValue(""))
                found.push_back({sheet, row, cells});
        }
    }
    return found;
}

std::size_t checks_in_the_catalogue() {
    std::size_t count = 0;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (Example const& example : function.examples)
                count +=
                    example.expected.kind == ExpectedKind::block ? example.expected.rows * example.expected.columns : 1;
    return count;
}

std::string name_of_language(testing::TestParamInfo<Language> const& language) {
    constexpr char const* names[] = {"English", "French", "Spanish", "Swahili"};
    return names[std::size_t(language.param)];
}

} // namespace hearthcell::tests
