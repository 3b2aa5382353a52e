#include "old_sheets.hpp"

#include "extension/office/file_url.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/frame/XStorable.hpp>

#include <algorithm>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

void make_old_sheet(Office& office, std::filesystem::path const& file, double altitude) {
    std::filesystem::create_directories(file.parent_path());
    Document document = Document::blank(office);
    Sheet sheet = document.sheet(0);
    sheet.text("A1", "Record of a test");
    sheet.text("A3", "Altitude");
    sheet.number("B3", altitude);
    sheet.text("C3", "m");
    sheet.text("A4", "Boiling point");
    sheet.formula("B4", "=100-B3/300");
    sheet.text("C4", "°C");
    document.save(file);
}

std::string remembered_original(Reference<css::uno::XInterface> const& document) {
    return office::asking("reading what a document remembers", [&] {
        Reference<css::beans::XPropertySet> const properties(
            Reference<css::document::XDocumentPropertiesSupplier>(document, UNO_QUERY_THROW)
                ->getDocumentProperties()
                ->getUserDefinedProperties(),
            UNO_QUERY_THROW);
        rtl::OUString path;
        properties->getPropertyValue("Hearthcell original") >>= path;
        return office::narrow(path);
    });
}

void save_as(Reference<css::frame::XModel> const& document, std::filesystem::path const& file) {
    std::string const ending = file.extension();
    char const* const filter = ending == ".xls"    ? "MS Excel 97"
                               : ending == ".xlsx" ? "Calc MS Excel 2007 XML"
                                                   : "calc8";
    office::asking("saving " + file.string(), [&] {
        css::beans::PropertyValue const format("FilterName", 0, css::uno::Any(office::wide(filter)),
                                               css::beans::PropertyState_DIRECT_VALUE);
        Reference<css::frame::XStorable>(document, UNO_QUERY_THROW)->storeAsURL(office::file_url(file), {&format, 1});
    });
}

OldSheets::OldSheets() {
    std::filesystem::remove_all(folder);
    make_old_sheet(office_with_package(), original, 1240);
    make_old_sheet(office_with_package(), sheets / "2016" / "second.ods", 1900);
    make_old_sheet(office_with_package(), sheets / "2019" / "third.xlsx", 300);
}

OldSheets::~OldSheets() {
    std::filesystem::remove_all(folder);
}

Reference<css::frame::XModel> OldSheets::start_from(Office& office, std::filesystem::path const& old_sheet) {
    Document const from = Document::blank(office);
    auto const before = untitled_documents(office);
    said = command(office, from, "start-from-old-sheet", {}, old_sheet);
    EXPECT_EQ(said.state, Said::State::done) << said.words;
    for (auto const& opened : untitled_documents(office))
        if (std::find(before.begin(), before.end(), opened) == before.end())
            return opened;
    throw std::runtime_error("nothing was opened");
}

} // namespace hearthcell::tests
