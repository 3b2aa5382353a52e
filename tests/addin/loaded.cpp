#include "tests/addin/loaded.hpp"

#include <com/sun/star/uno/XComponentContext.hpp>
#include <cppuhelper/bootstrap.hxx>
#include <rtl/bootstrap.hxx>

#include <dlfcn.h>
#include <uno/lbnames.h>
#include <uno/mapping.hxx>

#include <bit>
#include <cmath>
#include <cstdint>
#include <vector>

namespace hearthcell::tests {

namespace uno = com::sun::star::uno;

namespace {

/// What an office does before it loads a component: the types are known that calls name and that exceptions are of.
void know_types() {
    static auto const context = [] {
        rtl::Bootstrap::set("URE_MORE_TYPES", "file://" OFFICE_PROGRAM "/types/offapi.rdb file://" STOVE_TYPES);
        return cppu::defaultBootstrap_InitialComponentContext();
    }();
}

} // namespace

uno_Interface* factory_of(char const* implementation) {
    know_types();
    static void* const library = ::dlopen(STOVE, RTLD_NOW | RTLD_LOCAL);
    if (library == nullptr)
        throw std::runtime_error(::dlerror());
    using Entry = void* (*)(char const*, void*, void*);
    auto const entry = reinterpret_cast<Entry>(::dlsym(library, "component_getFactory"));
    if (entry == nullptr)
        throw std::runtime_error(::dlerror());
    return static_cast<uno_Interface*>(entry(implementation, nullptr, nullptr));
}

Reference<uno::XInterface> bridged(uno_Interface* object) {
    static uno::Mapping const bridge(UNO_LB_UNO, CPPU_CURRENT_LANGUAGE_BINDING_NAME);
    void* const mapped = bridge.mapInterface(object, cppu::UnoType<uno::XInterface>::get());
    object->release(object);
    return {static_cast<uno::XInterface*>(mapped), SAL_NO_ACQUIRE};
}

Reference<com::sun::star::lang::XSingleComponentFactory> factory() {
    return {bridged(factory_of("hearthcell.Stove")), uno::UNO_QUERY_THROW};
}

Held new_stove() {
    Held const made(factory_of("hearthcell.Stove"));
    uno_Interface* stove = nullptr;
    Reference<uno::XInterface> const no_context;
    OUString const thrown = call(made.get(), "createInstanceWithContext", cppu::UnoType<uno::XInterface>::get(), &stove,
                                 {{cppu::UnoType<uno::XInterface>::get(), &no_context}});
    return thrown.isEmpty() ? Held(stove) : throw std::runtime_error("no object");
}

OUString call(uno_Interface* object, char const* method, Type const& type_of_result, void* result,
              std::initializer_list<Argument> arguments) {
    OUString const name = OUString::createFromAscii(method);
    std::vector<typelib_MethodParameter> parameters;
    std::vector<void*> values;
    for (Argument const& argument : arguments) {
        parameters.push_back({nullptr, argument.type.getTypeLibType(), true, false});
        values.push_back(const_cast<void*>(argument.value)); // it is not written to
    }
    typelib_InterfaceMethodTypeDescription description{};
    description.aBase.aBase.eTypeClass = typelib_TypeClass_INTERFACE_METHOD;
    description.aBase.pMemberName = name.pData;
    description.pReturnTypeRef = type_of_result.getTypeLibType();
    description.nParams = sal_Int32(parameters.size());
    description.pParams = parameters.data();
    uno_Any place{};
    uno_Any* thrown = &place;
    object->pDispatcher(object, &description.aBase.aBase, result, values.data(), &thrown);
    if (thrown == nullptr)
        return {};
    OUString const type(thrown->pType->pTypeName);
    uno_any_destruct(thrown, nullptr);
    return type;
}

unsigned error_code(double number) {
    return std::isfinite(number) ? 0 : unsigned(std::bit_cast<std::uint64_t>(number) & 0xffffffff);
}

unsigned error_code(Any const& number) {
    return error_code(number.get<double>());
}

Any text(char const* words) {
    return Any(OUString::createFromAscii(words));
}

Cells column(std::initializer_list<Any> cells) {
    Cells rows(sal_Int32(cells.size()));
    sal_Int32 row = 0;
    for (Any const& cell : cells)
        rows.getArray()[row++] = Sequence<Any>(&cell, 1);
    return rows;
}

} // namespace hearthcell::tests
