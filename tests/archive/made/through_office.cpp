#include "through_office.hpp"

#include "flat_odf.hpp"
#include "tests/support/content.hpp"
#include "zip_writer.hpp"

#include "extension/office/file_url.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <pugixml.hpp>

#include <cstring>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace css = com::sun::star;

namespace hearthcell::tests::archive {
namespace {

struct Older {
    std::size_t sheet, row, column;
    Held stored, now;
    [[nodiscard]] std::string name() const { return cell_name(row, column); }
};

/// The results that have to be put back to what they were; `now` is what the office has just computed.
std::vector<Older> older_results(Workbook const& workbook, office::Document const& document) {
    std::vector<Older> list;
    for (std::size_t sheet = 0; sheet < workbook.sheets.size(); ++sheet) {
        auto const& rows = workbook.sheets[sheet].rows;
        for (std::size_t row = 0; row < rows.size(); ++row)
            for (std::size_t column = 0; column < rows[row].size(); ++column) {
                Cell const& cell = rows[row][column];
                if (cell.formula.empty() || cell.stored == cell.now)
                    continue;
                Older older{sheet, row, column, cell.stored, {}};
                auto const value = document.sheet(static_cast<int>(sheet)).value(older.name());
                std::visit([&](auto const& held) { older.now = held; }, value);
                list.push_back(older);
            }
    }
    return list;
}

void put_into_xlsx(std::filesystem::path const& file, std::vector<Older> const& list) {
    for (Older const& older : list) {
        std::string const entry = "xl/worksheets/sheet" + std::to_string(older.sheet + 1) + ".xml";
        pugi::xml_document xml;
        std::string const text = unzipped(file).at(entry);
        if (!xml.load_buffer(text.data(), text.size(), pugi::parse_full))
            throw std::runtime_error("no XML: " + entry);
        std::string const query = "//*[local-name()='c'][@r='" + older.name() + "']";
        pugi::xml_node cell = xml.select_node(query.c_str()).node();
        if (!cell || !cell.child("f") || !cell.child("v"))
            throw std::runtime_error("no formula " + older.name() + " in " + file.string());
        cell.remove_attribute("t");
        std::string stored;
        if (double const* const number = std::get_if<double>(&older.stored)) {
            stored = digits(*number);
        } else if (CellError const* const error = std::get_if<CellError>(&older.stored)) {
            stored = error_text(*error);
            cell.append_attribute("t") = "e";
        } else {
            stored = std::get<std::string>(older.stored);
            cell.append_attribute("t") = "str";
        }
        cell.child("v").text() = stored.c_str();
        std::ostringstream changed;
        xml.save(changed, "", pugi::format_raw);
        replace_in_zip(file, entry, changed.str());
    }
}

void append(std::string& bytes, void const* what, std::size_t size) {
    bytes.append(static_cast<char const*>(what), size);
}

/// A FORMULA record of BIFF8 goes: row, column, format (16 bits each), result (a double or an error). Looked for by
/// place and result together, which is as good as unique and has to be there exactly once.
void put_into_xls(std::filesystem::path const& file, std::vector<Older> const& list) {
    std::string bytes = content(file);
    for (Older const& older : list) {
        auto const row = static_cast<std::uint16_t>(older.row), column = static_cast<std::uint16_t>(older.column);
        std::string place, result;
        append(place, &row, sizeof row);
        append(place, &column, sizeof column);
        if (double const* const now = std::get_if<double>(&older.now)) {
            append(result, now, sizeof *now);
        } else { // 2 = an error, 0x24 = #NUM!
            if (older.now != Held(CellError{503}))
                throw std::runtime_error("cannot find " + older.name() + " in " + file.string());
            result = std::string("\x02\x00\x24\x00\x00\x00\xff\xff", 8);
        }
        double const stored = std::get<double>(older.stored);
        int found = 0;
        for (std::size_t at = bytes.find(result); at != std::string::npos; at = bytes.find(result, at + 1))
            if (at >= 6 && bytes.compare(at - 6, 4, place) == 0 && ++found == 1)
                std::memcpy(bytes.data() + at, &stored, sizeof stored);
        if (found != 1)
            throw std::runtime_error(older.name() + " is " + std::to_string(found) + " times in " + file.string());
    }
    std::ofstream out(file, std::ios::binary);
    out << bytes;
    if (!out.flush())
        throw std::runtime_error("could not write " + file.string());
}

std::filesystem::path flat_copy(Workbook const& workbook, office::Office const& office) {
    std::filesystem::path const flat = office.folder() / "to be saved.fods";
    write_odf(workbook, flat);
    return flat;
}

} // namespace

void write_through_office(Workbook const& workbook, office::Office& office, std::filesystem::path const& file) {
    office::Document document = office::Document::open(office, flat_copy(workbook, office));
    document.recalculate();
    document.save(file);
    std::vector<Older> const older = older_results(workbook, document);
    document.close();
    if (file.extension() == ".xlsx")
        put_into_xlsx(file, older);
    else
        put_into_xls(file, older);
}

void write_with_password(office::Office& office, std::filesystem::path const& flat, std::filesystem::path const& file) {
    office::Document const document = office::Document::open(office, flat);
    std::map<std::string, char const*> const filters{
        {".ods", "calc8"}, {".xlsx", "Calc MS Excel 2007 XML"}, {".xls", "MS Excel 97"}};
    auto const option = [](char const* name, css::uno::Any const& value) {
        return css::beans::PropertyValue(office::wide(name), 0, value, css::beans::PropertyState_DIRECT_VALUE);
    };
    css::uno::Any const password(office::wide("invented"));
    // The filter of .xlsx wants it in a form of its own, and saves in the clear without a word otherwise.
    css::beans::NamedValue const encryption[] = {{office::wide("CryptoType"), css::uno::Any(office::wide("Standard"))},
                                                 {office::wide("OOXPassword"), password}};
    bool const is_xlsx = file.extension() == ".xlsx";
    css::beans::PropertyValue const options[] = {
        option("FilterName", css::uno::Any(office::wide(filters.at(file.extension().string())))),
        is_xlsx ? option("EncryptionData", css::uno::Any(css::uno::Sequence<css::beans::NamedValue>(encryption, 2)))
                : option("Password", password)};
    office::asking("saving under a password", [&] {
        css::uno::Reference<css::frame::XStorable>(document.model(), css::uno::UNO_QUERY_THROW)
            ->storeToURL(office::file_url(file), css::uno::Sequence<css::beans::PropertyValue>(options, 2));
    });
}

} // namespace hearthcell::tests::archive
