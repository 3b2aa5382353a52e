#include "extension/office/document.hpp"

#include "extension/office/file_url.hpp"
#include "extension/office/questions.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/document/MacroExecMode.hpp>
#include <com/sun/star/document/UpdateDocMode.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XSheetAnnotationShapeSupplier.hpp>
#include <com/sun/star/sheet/XSheetAnnotations.hpp>
#include <com/sun/star/sheet/XSheetAnnotationsSupplier.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <rtl/ref.hxx>

#include <map>

namespace css = com::sun::star;
using css::beans::PropertyValue;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::office {
namespace {

PropertyValue option(std::string_view name, Any const& value) {
    return {wide(name), 0, value, css::beans::PropertyState_DIRECT_VALUE};
}

Reference<css::lang::XComponent> load(Office& office, rtl::OUString const& url, Access access) {
    rtl::Reference<Questions> const questions(new Questions);
    PropertyValue const options[] = {
        option("Hidden", Any(true)), option("ReadOnly", Any(access == Access::read_only)),
        option("MacroExecutionMode", Any(css::document::MacroExecMode::NEVER_EXECUTE)),
        option("UpdateDocMode", Any(css::document::UpdateDocMode::NO_UPDATE)),
        option("InteractionHandler", Any(Reference<css::task::XInteractionHandler>(questions.get())))};
    auto const loaded = office.desktop()->loadComponentFromURL(url, "_blank", 0, Sequence<PropertyValue>(options, 5));
    if (loaded.is())
        return loaded;
    if (questions->password_wanted())
        throw WantsPassword(narrow(url) + " is protected by a password");
    throw NotOpened("LibreOffice could not open " + narrow(url) + questions->messages());
}

std::string_view filter_for(std::filesystem::path const& file) {
    static std::map<std::string, std::string_view, std::less<>> const filters{
        {".ods", "calc8"},
        {".ots", "calc8_template"},
        {".fods", "OpenDocument Spreadsheet Flat XML"},
        {".xlsx", "Calc MS Excel 2007 XML"},
        {".xls", "MS Excel 97"},
        {".csv", "Text - txt - csv (StarCalc)"},
        {".pdf", "calc_pdf_Export"}};
    auto const found = filters.find(file.extension().string());
    if (found == filters.end())
        throw std::runtime_error("no format is known for " + file.string());
    return found->second;
}

/// LibreOffice 7.4 leaves a comment out of an .fods if it has not had a reason to draw it since it opened the document.
void draw_comments(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    Reference<css::container::XIndexAccess> const sheets(document->getSheets(), UNO_QUERY_THROW);
    for (sal_Int32 sheet = 0; sheet < sheets->getCount(); ++sheet) {
        auto const comments =
            Reference<css::sheet::XSheetAnnotationsSupplier>(sheets->getByIndex(sheet), UNO_QUERY_THROW)
                ->getAnnotations();
        for (sal_Int32 index = 0; index < comments->getCount(); ++index)
            Reference<css::sheet::XSheetAnnotationShapeSupplier>(comments->getByIndex(index), UNO_QUERY_THROW)
                ->getAnnotationShape();
    }
}

} // namespace

Document::Document(Reference<css::lang::XComponent> const& loaded) : model_(loaded, css::uno::UNO_QUERY) {
    if (model_.is())
        return;
    Reference<css::util::XCloseable>(loaded, UNO_QUERY_THROW)->close(true);
    throw NoSpreadsheet("this is not a spreadsheet");
}

// The SDK's references do not move: a default would leave both closing the document.
Document::Document(Document&& other) noexcept : held_(std::move(other.held_)), model_(other.model_) {
    other.model_.clear();
}

Document Document::blank(Office& office) {
    return asking("making a new spreadsheet",
                  [&] { return Document(load(office, "private:factory/scalc", Access::read_write)); });
}

Document Document::open(Office& office, std::filesystem::path const& file, Access access) {
    if (!std::filesystem::is_regular_file(file))
        throw std::runtime_error("there is no file " + file.string());
    return asking("opening " + file.string(), [&] { return Document(load(office, file_url(file), access)); });
}

Document::~Document() {
    try {
        close();
    } catch (std::exception const&) { // the office is gone, and the document with it
    }
}

void Document::close() {
    if (!model_.is())
        return;
    asking("closing a document", [&] { Reference<css::util::XCloseable>(model_, UNO_QUERY_THROW)->close(true); });
    model_.clear();
    held_.clear();
}

void Document::follow_typing(bool at_once) const {
    asking("switching automatic calculation",
           [&] { Reference<css::sheet::XCalculatable>(model_, UNO_QUERY_THROW)->enableAutomaticCalculation(at_once); });
}

void Document::recalculate() {
    asking("recalculating", [&] { Reference<css::sheet::XCalculatable>(model_, UNO_QUERY_THROW)->calculateAll(); });
}

void Document::save(std::filesystem::path const& file) {
    std::vector<PropertyValue> options{option("FilterName", Any(wide(filter_for(file)))),
                                       option("Overwrite", Any(true))};
    if (file.extension() == ".csv") // comma, quotes, UTF-8
        options.push_back(option("FilterOptions", Any(rtl::OUString("44,34,76"))));
    asking("saving " + file.string(), [&] {
        if (file.extension() == ".fods")
            draw_comments(model_);
        Reference<css::frame::XStorable>(model_, UNO_QUERY_THROW)
            ->storeToURL(file_url(file),
                         Sequence<PropertyValue>(options.data(), static_cast<sal_Int32>(options.size())));
    });
}

int Document::sheets() const {
    return asking("counting sheets", [&] {
        return Reference<css::container::XIndexAccess>(model_->getSheets(), UNO_QUERY_THROW)->getCount();
    });
}

Sheet Document::sheet(int index) const {
    return asking("looking for sheet " + std::to_string(index), [&] {
        Reference<css::container::XIndexAccess> const all(model_->getSheets(), UNO_QUERY_THROW);
        return Sheet(Reference<css::sheet::XSpreadsheet>(all->getByIndex(index), UNO_QUERY_THROW));
    });
}

Sheet Document::sheet(std::string const& name) const {
    return asking("looking for sheet " + name, [&] {
        return Sheet(Reference<css::sheet::XSpreadsheet>(model_->getSheets()->getByName(wide(name)), UNO_QUERY_THROW));
    });
}

void Document::hold(std::vector<Reference<css::uno::XInterface>> const& objects) const {
    held_.insert(held_.end(), objects.begin(), objects.end());
}

Reference<css::sheet::XSpreadsheetDocument> const& Document::model() const {
    return model_;
}

} // namespace hearthcell::office
