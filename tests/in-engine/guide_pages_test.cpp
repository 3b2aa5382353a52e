// The guide as something to read: its links and its printed pages.

#include "guide.hpp"

#include "functions/catalogue/catalogue.hpp"
#include "office/process.hpp"
#include "office/text.hpp"

#include <com/sun/star/awt/Size.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/frame/DispatchHelper.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
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

    /// Follows a link as Calc does, and reads the cell that it leads to: its sheet's name and its text.
    std::pair<std::string, std::string> follow(std::string const& url) {
        Reference<css::frame::XModel> const model(guide.document.model(), UNO_QUERY_THROW);
        auto const controller = model->getCurrentController();
        Office& office = office_with_package();
        css::uno::Sequence<css::beans::PropertyValue> target(1);
        target.getArray()[0] = {"Bookmark", 0, Any(office::wide(url.substr(1))),
                                css::beans::PropertyState_DIRECT_VALUE};
        css::frame::DispatchHelper::create(office.context())
            ->executeDispatch(Reference<css::frame::XDispatchProvider>(controller->getFrame(), UNO_QUERY_THROW),
                              ".uno:JumpToMark", "", 0, target);
        Reference<css::sheet::XSpreadsheetView> const view(controller, UNO_QUERY_THROW);
        // A block's title is of merged cells.
        Reference<css::table::XCellRange> const found(model->getCurrentSelection(), UNO_QUERY_THROW);
        Reference<css::text::XTextRange> const first(found->getCellByPosition(0, 0), UNO_QUERY_THROW);
        return {office::narrow(Reference<css::container::XNamed>(view->getActiveSheet(), UNO_QUERY_THROW)->getName()),
                office::narrow(first->getString())};
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
    office::asking("following the links of the guide", [&] {
        std::size_t links = 0;
        for (int row = 1; row <= 200; ++row) {
            std::string const url = link(0, row);
            if (url.empty())
                continue;
            ++links;
            std::string const text = guide.document.sheet(0).shown("A" + std::to_string(row));
            ASSERT_TRUE(sheet_of.contains(text)) << text;
            EXPECT_EQ(follow(url), std::pair(sheet_of.at(text), text)) << url;
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

INSTANTIATE_TEST_SUITE_P(In, Pages, testing::ValuesIn(languages), name_of_language);

} // namespace hearthcell::tests
