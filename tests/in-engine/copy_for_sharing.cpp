#include "copy_for_sharing.hpp"

#include "extension/office/text.hpp"
#include "tests/support/content.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>

#include <cmath>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

void expect_same(office::ValueRows const& after, office::ValueRows const& before) {
    ASSERT_EQ(after.size(), before.size());
    for (std::size_t row = 0; row < before.size(); ++row)
        for (std::size_t column = 0; column < before[row].size(); ++column) {
            double const* const number = std::get_if<double>(&before[row][column]);
            double const* const again = std::get_if<double>(&after[row].at(column));
            if (number != nullptr && again != nullptr)
                EXPECT_NEAR(*again, *number, 1e-14 * std::abs(*number)) << row << ", " << column;
            else
                EXPECT_EQ(after[row].at(column), before[row][column]) << row << ", " << column;
        }
}

void define(Document const& document, std::string const& name, std::string const& means) {
    office::asking("defining " + name, [&] {
        Reference<css::beans::XPropertySet> const properties(document.model(), UNO_QUERY_THROW);
        Reference<css::sheet::XNamedRanges> const names(properties->getPropertyValue("NamedRanges"), UNO_QUERY_THROW);
        names->addNewByName(office::wide(name), office::wide(means), {0, 0, 0}, 0);
    });
}

std::string entry_of(std::filesystem::path const& file, std::string const& entry) {
    std::filesystem::path const unpacked = scratch_folder() / "unpacked entry";
    office::Process unpack("/usr/bin/unzip", {"-p", file.string(), entry}, unpacked);
    EXPECT_EQ(unpack.wait(std::chrono::seconds(20)), 0) << file << ": " << entry;
    return content(unpacked);
}

CopyForSharing::CopyForSharing() {
    std::filesystem::remove(copy);
}

void CopyForSharing::share(Document const& original) {
    Said const said = command(office_with_package(), original, "copy-for-sharing", copy);
    EXPECT_EQ(said.state, Said::State::done) << said.words;
    EXPECT_NE(said.words.find(copy.string()), std::string::npos) << said.words;
    ASSERT_TRUE(std::filesystem::is_regular_file(copy));
}

Document CopyForSharing::received() const {
    return Document::open(office_without_package(), copy);
}

} // namespace hearthcell::tests
