// The summary of a recalculated archive, made by this LibreOffice and opened in it as a person would.

#include "calc.hpp"

#include "extension/office/process.hpp"
#include "extension/office/text.hpp"
#include "tests/support/content.hpp"

#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>
#include <cstdlib>

#include <chrono>

namespace css = com::sun::star;

namespace hearthcell::tests {
namespace {

using namespace std::chrono_literals;

int charts_on(Sheet const& sheet, Document const& document) {
    css::uno::Reference<css::table::XTableChartsSupplier> const charts(
        document.model()->getSheets()->getByName(office::wide(sheet.name())), css::uno::UNO_QUERY_THROW);
    css::uno::Reference<css::container::XNameAccess> const names(charts->getCharts(), css::uno::UNO_QUERY_THROW);
    return names->getElementNames().getLength();
}

int count(std::string const& text, std::string const& words) {
    int found = 0;
    for (std::size_t at = text.find(words); at != std::string::npos; at = text.find(words, at + 1))
        ++found;
    return found;
}

/// An office of another root is entered by chroot, which a confined process may not: there no bwrap is found.
std::vector<std::string> surroundings() {
    if (std::getenv("HEARTHCELL_OFFICE_ROOT") == nullptr)
        return {};
    return {"PATH=/usr/sbin"};
}

class ArchiveSummary : public testing::Test {
protected:
    ArchiveSummary() {
        std::filesystem::remove_all(folder);
        std::filesystem::create_directories(folder);
        office::Process archive(ARCHIVE_TOOL,
                                {OLD_ARCHIVE, "--output", (folder / "output").string(), "--package", package().string(),
                                 "--workers", "1", "--collect", "efficiency,boil_time"},
                                folder / "said", surroundings());
        EXPECT_EQ(archive.wait(240s), 1) << content(folder / "said"); // one of the sheets has new errors
    }
    ~ArchiveSummary() override { std::filesystem::remove_all(folder); }

    std::filesystem::path const folder = scratch_folder() / "archive summary";
    std::filesystem::path const summary = folder / "output/summary.ods";
};

} // namespace

TEST_F(ArchiveSummary, OpensWithItsPagesFiguresAndCharts) {
    Document const document = Document::open(office_with_package(), summary);
    std::vector<std::string> names;
    for (int sheet = 0; sheet < document.sheets(); ++sheet)
        names.push_back(document.sheet(sheet).name());
    EXPECT_EQ(names, (std::vector<std::string>{"By function", "By folder or year", "Largest changes", "How far",
                                               "Problems", "Collected"}));
    EXPECT_EQ(document.sheet("By function").shown("A2"),
              "Found: 42 formulas with functions of Hearthcell in 7 workbooks, 14 formulas without");
    EXPECT_EQ(document.sheet("By function").shown("A4"), "56 formulas: 35 changed, 21 the same");
    EXPECT_EQ(document.sheet("By folder or year").shown_rows("A4:D7"),
              (office::TextRows{{"folder or year", "workbooks", "with changes", "changed results"},
                                {"2016", "2", "2", "14"},
                                {"2017", "2", "2", "14"},
                                {"2019", "3", "2", "7"}}));
    EXPECT_EQ(document.sheet("Largest changes").shown("A5"), "2016/flat-grate-1.fods");
    EXPECT_EQ(document.sheet("Largest changes").shown("F5"), "+5.101%");
    EXPECT_EQ(charts_on(document.sheet("By function"), document), 1);
    EXPECT_EQ(charts_on(document.sheet("How far"), document), 1);
    EXPECT_EQ(charts_on(document.sheet("Collected"), document), 2);
}

TEST_F(ArchiveSummary, IsPrintedOnOnePageASheet) {
    Document document = Document::open(office_with_package(), summary);
    std::filesystem::path const print = folder / "summary.pdf";
    document.save(print);
    EXPECT_EQ(count(content(print), "/Type/Page/"), document.sheets());
}

} // namespace hearthcell::tests
