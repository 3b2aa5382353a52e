#pragma once
// What a workbook links to outside of itself, and the names that stand for it while an office has the workbook.

#include <filesystem>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace hearthcell::archive {

/// A link as its file has it.
struct OutsideLink {
    std::string what;    // "picture"
    std::string where;   // sheet, or part of the file
    std::string address; // as it is written there: "http://…", "../site.ods"
};

/// The links of one workbook. Each outside address gets a name that stands for it: of a file beside the private copy,
/// which does not exist. So an office that follows it nevertheless finds nothing, and what it saves tells which
/// address was meant.
class Outside {
public:
    /// folder: of the private copy
    explicit Outside(std::filesystem::path const& folder);

    /// The name, as a URL, for what is hidden so: the same for the same address of the same kind. Throws
    /// Trouble(too_large) where there are more than a workbook of somebody's work can have.
    std::string hide(OutsideLink link);

    /// Another address that is to come back where the file has the name as one of its tables.
    void hide_twin(std::string const& name, std::string address);
    [[nodiscard]] std::string twin_of(std::string_view name) const; // empty: there is none

    /// What is taken out, and cannot be put back.
    void take_out(OutsideLink link) { taken_out_.push_back(std::move(link)); }

    /// A text in which the addresses stand for the names again.
    [[nodiscard]] std::string put_back(std::string_view text) const;

    [[nodiscard]] bool is_named_in(std::string_view text) const;

    [[nodiscard]] std::vector<OutsideLink> const& hidden() const { return hidden_; }
    [[nodiscard]] std::vector<OutsideLink> const& taken_out() const { return taken_out_; }

    /// "3 links: picture http://… (Data), …"; empty where there are none.
    [[nodiscard]] std::string in_words() const;

private:
    std::string folder_; // as a URL, with a slash at its end
    std::string mark_;
    std::vector<OutsideLink> hidden_, taken_out_;
    std::map<std::pair<std::string, std::string>, std::string> names_; // by kind and address
    std::map<std::string, std::string, std::less<>> twins_;            // by name without its folder
};

/// Whether an address in a part of a package leads out of it. depth: how many folders of the package the part lies in;
/// negative where there is no package, so that everything but a place in the same document is outside.
bool leads_outside(std::string_view address, int depth);

} // namespace hearthcell::archive
