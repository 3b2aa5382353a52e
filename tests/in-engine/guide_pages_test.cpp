// The guide as something to read: its links and its printed pages.

#include "guide.hpp"

#include "extension/office/process.hpp"
#include "extension/office/text.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <com/sun/star/awt/Size.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCellRangesAccess.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/sheet/XViewFreezable.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/text/XTextFieldsSupplier.hpp>
#include <com/sun/star/text/XTextRange.hpp>

#include <fstream>
#include <map>
#include <sstream>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

class Pages : public FunctionGuide {
protected:
    Reference<css::sheet::XSpreadsheet> model_of(int place) {
        Reference<css::container::XIndexAccess> const sheets(guide.document.model()->getSheets(), UNO_QUERY_THROW);
        return {sheets->getByIndex(place), UNO_QUERY_THROW};
    }

    /// Where the link in a cell leads; empty without one.
    std::string link(int place, int row) {
        Reference<css::text::XTextFieldsSupplier> const cell(model_of(place)->getCellByPosition(0, row - 1),
                                                             UNO_QUERY_THROW);
        auto const fields = cell->getTextFields()->createEnumeration();
        rtl::OUString url;
        if (fields->hasMoreElements())
            Reference<css::beans::XPropertySet>(fields->nextElement(), UNO_QUERY_THROW)->getPropertyValue("URL") >>=
                url;
        return office::narrow(url);
    }

    /// The cell that Calc finds at the address of a link: its sheet's name and its text. The link is not followed: to
    /// move in a document out of sight, from another process, ends LibreOffice 7.4 now and then.
    std::pair<std::string, std::string> target(std::string const& url) {
        Reference<css::sheet::XCellRangesAccess> const sheets(guide.document.model()->getSheets(), UNO_QUERY_THROW);
        auto const found = sheets->getCellRangesByName(office::wide(url.substr(1)));
        Reference<css::sheet::XSheetCellRange> const range(found[0], UNO_QUERY_THROW);
        Reference<css::text::XTextRange> const cell(range->getCellByPosition(0, 0), UNO_QUERY_THROW);
        return {office::narrow(Reference<css::container::XNamed>(range->getSpreadsheet(), UNO_QUERY_THROW)->getName()),
                office::narrow(cell->getString())};
    }

    Guide guide{office_with_package(), GetParam()};
};

css::awt::Size size_of(Reference<css::uno::XInterface> const& range) {
    css::awt::Size size;
    Reference<css::beans::XPropertySet>(range, UNO_QUERY_THROW)->getPropertyValue("Size") >>= size;
    return size;
}

int whole_number(Reference<css::beans::XPropertySet> const& from, char const* name) {
    sal_Int32 value = 0;
    from->getPropertyValue(rtl::OUString::createFromAscii(name)) >>= value;
    return value;
}

} // namespace

TEST_P(Pages, LinkTheIndexToEveryFunctionsBlock) {
    std::map<std::string, std::string> sheet_of; // by what the index calls a subject or a function
    for (Group const& group : catalogue()) {
        std::string const subject(group.title.in(GetParam()));
        sheet_of[subject] = subject;
        for (Function const& function : group.functions)
            sheet_of["STOVE." + std::string(function.name)] = subject;
    }
    office::asking("looking at the links of the guide", [&] {
        std::size_t links = 0;
        for (int row = 1; row <= 200; ++row) {
            std::string const url = link(0, row);
            if (url.empty())
                continue;
            ++links;
            std::string const text = guide.document.sheet(0).shown("A" + std::to_string(row));
            ASSERT_TRUE(sheet_of.contains(text)) << text;
            EXPECT_EQ(target(url), std::pair(sheet_of.at(text), text)) << url;
        }
        EXPECT_EQ(links, sheet_of.size());
    });
}

TEST_P(Pages, AreOneASheetOfPaperAsLargeAsTheSheet) {
    std::filesystem::path const pdf = scratch_folder() / "guide.pdf", said = scratch_folder() / "pdfinfo.txt";
    guide.document.save(pdf);
    office::Process pdfinfo("/usr/bin/pdfinfo", {pdf.string()}, said);
    ASSERT_EQ(pdfinfo.wait(std::chrono::seconds(20)), 0);
    std::stringstream text;
    text << std::ifstream(said).rdbuf();
    std::string line, pages;
    while (std::getline(text, line))
        if (line.starts_with("Pages:"))
            pages = line.substr(line.find_first_not_of(' ', 6));
    EXPECT_EQ(pages, std::to_string(guide.document.sheets()));

    office::asking("measuring the sheets of the guide", [&] {
        Reference<css::container::XNameAccess> const styles(
            Reference<css::style::XStyleFamiliesSupplier>(guide.document.model(), UNO_QUERY_THROW)
                ->getStyleFamilies()
                ->getByName("PageStyles"),
            UNO_QUERY_THROW);
        for (int place = 0; place < guide.document.sheets(); ++place) {
            auto const cursor = model_of(place)->createCursor();
            Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoStartOfUsedArea(false);
            Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(true);
            css::awt::Size const used = size_of(cursor);
            rtl::OUString name;
            Reference<css::beans::XPropertySet>(model_of(place), UNO_QUERY_THROW)->getPropertyValue("PageStyle") >>=
                name;
            Reference<css::beans::XPropertySet> const page(styles->getByName(name), UNO_QUERY_THROW);
            // Whatever fits is printed in its own size.
            EXPECT_GE(whole_number(page, "Width") - whole_number(page, "LeftMargin") -
                          whole_number(page, "RightMargin"),
                      used.Width);
            EXPECT_GE(whole_number(page, "Height") - whole_number(page, "TopMargin") -
                          whole_number(page, "BottomMargin"),
                      used.Height);
        }
    });
}

TEST_P(Pages, KeepTheirHeadingsInSightAndShowNoGrid) {
    office::asking("looking at the view of the guide", [&] {
        auto const view =
            Reference<css::frame::XModel>(guide.document.model(), UNO_QUERY_THROW)->getCurrentController();
        EXPECT_TRUE(Reference<css::sheet::XViewFreezable>(view, UNO_QUERY_THROW)->hasFrozenPanes());
        bool grid = true;
        Reference<css::beans::XPropertySet>(view, UNO_QUERY_THROW)->getPropertyValue("ShowGrid") >>= grid;
        EXPECT_FALSE(grid);
    });
}

INSTANTIATE_TEST_SUITE_P(In, Pages, testing::ValuesIn(languages), name_of_language);

} // namespace hearthcell::tests
