#include "extension/archive/report/pages.hpp"

#include "extension/archive/files/shown.hpp"

namespace hearthcell::archive {

PageCell text_cell(std::string const& text) {
    return {line_of(text), {}};
}

PageCell count_cell(std::uint64_t number) {
    return {static_cast<double>(number), {}};
}

PageCell number_cell(std::optional<double> const& number) {
    return number ? PageCell{*number, {}} : PageCell{};
}

namespace {

constexpr std::size_t longest_name = 42; // what fits into a column: a link does not go on in a second line

/// The end of a long one, which tells files apart.
std::string shortened(std::string const& name) {
    if (name.size() <= longest_name)
        return name;
    std::size_t start = name.size() - longest_name;
    while (start < name.size() && (static_cast<unsigned char>(name[start]) & 0xC0U) == 0x80U) // inside a letter
        ++start;
    return "…" + name.substr(start);
}

} // namespace

PageCell linked_cell(Origin const& origin) {
    std::string const path = origin.file.string();
    // A link is a text; a name that is none cannot be written into it.
    return {shortened(shown(origin.relative)), harmless(path) == path ? path : std::string()};
}

void add_more(Page& page, std::uint64_t all, std::uint64_t shown, std::string const& of, std::string const& where) {
    if (all > shown)
        page.notes.push_back("… and " + std::to_string(all - shown) + " more " + of + " in " + where);
}

std::vector<Page> pages_of(Summary const& summary, Findings const& findings, Agreement const& agreement) {
    std::vector<Page> pages{page_by_function(summary), page_by_folder(summary, findings), page_of_largest(findings),
                            page_of_sizes(summary, findings), page_of_problems(summary, findings)};
    if (!summary.compare.empty())
        pages.insert(pages.begin(), page_of_old_and_new(summary, agreement)); // what was asked for comes first
    if (summary.remarks.asked)
        pages.push_back(page_of_remarks(summary, findings));
    if (!summary.collected.empty())
        pages.push_back(page_of_collected(summary, findings));
    return pages;
}

} // namespace hearthcell::archive
