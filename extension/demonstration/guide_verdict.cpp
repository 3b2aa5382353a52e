#include "extension/demonstration/guide_verdict.hpp"

#include "extension/office/document.hpp"

#include <map>
#include <stdexcept>

namespace hearthcell {

std::string guide_verdict(office::Office& office, std::filesystem::path const& package) {
    office::Document guide =
        office::Document::open(office, office.folder() / "bundled" / package.stem() / "guide" / "en.ods");
    guide.recalculate();
    std::map<std::string, std::string> shown;
    for (office::NamedBlock const& block : guide.named_blocks())
        shown[block.name] = guide.sheet(block.sheet).shown(block.range);
    if (shown.at("checks_that_agree") != shown.at("checks_in_all"))
        throw std::runtime_error("the function guide says: " + shown.at("guide_verdict"));
    return shown.at("guide_verdict");
}

} // namespace hearthcell
