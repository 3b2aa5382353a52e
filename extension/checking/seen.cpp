#include "extension/checking/seen.hpp"

#include "extension/checking/kept.hpp"
#include "extension/checking/marks.hpp"
#include "extension/office/text.hpp"

namespace css = com::sun::star;
using css::uno::Reference;

namespace hearthcell::checking {
namespace {

constexpr char property[] = "Hearthcell remarks seen";
constexpr std::size_t most_kept = 10'000;

} // namespace

Seen seen_in(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    return marks_in(office::narrow(kept_text(document, property)));
}

void keep_seen(Reference<css::sheet::XSpreadsheetDocument> const& document, Seen const& more) {
    Seen all = seen_in(document);
    for (std::uint64_t const mark : more)
        if (all.size() < most_kept)
            all.insert(mark);
    std::string text;
    for (std::uint64_t const mark : all)
        text += (text.empty() ? "" : " ") + written(mark);
    keep_text(document, property, office::wide(text));
}

} // namespace hearthcell::checking
