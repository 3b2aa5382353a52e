#include "extension/archive/recalculation/collecting.hpp"

#include "extension/archive/recalculation/collected_columns.hpp"
#include "extension/archive/recalculation/formula_cells.hpp"
#include "extension/archive/recalculation/named_cells.hpp"
#include "extension/archive/recalculation/when.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/util/NumberFormat.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

#include <algorithm>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::narrow;

namespace hearthcell::archive {
namespace {

constexpr std::int64_t most_cells = 50'000; // of one name in one workbook
constexpr std::string_view too_many = " has more cells than the 50,000 that are collected of a workbook";

std::string unit_of_call(std::string const& formula) {
    Function const* const function = formulas::only_call(formula);
    if (function == nullptr)
        return {};
    auto const& parts = function->result.parts;
    return std::string(unit_of(parts.empty() ? function->result.measure : parts[0].measure));
}

/// Which number formats show days; each is asked once.
class Days {
public:
    explicit Days(office::Document const& workbook) : formats_(workbook.model(), UNO_QUERY_THROW) {}

    bool shown_in(Reference<css::uno::XInterface> const& cells) {
        sal_Int32 key = 0;
        if (!(Reference<css::beans::XPropertySet>(cells, UNO_QUERY_THROW)->getPropertyValue("NumberFormat") >>= key))
            return false;
        auto const known = keys_.find(key);
        if (known != keys_.end())
            return known->second;
        sal_Int16 type = 0;
        formats_->getNumberFormats()->getByKey(key)->getPropertyValue("Type") >>= type;
        return keys_[key] = (type & css::util::NumberFormat::DATE) != 0;
    }

    /// Of the cells of a column: all of one format, or each for itself.
    static bool differ(Reference<css::table::XCellRange> const& column) {
        sal_Int32 key = 0;
        return !(Reference<css::beans::XPropertySet>(column, UNO_QUERY_THROW)->getPropertyValue("NumberFormat") >>=
                 key);
    }

private:
    Reference<css::util::XNumberFormatsSupplier> formats_;
    std::map<sal_Int32, bool> keys_;
};

/// The fields of one name, row by row.
class Fields {
public:
    Fields(Target const& target, Days& days) : target_(target), days_(days) {}

    std::vector<CollectedRow> read() {
        auto const values = values_in(target_.cells);
        auto const formulas =
            Reference<css::sheet::XCellRangeFormula>(target_.cells, UNO_QUERY_THROW)->getFormulaArray();
        std::vector<CollectedRow> rows(values.size());
        for (std::size_t row = 0; row < values.size(); ++row)
            for (std::size_t column = 0; column < values[row].size(); ++column)
                rows[row].push_back({written(values[row][column]),
                                     unit_of_call(narrow(formulas[sal_Int32(row)][sal_Int32(column)])), true});
        for (std::size_t column = 0; column < values[0].size(); ++column)
            write_days(values, column, rows);
        return rows;
    }

private:
    void write_days(std::vector<std::vector<Value>> const& values, std::size_t column,
                    std::vector<CollectedRow>& rows) {
        auto const at = static_cast<sal_Int32>(column);
        auto const last = static_cast<sal_Int32>(values.size()) - 1;
        auto const cells = target_.cells->getCellRangeByPosition(at, 0, at, last);
        bool const differ = Days::differ(cells);
        if (!differ && !days_.shown_in(cells))
            return;
        for (std::size_t row = 0; row < values.size(); ++row)
            if (auto const* const number = std::get_if<double>(&values[row][column]))
                if (!differ || days_.shown_in(target_.cells->getCellByPosition(at, static_cast<sal_Int32>(row))))
                    rows[row][column].value = written_day(*number);
    }

    Target const& target_;
    Days& days_;
};

struct Named {
    bool found = false;
    std::vector<CollectedRow> rows = {};
    bool block = false;
};

Named read(office::Document const& workbook, std::string const& name, bool is_block, Days& days,
           std::vector<Problem>& problems) {
    auto const target = target_of(workbook, name);
    if (!target)
        return {};
    if (target->constant.is())
        return {true, {{{narrow(target->constant->getContent()), {}, true}}}};
    auto const& [first, last] = target->place;
    if (std::int64_t{last.row - first.row + 1} * (last.column - first.column + 1) > most_cells) {
        problems.push_back({Reason::not_collected, name + std::string(too_many)});
        return {true};
    }
    if (!is_block && !target->is_one_cell()) {
        problems.push_back({Reason::not_collected, name + " is a block of cells; ask for it as Sheet.A5:P14"});
        return {true};
    }
    Named named{true, Fields(*target, days).read(), is_block};
    if (is_block)
        for (std::size_t row = 0; row < named.rows.size(); ++row)
            named.rows[row].insert(named.rows[row].begin(),
                                   {std::to_string(first.row + 1 + static_cast<int>(row)), {}, true});
    return named;
}

/// One row of the table from the same row of all that was read; whether any block has something in it.
bool put_together(std::vector<CollectedColumn> const& columns, std::vector<Named> const& all, std::size_t at,
                  CollectedRow& row) {
    bool any = false;
    row.assign(columns.size(), {});
    for (std::size_t column = 0, in_name = 0; column < columns.size(); ++column) {
        in_name = column > 0 && columns[column].name == columns[column - 1].name ? in_name + 1 : 0;
        Named const& named = all[columns[column].name];
        std::size_t const from = named.block ? at : 0;
        if (from < named.rows.size())
            row[column] = named.rows[from].at(in_name);
        row[column].found = named.found;
        any = any || (named.block && !columns[column].row_number && !row[column].value.empty());
    }
    return any;
}

} // namespace

std::vector<CollectedRow> collect(office::Document const& workbook, std::vector<std::string> const& names,
                                  std::vector<Problem>& problems) {
    return office::asking("collecting results", [&] {
        Days days(workbook);
        auto const columns = columns_of(names);
        std::vector<Named> all;
        std::size_t height = 1;
        for (std::size_t name = 0; name < names.size(); ++name) {
            bool const is_block = std::any_of(columns.begin(), columns.end(), [&](CollectedColumn const& column) {
                return column.name == name && column.row_number;
            });
            all.push_back(read(workbook, names[name], is_block, days, problems));
            height = std::max(height, all.back().rows.size());
        }
        std::vector<CollectedRow> table;
        CollectedRow row;
        for (std::size_t at = 0; at < height; ++at)
            if (put_together(columns, all, at, row))
                table.push_back(row);
        if (table.empty()) {
            put_together(columns, all, 0, row);
            table.push_back(row);
        }
        return table;
    });
}

} // namespace hearthcell::archive
