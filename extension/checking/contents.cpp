#include "extension/checking/contents.hpp"

#include "extension/checking/rules.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/names.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/table/XCell.hpp>

namespace css = com::sun::star;
using css::table::CellRangeAddress;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::checking {
namespace {

constexpr sal_Int16 typed =
    css::sheet::CellFlags::VALUE | css::sheet::CellFlags::DATETIME | css::sheet::CellFlags::STRING;

constexpr std::size_t most_errors = 5'000; // that are asked for one by one; of others it is not told which they are

class Reader {
public:
    explicit Reader(Reference<css::sheet::XSpreadsheetDocument> const& of_document)
        : document_(of_document), sheets_(sharing::sheets_of(document_)) {}

    Contents read() {
        find_areas();
        if (contents_.too_large)
            return std::move(contents_);
        contents_.defined = sharing::read_defined(document_);
        for (Area const& area : areas_)
            if (text_ <= most_text)
                read(area);
        if (text_ > most_text) {
            contents_ = {};
            contents_.too_large = true;
            return std::move(contents_);
        }
        read_settings();
        contents_.rules = read_rules(document_, contents_.defined, contents_.held);
        return std::move(contents_);
    }

private:
    struct Area {
        CellRangeAddress address;
        bool formulas;
    };

    void find_areas() {
        std::int64_t cells = 0;
        for (auto const& sheet : sheets_)
            for (bool const formulas : {false, true}) {
                Reference<css::sheet::XCellRangesQuery> const query(sheet, UNO_QUERY_THROW);
                auto const found = query->queryContentCells(formulas ? css::sheet::CellFlags::FORMULA : typed);
                for (CellRangeAddress const& address : found->getRangeAddresses()) {
                    areas_.push_back({address, formulas});
                    cells += std::int64_t(address.EndRow - address.StartRow + 1) *
                             (address.EndColumn - address.StartColumn + 1);
                }
                contents_.too_large = cells > most_cells;
                if (contents_.too_large)
                    return;
            }
    }

    void read(Area const& area) {
        auto const& [first_sheet, left, top, right, bottom] = area.address;
        auto const range = sheets_.at(std::size_t(first_sheet))->getCellRangeByPosition(left, top, right, bottom);
        auto const values = Reference<css::sheet::XCellRangeData>(range, UNO_QUERY_THROW)->getDataArray();
        Sequence<Sequence<OUString>> formulas;
        if (area.formulas)
            formulas = Reference<css::sheet::XCellRangeFormula>(range, UNO_QUERY_THROW)->getFormulaArray();
        for (sal_Int32 row = 0; row < values.getLength(); ++row)
            for (sal_Int32 column = 0; column < values[row].getLength(); ++column) {
                Content content{value_of(values[row][column]), {}};
                if (area.formulas)
                    content.formula = office::narrow(formulas[row][column]);
                auto const* const text = std::get_if<std::string>(&content.value);
                text_ += content.formula.size() + (text == nullptr ? 0 : text->size());
                if (auto* const error = std::get_if<CellError>(&content.value);
                    error != nullptr && errors_++ < most_errors)
                    error->code = range->getCellByPosition(column, row)->getError();
                contents_.cells.insert_or_assign({first_sheet, top + row, left + column}, std::move(content));
            }
    }

    static std::variant<double, std::string, CellError> value_of(Any const& value) {
        if (double number = 0; value >>= number)
            return number;
        if (OUString text; value >>= text)
            return office::narrow(text);
        return CellError{};
    }

    void read_settings() {
        Reference<css::beans::XPropertySet> const properties(document_, UNO_QUERY_THROW);
        for (char const* const name : {"NullDate", "IgnoreCase", "MatchWholeCell", "CalcAsShown", "Wildcards",
                                       "RegularExpressions", "StandardDecimals"})
            contents_.settings.emplace_back(name, properties->getPropertyValue(OUString::createFromAscii(name)));
    }

    Reference<css::sheet::XSpreadsheetDocument> const document_;
    std::vector<Reference<css::sheet::XSpreadsheet>> const sheets_;
    std::vector<Area> areas_;
    std::size_t errors_ = 0, text_ = 0;
    Contents contents_;
};

} // namespace

Contents read_contents(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    return Reader(document).read();
}

} // namespace hearthcell::checking
