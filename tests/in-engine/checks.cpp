#include "checks.hpp"

#include "extension/office/text.hpp"

namespace hearthcell::tests {

checking::Result checked(Document const& document, Language language, std::vector<formulas::Range> const& selection) {
    return office::asking("checking a document", [&] {
        checking::Check check(office_with_package().context(), document.model(), language, selection);
        while (check.go_on())
            ;
        document.hold(check.held());
        return check.result();
    });
}

std::vector<std::string> remarks_of(checking::Result const& result) {
    std::vector<std::string> all;
    for (checking::RunRemarks const& run : result.remarks)
        for (checking::Remark const& remark : run.remarks)
            all.push_back((remark.place.empty() ? remark.cells() : remark.place) + " " + remark.function + " " +
                          remark.value + " " + remark.sentence +
                          (remark.effect.empty() ? "" : " [" + remark.effect + "]"));
    return all;
}

std::string in_words(checking::Result const& result) {
    std::string text = result.summary;
    for (checking::RunRemarks const& run : result.remarks) {
        text += "\n" + run.label + ":";
        for (std::string const& remark : remarks_of({.remarks = {run}}))
            text += "\n  " + remark;
    }
    for (std::string const& sentence : result.whole)
        text += "\n* " + sentence;
    return text;
}

} // namespace hearthcell::tests
