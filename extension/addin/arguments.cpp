#include "extension/addin/arguments.hpp"

#include "extension/addin/object.hpp"

#include <rtl/string.hxx>
#include <uno/sequence2.h>

namespace hearthcell::addin {
namespace {

template <class Thing> Thing const& as(void const* value) {
    return *static_cast<Thing const*>(value);
}

template <class Element> std::span<Element const> elements(void const* sequence) {
    uno_Sequence const& all = *as<uno_Sequence*>(sequence);
    return {static_cast<Element const*>(static_cast<void const*>(all.elements)), std::size_t(all.nElements)};
}

std::string utf8(rtl_uString const& text) {
    rtl::OString bytes;
    rtl_uString2String(&bytes.pData, text.buffer, text.length, RTL_TEXTENCODING_UTF8, OUSTRING_TO_OSTRING_CVTFLAGS);
    return {bytes.getStr(), std::size_t(bytes.getLength())};
}

/// Cells give doubles only; truth values and whole numbers may come from a macro.
bool read_number(uno_Any const& given, double& number) {
    switch (given.pType->eTypeClass) {
    case typelib_TypeClass_DOUBLE:
        number = as<double>(given.pData);
        return true;
    case typelib_TypeClass_FLOAT:
        number = double(as<float>(given.pData));
        return true;
    case typelib_TypeClass_BOOLEAN:
        number = as<sal_Bool>(given.pData) != 0 ? 1 : 0;
        return true;
    case typelib_TypeClass_BYTE:
        number = as<sal_Int8>(given.pData);
        return true;
    case typelib_TypeClass_SHORT:
        number = as<sal_Int16>(given.pData);
        return true;
    case typelib_TypeClass_UNSIGNED_SHORT:
        number = as<sal_uInt16>(given.pData);
        return true;
    case typelib_TypeClass_LONG:
        number = as<sal_Int32>(given.pData);
        return true;
    case typelib_TypeClass_UNSIGNED_LONG:
        number = as<sal_uInt32>(given.pData);
        return true;
    default:
        return false;
    }
}

/// A whole column hands over a million cells, mostly empty texts: none is copied that holds nothing. In a block an
/// empty cell and a text of no length are the same.
void append_cell(Block& block, uno_Any const& cell) {
    double number = absent;
    if (cell.pType->eTypeClass == typelib_TypeClass_STRING) {
        rtl_uString const& text = *as<rtl_uString*>(cell.pData);
        if (text.length > 0) {
            block.texts.push_back({block.numbers.size(), utf8(text)});
            number = text_in_block;
        }
    } else {
        read_number(cell, number);
    }
    block.numbers.push_back(number);
}

Block block_of(void const* rows) {
    Block block;
    auto const lines = elements<uno_Sequence*>(rows);
    block.rows = lines.size();
    block.columns = lines.empty() ? 0 : std::size_t(lines[0]->nElements);
    block.numbers.reserve(block.rows * block.columns);
    for (uno_Sequence* const& line : lines)
        for (uno_Any const& cell : elements<uno_Any>(&line))
            append_cell(block, cell);
    return block;
}

bool is_block(typelib_TypeDescriptionReference const* type) {
    return type->eTypeClass == typelib_TypeClass_SEQUENCE && view(type->pTypeName) == u"[][]any";
}

/// What stands alone in a cell, or as one of a function of any number of them.
Value value_of(uno_Any const& given);

/// The only cell of a block of one.
uno_Any const* only_cell(void const* rows) {
    auto const lines = elements<uno_Sequence*>(rows);
    return lines.size() == 1 && lines[0]->nElements == 1 ? elements<uno_Any>(&lines[0]).data() : nullptr;
}

/// Where one value is wanted: that of a block of one cell. Calc hands over a lone empty cell as 0, and the one of a
/// range of one cell as an empty text. A larger block is refused, so that nothing of it is copied.
Value value_of_one_cell(void const* rows) {
    uno_Any const* const cell = only_cell(rows);
    return cell != nullptr ? value_of(*cell) : Block();
}

/// In a function of any number of them, or where a column may stand in the place of one value.
Value value_or_block(void const* rows) {
    uno_Any const* const cell = only_cell(rows);
    return cell != nullptr ? value_of(*cell) : block_of(rows);
}

Value value_of(uno_Any const& given) {
    if (double number = 0; read_number(given, number))
        return number;
    if (given.pType->eTypeClass == typelib_TypeClass_STRING)
        return utf8(*as<rtl_uString*>(given.pData));
    if (given.pType->eTypeClass == typelib_TypeClass_VOID)
        return {};
    return is_block(given.pType) ? value_or_block(given.pData) : Block(); // what no cell can hold is refused as a block
}

Value value_of(Argument const& argument, Given const& given) {
    if (given.type->eTypeClass == typelib_TypeClass_ANY)
        return value_of(as<uno_Any>(given.value));
    if (!is_block(given.type))
        return Block();
    if (takes_a_block(argument.kind))
        return block_of(given.value);
    return argument.kind == ArgumentKind::anything ? value_or_block(given.value) : value_of_one_cell(given.value);
}

/// The cell of a block of one, or what is declared as a value of any kind.
uno_Any const* only_cell(Given const& given) {
    if (given.type->eTypeClass == typelib_TypeClass_ANY)
        return &as<uno_Any>(given.value);
    return is_block(given.type) ? only_cell(given.value) : nullptr;
}

} // namespace

Scalar scalar(Argument const& argument, Given const& given) {
    uno_Any const* const cell = only_cell(given);
    bool const wants_number = argument.kind == ArgumentKind::number || argument.kind == ArgumentKind::number_or_name;
    if (wants_number && cell != nullptr && cell->pType->eTypeClass == typelib_TypeClass_DOUBLE)
        return {as<double>(cell->pData)};
    return read_scalar(argument, value_of(argument, given));
}

void append(std::vector<Value>& values, Argument const& argument, Given const& given) {
    if (argument.kind == ArgumentKind::rest && given.type->eTypeClass == typelib_TypeClass_SEQUENCE) {
        for (uno_Any const& one : elements<uno_Any>(given.value))
            values.push_back(value_of(one));
    } else {
        values.push_back(value_of(argument, given));
    }
}

} // namespace hearthcell::addin
