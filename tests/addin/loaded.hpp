#pragma once
// The add-in, loaded into this process, and calls of it in UNO's binary form with arguments of any type.

#include <com/sun/star/lang/XSingleComponentFactory.hpp>
#include <com/sun/star/uno/Any.hxx>
#include <com/sun/star/uno/Sequence.hxx>
#include <uno/dispatcher.h>

#include <array>
#include <memory>
#include <stdexcept>

namespace hearthcell::tests {

using com::sun::star::uno::Any;
using com::sun::star::uno::Reference;
using com::sun::star::uno::Sequence;
using com::sun::star::uno::Type;
using rtl::OUString;
using Cells = Sequence<Sequence<Any>>;

/// What the library's entry point gives for the name of an implementation; null for a strange one.
uno_Interface* factory_of(char const* implementation);

/// An object of the binary interface as a C++ reference, which takes the caller's share of it.
Reference<com::sun::star::uno::XInterface> bridged(uno_Interface* object);
Reference<com::sun::star::lang::XSingleComponentFactory> factory();

/// An object of the binary interface, let go of at the end.
struct LetGo {
    void operator()(uno_Interface* object) const { object->release(object); }
};
using Held = std::unique_ptr<uno_Interface, LetGo>;
Held new_stove();

struct Argument {
    Type type;
    void const* value;
};

/// Calls a method as if it had been declared so. Gives the type of the exception, empty where there was none.
OUString call(uno_Interface* object, char const* method, Type const& type_of_result, void* result,
              std::initializer_list<Argument> arguments);

template <class Given> Argument argument(Given const& given) {
    return {cppu::UnoType<Given>::get(), &given};
}

template <class... Given> double number_of(uno_Interface* object, char const* method, Given const&... given) {
    double result = 0;
    OUString const thrown = call(object, method, cppu::UnoType<double>::get(), &result, {argument(given)...});
    return thrown.isEmpty() ? result : throw std::runtime_error("an exception of UNO");
}

template <class... Given> Any any_of(uno_Interface* object, char const* method, Given const&... given) {
    alignas(Any) std::array<std::byte, sizeof(Any)> place;
    auto* const result = reinterpret_cast<Any*>(place.data());
    OUString const thrown = call(object, method, cppu::UnoType<Any>::get(), result, {argument(given)...});
    if (!thrown.isEmpty())
        throw std::runtime_error("an exception of UNO");
    Any const copy = *result;
    result->~Any();
    return copy;
}

/// Calc's error code in a number; 0 where it is a finite one.
unsigned error_code(double number);
unsigned error_code(Any const& number);

Any text(char const* words);
Cells column(std::initializer_list<Any> cells);

inline constexpr unsigned not_a_result = 503, parameter_list = 504, not_a_value = 519, not_available = 32767;

} // namespace hearthcell::tests
