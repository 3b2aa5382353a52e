#include "extension/addin/results.hpp"

#include "extension/addin/sequence.hpp"

#include "functions/number/meaning.hpp"

#include <rtl/ustring.hxx>

#include <bit>

namespace hearthcell::addin {
namespace {

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

rtl::OUString utf16(std::string const& text) {
    return rtl::OUString::fromUtf8(rtl::OString(text.data(), sal_Int32(text.size())));
}

void assign(uno_Any& cell, rtl::OUString text) {
    uno_type_any_assign(&cell, static_cast<void*>(&text.pData), plain(typelib_TypeClass_STRING), nullptr, nullptr);
}

void assign(uno_Any& cell, double number) {
    if (is_absent(number))
        return assign(cell, rtl::OUString());
    number = cell_number(number);
    uno_type_any_assign(&cell, &number, plain(typelib_TypeClass_DOUBLE), nullptr, nullptr);
}

} // namespace

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

void Results::make(Block const& block, uno_Any* place) const {
    Sequence rows(block_, sal_Int32(block.rows));
    auto* const lines = rows.elements<uno_Sequence*>();
    for (std::size_t row = 0; row < block.rows; ++row)
        if (!uno_type_sequence_realloc(lines + row, row_.reference(), sal_Int32(block.columns), nullptr, nullptr))
            throw std::bad_alloc();
    auto const cell = [&](std::size_t which) -> uno_Any& {
        void* const cells = lines[which / block.columns]->elements;
        return static_cast<uno_Any*>(cells)[which % block.columns];
    };
    for (std::size_t which = 0; which < block.numbers.size(); ++which)
        assign(cell(which), block.numbers[which]);
    for (Block::Text const& text : block.texts)
        assign(cell(text.place), utf16(text.text));
    uno_type_any_construct(place, static_cast<void*>(rows.place()), block_.reference(), nullptr); // takes a share
}

void Results::make(Outcome const& outcome, uno_Any* place) const {
    if (Block const* block = std::get_if<Block>(&outcome))
        return make(*block, place);
    if (std::string const* text = std::get_if<std::string>(&outcome)) {
        rtl::OUString wide = utf16(*text);
        uno_type_any_construct(place, static_cast<void*>(&wide.pData), plain(typelib_TypeClass_STRING), nullptr);
        return;
    }
    double number = cell_number(outcome);
    uno_type_any_construct(place, &number, plain(typelib_TypeClass_DOUBLE), nullptr);
}

} // namespace hearthcell::addin
