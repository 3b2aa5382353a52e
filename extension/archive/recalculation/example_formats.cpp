#include "extension/archive/recalculation/example_formats.hpp"

#include "extension/archive/inventory/words.hpp"
#include "extension/archive/links/clean.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/lang/Locale.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/util/NumberFormat.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

#include <algorithm>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::narrow;
using hearthcell::office::wide;

namespace hearthcell::archive {
namespace {

constexpr int most_cells = 2000; // of a block whose cells differ

Reference<css::util::XNumberFormats> formats_in(office::Document const& workbook) {
    return Reference<css::util::XNumberFormatsSupplier>(workbook.model(), UNO_QUERY_THROW)->getNumberFormats();
}

Reference<css::beans::XPropertySet> cells_in(office::Document const& workbook, formulas::Range const& range) {
    Reference<css::container::XIndexAccess> const sheets(workbook.model()->getSheets(), UNO_QUERY_THROW);
    Reference<css::table::XCellRange> const sheet(sheets->getByIndex(range.first.sheet), UNO_QUERY_THROW);
    return Reference<css::beans::XPropertySet>(
        sheet->getCellRangeByPosition(range.first.column, range.first.row, range.last.column, range.last.row),
        UNO_QUERY_THROW);
}

/// The words in a format: what stands in quotes or behind a backslash, up to the first semicolon.
std::string words_in(std::string_view code) {
    std::string words;
    bool is_quoted = false;
    for (std::size_t at = 0; at < code.size(); ++at) {
        char const c = code[at];
        if (c == '"')
            is_quoted = !is_quoted;
        else if (is_quoted)
            words += c;
        else if (c == '\\' && at + 1 < code.size())
            words += code[++at];
        else if (c == '[')
            at = std::min(code.find(']', at), code.size());
        else if (c == ';')
            break;
    }
    return word_key(words);
}

std::string unit_of(Reference<css::beans::XPropertySet> const& format) {
    sal_Int16 type = 0;
    rtl::OUString code;
    format->getPropertyValue("Type") >>= type;
    format->getPropertyValue("FormatString") >>= code;
    using namespace css::util::NumberFormat;
    if ((type & PERCENT) != 0)
        return "%";
    if ((type & TIME) != 0)
        return (type & DATE) != 0 ? "date" : "clock";
    if ((type & DATE) != 0)
        return "date";
    return words_in(narrow(code));
}

office::Document opened(office::Office& office, std::filesystem::path const& file, std::filesystem::path const& folder,
                        std::uint64_t largest) {
    std::filesystem::create_directories(folder);
    Format const format = format_of(file).value();
    auto const copy = folder / ("example" + std::string(ending(format)));
    std::filesystem::copy_file(file, copy, std::filesystem::copy_options::overwrite_existing);
    Outside outside(folder);
    Room room(Room::for_workbooks_up_to(largest));
    hide_links(copy, format, outside, room);
    return office::Document::open(office, copy);
}

void read_new(office::Document const& workbook, std::size_t number, Example const& example, ExampleFormats& all) {
    auto const formats = formats_in(workbook);
    auto const add = [&](ExampleSheet const& sheet, LabelledSheet::Where const& cell) {
        int const own = example.now().number_of(example.old().name(sheet.number));
        Place const place{own, cell.first, cell.second};
        sal_Int32 key = 0;
        cells_in(workbook, {place, place})->getPropertyValue("NumberFormat") >>= key;
        auto const format = formats->getByKey(key);
        rtl::OUString code;
        css::lang::Locale locale;
        format->getPropertyValue("FormatString") >>= code;
        format->getPropertyValue("Locale") >>= locale;
        all.of_new[{number, sheet.number, cell.first, cell.second}] = {narrow(code), narrow(locale.Language),
                                                                       narrow(locale.Country)};
    };
    for (ExampleSheet const& sheet : example.sheets()) {
        for (ExampleFormula const& formula : sheet.formulas)
            if (!formula.is_over)
                add(sheet, formula.cell);
        for (ExampleWord const& word : sheet.words)
            add(sheet, word.cell);
    }
}

void read_old(office::Document const& workbook, std::size_t number, Example const& example, ExampleFormats& all) {
    FormatUnits units(workbook);
    for (ExampleSheet const& sheet : example.sheets())
        for (Place const& place : example.read_by(sheet))
            all.unit_of_old[{number, place.sheet, place.row, place.column}] = units.of({place, place}).unit;
}

} // namespace

std::string const& FormatUnits::of_key(std::int32_t key) {
    auto const [known, is_new] = known_.try_emplace(key);
    if (is_new)
        known->second = unit_of(formats_in(workbook_)->getByKey(key));
    return known->second;
}

FormatUnit FormatUnits::of(formulas::Range const& cells) {
    sal_Int32 key = 0;
    if (cells_in(workbook_, cells)->getPropertyValue("NumberFormat") >>= key)
        return {of_key(key), false};
    std::optional<std::string> unit;
    int left = most_cells;
    for (int row = cells.first.row; row <= cells.last.row; ++row)
        for (int column = cells.first.column; column <= cells.last.column; ++column) {
            Place const one{cells.first.sheet, row, column};
            if (--left < 0 || !(cells_in(workbook_, {one, one})->getPropertyValue("NumberFormat") >>= key))
                return {"", true};
            std::string const& here = of_key(key);
            if (unit && *unit != here)
                return {here, true};
            unit = here;
        }
    return {unit.value_or(""), false};
}

ExampleFormats formats_of(office::Office& office, ExampleSet const& set, std::filesystem::path const& folder,
                          std::uint64_t largest) {
    ExampleFormats all;
    for (std::size_t number = 0; number < set.examples.size(); ++number) {
        Example const& example = *set.examples[number];
        office::Document const now = opened(office, example.now_file, folder / "new", largest);
        office::Document const old = opened(office, example.old_file, folder / "old", largest);
        office::asking("reading the example", [&] {
            read_new(now, number, example, all);
            read_old(old, number, example, all);
        });
    }
    return all;
}

void put_format(office::Document const& workbook, formulas::Range const& cells, NumberFormat const& format) {
    auto const formats = formats_in(workbook);
    css::lang::Locale const locale(wide(format.language), wide(format.country), {});
    sal_Int32 key = formats->queryKey(wide(format.code), locale, false);
    if (key == -1)
        key = formats->addNew(wide(format.code), locale);
    cells_in(workbook, cells)->setPropertyValue("NumberFormat", css::uno::Any(key));
}

} // namespace hearthcell::archive
