#pragma once
// A spreadsheet that is open in an office: opened, recalculated, saved.

#include "extension/office/office.hpp"
#include "extension/office/sheet.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <filesystem>
#include <string>
#include <vector>

namespace hearthcell::office {

enum class Access { read_only, read_write };

/// The office could not open a file, which ends no office.
class NotOpened : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};
class WantsPassword : public NotOpened {
public:
    using NotOpened::NotOpened;
};
class NoSpreadsheet : public NotOpened {
public:
    using NotOpened::NotOpened;
};

/// A block of cells that a document gives a name.
struct NamedBlock {
    std::string name;
    std::string sheet;
    std::string range; // "A1:C20"
};

/// An open spreadsheet, closed with this object; nothing is stored unless save() is called. Must go before its Office.
/// Opened out of sight, with macros and the update of links switched off.
class Document {
public:
    static Document blank(Office& office);
    static Document open(Office& office, std::filesystem::path const& file, Access access = Access::read_only);
    ~Document();
    Document(Document&& other) noexcept;
    Document& operator=(Document&&) = delete;
    Document(Document const&) = delete;
    Document& operator=(Document const&) = delete;

    void recalculate();                     // every formula, whether Calc thinks it needs it or not
    void follow_typing(bool at_once) const; // formulas, what is typed: many cells are typed faster without
    /// A copy in the format that the file's name ends with: .ods .ots .fods .xlsx .xls .csv .pdf
    void save(std::filesystem::path const& file);
    void close();

    [[nodiscard]] int sheets() const;
    [[nodiscard]] Sheet sheet(int index) const;
    [[nodiscard]] Sheet sheet(std::string const& name) const;

    /// Names of blocks of cells, in the order in which the blocks stand in the document. Names of formulas and
    /// constants are left out.
    [[nodiscard]] std::vector<NamedBlock> named_blocks() const;

    /// Lets go of them only when the document is closed: see sharing/conditional_formats.hpp. Const, since it is for
    /// those who only read the document, too.
    void hold(std::vector<com::sun::star::uno::Reference<com::sun::star::uno::XInterface>> const& objects) const;

    /// For what has no helper here.
    [[nodiscard]] com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& model() const;

private:
    explicit Document(com::sun::star::uno::Reference<com::sun::star::lang::XComponent> const& loaded);

    mutable std::vector<com::sun::star::uno::Reference<com::sun::star::uno::XInterface>> held_; // let go after model_
    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> model_;
};

} // namespace hearthcell::office
