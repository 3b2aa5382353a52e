#include "extension/addin/adapter.hpp"

#include "functions/number/meaning.hpp"

#include <rtl/string.hxx>

#include <bit>

namespace hearthcell::adapter {
namespace {

using com::sun::star::uno::TypeClass_DOUBLE;
using com::sun::star::uno::TypeClass_STRING;
using com::sun::star::uno::TypeClass_VOID;
using rtl::OUString;

/// Calc's own error codes. It reads them from the low bits of a NaN, so that no exception has to be thrown.
constexpr std::uint64_t code_of(Error error) {
    switch (error) {
    case Error::value:
        return 519;
    case Error::number:
        return 503;
    case Error::not_available:
        return 32767;
    case Error::parameters:
        return 504;
    }
    return 519;
}

std::string utf8(OUString const& text) {
    rtl::OString const bytes = rtl::OUStringToOString(text, RTL_TEXTENCODING_UTF8);
    return {bytes.getStr(), std::size_t(bytes.getLength())};
}

OUString utf16(std::string const& text) {
    return OUString::fromUtf8(rtl::OString(text.data(), sal_Int32(text.size())));
}

/// Booleans and whole numbers do not come from cells, but may from a macro.
bool read_number(Any const& given, double& number) {
    if (given.getValueTypeClass() == TypeClass_DOUBLE) {
        number = *static_cast<double const*>(given.getValue());
        return true;
    }
    return given.getValueTypeClass() != TypeClass_STRING && (given >>= number);
}

/// The text in an Any that holds one: a whole column hands over a million of them, mostly empty, so none is copied.
OUString const& text_in(Any const& cell) {
    return *static_cast<OUString const*>(cell.getValue());
}

/// In a block an empty cell and a text of no length are the same.
void append_cell(Block& block, Any const& cell) {
    com::sun::star::uno::TypeClass const kind = cell.getValueTypeClass();
    if (kind == TypeClass_DOUBLE) {
        block.numbers.push_back(*static_cast<double const*>(cell.getValue()));
    } else if (kind == TypeClass_STRING) {
        OUString const& text = text_in(cell);
        if (!text.isEmpty())
            block.texts.push_back({block.numbers.size(), utf8(text)});
        block.numbers.push_back(text.isEmpty() ? absent : text_in_block);
    } else {
        double number = 0;
        block.numbers.push_back(read_number(cell, number) ? number : absent);
    }
}

} // namespace

Scalar scalar(Argument const& argument, Any const& given) {
    if (given.getValueTypeClass() == TypeClass_DOUBLE && argument.kind == ArgumentKind::number)
        return {*static_cast<double const*>(given.getValue())};
    if (given.getValueTypeClass() == TypeClass_VOID && argument.kind == ArgumentKind::number)
        return {argument.optional ? Scalar{argument.fallback} : Scalar{absent, Reason::argument_missing}};
    return read_scalar(argument, value_of(given));
}

Value value_of(OUString const& given) {
    return utf8(given);
}

Value value_of(Cells const& given) {
    Block block;
    block.rows = std::size_t(given.getLength());
    block.columns = given.hasElements() ? std::size_t(given[0].getLength()) : 0;
    block.numbers.reserve(block.rows * block.columns);
    for (Sequence<Any> const& row : given)
        for (Any const& cell : row)
            append_cell(block, cell);
    return block;
}

Value value_of(Any const& given) {
    double number = 0;
    if (read_number(given, number))
        return number;
    if (OUString text; given >>= text)
        return utf8(text);
    Cells cells;
    if (!(given >>= cells))
        return {}; // omitted; nothing else can arrive here
    Value block = value_of(cells);
    Block const& only = std::get<Block>(block);
    bool const one_number = only.numbers.size() == 1 && only.texts.empty() && !is_absent(only.numbers[0]);
    return one_number ? Value(only.numbers[0]) : block;
}

double cell_error(Failure const& why) {
    auto const bits = std::bit_cast<std::uint64_t>(failure(why.reason, why.argument));
    return std::bit_cast<double>(bits | code_of(error_of(why.reason)));
}

double cell_number(Outcome const& outcome) {
    if (double const* number = std::get_if<double>(&outcome))
        return *number;
    Failure const* why = std::get_if<Failure>(&outcome);
    return cell_error(why != nullptr ? *why : Failure{Reason::internal});
}

namespace {

Any cell_value(double number) {
    if (is_absent(number))
        return Any(OUString());
    return Any(cell_number(number));
}

Any cell_value(Block const& block) {
    Cells cells(sal_Int32(block.rows));
    for (std::size_t row = 0; row < block.rows; ++row) {
        Sequence<Any>& line = cells.getArray()[row];
        line.realloc(sal_Int32(block.columns));
        for (std::size_t column = 0; column < block.columns; ++column)
            line.getArray()[column] = cell_value(block.numbers[row * block.columns + column]);
    }
    for (Block::Text const& text : block.texts)
        cells.getArray()[text.place / block.columns].getArray()[text.place % block.columns] = Any(utf16(text.text));
    return Any(cells);
}

} // namespace

Any cell_value(Outcome const& outcome) {
    if (Block const* block = std::get_if<Block>(&outcome))
        return cell_value(*block);
    if (std::string const* text = std::get_if<std::string>(&outcome))
        return Any(utf16(*text));
    return Any(cell_number(outcome));
}

} // namespace hearthcell::adapter
