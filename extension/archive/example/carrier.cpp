#include "extension/archive/example/carrier.hpp"

#include "extension/archive/example/readings.hpp"
#include "extension/formulas/letters.hpp"
#include "extension/formulas/moved.hpp"
#include "extension/formulas/quotes.hpp"
#include "extension/formulas/rewriting.hpp"
#include "extension/formulas/tokens.hpp"

#include <algorithm>
#include <array>

namespace hearthcell::archive {
namespace {

using formulas::TokenKind;

constexpr std::int64_t most_cells = 10'000; // of a range

/// What they read stands in no formula.
constexpr std::array<std::string_view, 9> reads_anywhere{"indirect", "offset", "address", "row", "column",
                                                         "sheet",    "cell",   "info",    "dde"};

std::string why_not(formulas::Token const& token, formulas::Reference const& reference) {
    if (!reference.file.empty())
        return std::string(token.text) + " is in another file";
    if (!reference.first.row || !reference.first.column || !reference.last.row || !reference.last.column)
        return std::string(token.text) + " is a whole row or column";
    if (reference.last.sheet.data() != reference.first.sheet.data() &&
        !formulas::is_same_name(formulas::unquoted(reference.last.sheet), formulas::unquoted(reference.first.sheet)))
        return std::string(token.text) + " is on several sheets";
    auto const [top, left, bottom, right] = formulas::block_of(reference);
    if ((std::int64_t{1} + bottom - top) * (1 + right - left) > most_cells)
        return std::string(token.text) + " is too large";
    return {};
}

formulas::Block block_of(formulas::Range const& range) {
    return {range.first.row, range.first.column, range.last.row, range.last.column};
}

} // namespace

Carrier::Carrier(SeenWorkbook const& old, int old_sheet, SeenWorkbook const& target, int sheet)
    : old_(old), target_(target), old_sheet_(old_sheet), sheet_(sheet) {}

std::variant<Carrier::Where, Refused> Carrier::of(Where const& cell) const {
    return of(old_sheet_, sheet_, cell);
}

std::variant<Carrier::Where, Refused> Carrier::of(int old_sheet, int sheet, Where const& cell) const {
    if (old_sheet == old_sheet_ && sheet == sheet_)
        if (auto const known = placed_.find(cell); known != placed_.end())
            return known->second.there;
    return Correspondence(old_.sheet(old_sheet), target_.sheet(sheet)).of(cell);
}

Carrier::Found Carrier::in_one_piece(int old_sheet, int sheet, formulas::Block const& block) const {
    std::optional<Where> moved_by;
    for (int row = block.top; row <= block.bottom; ++row)
        for (int column = block.left; column <= block.right; ++column) {
            auto const place = of(old_sheet, sheet, Where{row, column});
            if (auto const* const refused = std::get_if<Refused>(&place))
                return *refused;
            Where const to = std::get<Where>(place), by{to.first - row, to.second - column};
            if (moved_by.value_or(by) != by)
                return Refused{name_of({block.top, block.left}) + ":" + name_of({block.bottom, block.right}) +
                               " is no longer in one piece"};
            moved_by = by;
        }
    if (!has_same_borders(old_sheet, sheet, block, *moved_by))
        return Refused{name_of({block.top, block.left}) + ":" + name_of({block.bottom, block.right}) +
                       " may be longer or shorter here: what stands beside it is named otherwise"};
    return formulas::Range{{sheet, block.top + moved_by->first, block.left + moved_by->second},
                           {sheet, block.bottom + moved_by->first, block.right + moved_by->second}};
}

/// What a range reaches up to must be named as it is there: else a row or column was put in at its end.
bool Carrier::has_same_borders(int old_sheet, int sheet, formulas::Block const& block, Where const& by) const {
    LabelledSheet const &before = old_.sheet(old_sheet), &now = target_.sheet(sheet);
    if (block.top < block.bottom)
        for (int const row : {block.top - 1, block.bottom + 1})
            if (!is_same_word(before.to_the_left({row, block.left}),
                              now.to_the_left({row + by.first, block.left + by.second})))
                return false;
    if (block.left < block.right)
        for (int const column : {block.left - 1, block.right + 1})
            if (!is_same_word(before.above({block.top, column}), now.above({block.top + by.first, column + by.second})))
                return false;
    return true;
}

/// A range over the rows of a table reaches as far as its readings do, here and there.
Carrier::Found Carrier::of(int old_sheet, int sheet, formulas::Block const& block) const {
    LabelledSheet const& labels = old_.sheet(old_sheet);
    Where const first{block.top, block.left};
    auto const new_column = old_sheet == old_sheet_ ? placed_.find(first) : placed_.end();
    if (new_column != placed_.end() && new_column->second.beside && block.left == block.right &&
        block.top < block.bottom && new_column->second.beside->first == block.top) {
        int const column = new_column->second.beside->second;
        auto found = of(old_sheet, sheet, formulas::Block{block.top, column, block.bottom, column});
        if (auto* const now = std::get_if<formulas::Range>(&found))
            now->first.column = now->last.column = new_column->second.there.second;
        return found;
    }
    bool const is_in_rows = block.top < block.bottom && labels.above(first) && !labels.to_the_left(first);
    if (!is_in_rows)
        return in_one_piece(old_sheet, sheet, block);
    formulas::Block top_row = block;
    top_row.bottom = top_row.top;
    auto found = in_one_piece(old_sheet, sheet, top_row);
    auto* const now = std::get_if<formulas::Range>(&found);
    if (now == nullptr)
        return found;
    std::optional<int> last_before, last_now;
    for (int column = 0; column <= block.right - block.left; ++column) {
        auto const before = last_of_readings(old_, old_sheet, {block.top, block.left + column});
        auto const here = last_of_readings(target_, sheet, {now->first.row, now->first.column + column});
        if (!before || !here || last_before.value_or(*before) != *before || last_now.value_or(*here) != *here)
            return Refused{name_of(first) + ":" + name_of({block.bottom, block.right}) +
                           ": where its readings end here cannot be told"};
        last_before = before;
        last_now = here;
    }
    int const length = block.bottom - block.top;
    auto const above = labels.above(first);
    bool const is_from_the_top =
        labels.between(*above, first).size() + 1 == std::size_t(block.top - above->where.first);
    bool const is_all = is_from_the_top && block.bottom == *last_before;
    bool const is_as_long = *last_before - block.top == *last_now - now->first.row && block.bottom <= *last_before;
    if (!is_all && !is_as_long)
        return Refused{name_of(first) + ":" + name_of({block.bottom, block.right}) +
                       " is a part of a column that is longer or shorter here"};
    now->last.row = is_all ? *last_now : now->first.row + length;
    return found;
}

/// References to other sheets follow those sheets' labels.
Carrier::Found Carrier::of(formulas::Range const& range) const {
    if (range.first.sheet == old_sheet_)
        return of(old_sheet_, sheet_, block_of(range));
    std::optional<Found> only;
    Refused refused{"sheet '" + old_.name(range.first.sheet) + "' has no counterpart"};
    bool is_named_so = false;
    for (int sheet = 0; sheet < int(target_.size()); ++sheet) {
        if (sheet == sheet_)
            continue;
        Found found = of(range.first.sheet, sheet, block_of(range));
        if (auto const* const why = std::get_if<Refused>(&found)) {
            bool const same_name = formulas::is_same_name(target_.name(sheet), old_.name(range.first.sheet));
            if (!is_named_so)
                refused.why = target_.name(sheet) + "." + why->why;
            is_named_so = is_named_so || same_name;
        } else if (only)
            return Refused{"'" + old_.name(range.first.sheet) + "' could be '" +
                           target_.name(std::get<formulas::Range>(*only).first.sheet) + "' or '" + target_.name(sheet) +
                           "'"};
        else
            only = std::move(found);
    }
    return only ? *only : Found(refused);
}

/// A name that both workbooks define, for cells that correspond, or each for a number.
Carrier::Found Carrier::of_name(formulas::Token const& name, SeenWorkbook const& written_in) const {
    Place const here{old_sheet_, 0, 0}, there{sheet_, 0, 0};
    std::string const text(name.text);
    if (!written_in.names().meant(name, old_.name(old_sheet_)))
        return Refused{text + " cannot be carried"};
    if (!target_.names().meant(name, target_.name(sheet_)))
        return Refused{"there is no name " + text};
    auto const before = written_in.reads().of(name.text, here), now = target_.reads().of(name.text, there);
    if (before.empty() && now.empty() && written_in.reads().number_named(name, here) &&
        target_.reads().number_named(name, there))
        return formulas::Range{{-1, 0, 0}, {-1, 0, 0}};
    if (before.size() != 1 || now.size() != 1)
        return Refused{text + " is no single block of cells"};
    auto found = of(before[0]);
    if (std::holds_alternative<Refused>(found) || std::get<formulas::Range>(found) == now[0])
        return found;
    return Refused{"the name " + text + " stands for other cells"};
}

std::variant<CarriedFormula, Refused> Carrier::of(std::string_view formula, SeenWorkbook const& written_in) const {
    std::optional<Refused> refused;
    CarriedFormula carried;
    auto const refuse = [&](std::string const& why) {
        if (!refused)
            refused = Refused{why};
        return std::optional<std::string>();
    };
    carried.text = formulas::rewritten(formula, [&](formulas::Token const& token) -> std::optional<std::string> {
        if (token.kind == TokenKind::name) {
            Found const found = of_name(token, written_in);
            if (auto const* const why = std::get_if<Refused>(&found))
                return refuse(why->why);
            if (auto const& now = std::get<formulas::Range>(found); now.first.sheet >= 0)
                carried.reads.push_back({written_in.reads().of(token.text, {old_sheet_, 0, 0})[0], now});
            return std::nullopt;
        }
        if (token.kind == TokenKind::table || token.kind == TokenKind::error || token.kind == TokenKind::unknown ||
            token.kind == TokenKind::end || token.kind == TokenKind::array_open ||
            (token.kind == TokenKind::function &&
             std::ranges::find(reads_anywhere, formulas::folded(token.text)) != reads_anywhere.end()))
            return refuse(std::string(token.text) + " cannot be carried");
        if (token.kind != TokenKind::reference)
            return std::nullopt;
        formulas::Reference const reference = formulas::reference_of(token);
        if (std::string const why = why_not(token, reference); !why.empty())
            return refuse(why);
        if (written_in.names().meant(token, old_.name(old_sheet_)))
            return refuse(std::string(token.text) + " is a name and an address");
        std::string const named = formulas::unquoted(reference.first.sheet);
        int const sheet = named.empty() ? old_sheet_ : old_.number_of(named);
        if (sheet < 0)
            return refuse("there is no sheet '" + named + "'");
        auto const [top, left, bottom, right] = formulas::block_of(reference);
        formulas::Range const before{{sheet, top, left}, {sheet, bottom, right}};
        Found const found = of(before);
        if (auto const* const why = std::get_if<Refused>(&found))
            return refuse(why->why);
        auto const& now = std::get<formulas::Range>(found);
        carried.reads.push_back({before, now, !reference.first.row_fixed && !reference.last.row_fixed,
                                 !reference.first.column_fixed && !reference.last.column_fixed});
        std::string const text = formulas::with_block(token, block_of(now));
        return formulas::with_other_sheets(formulas::tokens_of(text).front(),
                                           [&](std::string const&) { return target_.name(now.first.sheet); });
    });
    if (refused)
        return *refused;
    return carried;
}

} // namespace hearthcell::archive
