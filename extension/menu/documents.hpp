#pragma once
// Opening and storing documents from inside the office.

#include "extension/menu/surroundings.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/lang/XComponent.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

namespace hearthcell::menu {

/// One of the packaged workbooks as a new document without a name.
Answer open_as_new(Surroundings const& surroundings, std::string_view folder, std::string_view file);

/// A file as itself, in a window of its own.
Answer open_file(Surroundings const& surroundings, rtl::OUString const& url);

/// A file as a new document without a name, so that saving it never touches the file; null where that is no
/// spreadsheet.
com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> open_copy(Surroundings const& surroundings,
                                                                                      rtl::OUString const& url);

/// Whether a document that is open in the office has its file there, by whatever name.
bool is_open(Surroundings const& surroundings, rtl::OUString const& url);

/// Whether there is a file and no pipe, folder or device, of so many bytes at the most.
bool is_plain_file(rtl::OUString const& url, std::uint64_t most);

/// The spreadsheet that a frame shows; null where it shows none.
com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument>
document_of(com::sun::star::uno::Reference<com::sun::star::frame::XFrame> const& frame);

/// Empty where it has not been saved yet.
rtl::OUString address_of(com::sun::star::uno::Reference<com::sun::star::uno::XInterface> const& document);

/// A spreadsheet that is opened out of sight and closed with this object. Macros and links stay untouched.
class HiddenSpreadsheet {
public:
    HiddenSpreadsheet(Surroundings const& surroundings, rtl::OUString const& url);
    ~HiddenSpreadsheet();
    HiddenSpreadsheet(HiddenSpreadsheet const&) = delete;
    HiddenSpreadsheet& operator=(HiddenSpreadsheet const&) = delete;

    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> model;

private:
    com::sun::star::uno::Reference<com::sun::star::lang::XComponent> loaded_;
};

/// Stores a copy, as .xlsx if the address ends so, else as .ods; the document stays what and where it is.
void store_copy(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document,
                rtl::OUString const& url);

} // namespace hearthcell::menu
