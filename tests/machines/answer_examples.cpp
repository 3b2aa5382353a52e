// answer_examples LIBRARY: loads the add-in's library as LibreOffice would, and puts every example of the catalogue to
// it through UNO's binary interface, as Calc would. Prints how many agree; fails where one does not.

#include "functions/catalogue/catalogue.hpp"
#include "support/cells.hpp"

#include <rtl/ustring.h>
#include <typelib/typedescription.h>
#include <uno/any2.h>
#include <uno/dispatcher.h>
#include <uno/sequence2.h>

#ifdef _WIN32
#include <windows.h>
#else
#include <dlfcn.h>
#endif

#include <bit>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstring>
#include <memory>
#include <string>
#include <vector>

namespace hearthcell::tests {
namespace {

using GetFactory = void*(SAL_CALL*)(char const*, void*, void*);

GetFactory load(char const* library) {
#ifdef _WIN32
    HMODULE const handle = LoadLibraryA(library);
    void* const found =
        handle == nullptr ? nullptr : reinterpret_cast<void*>(GetProcAddress(handle, "component_getFactory"));
#else
    void* const handle = dlopen(library, RTLD_NOW);
    void* const found = handle == nullptr ? nullptr : dlsym(handle, "component_getFactory");
#endif
    return reinterpret_cast<GetFactory>(found);
}

typelib_TypeDescriptionReference* type(typelib_TypeClass kind) {
    return *typelib_static_type_getByTypeClass(kind);
}

typelib_TypeDescriptionReference* sequence_type(char const* name) {
    typelib_TypeDescriptionReference* made = nullptr;
    typelib_typedescriptionreference_newByAsciiName(&made, typelib_TypeClass_SEQUENCE, name);
    return made;
}

/// Kept for all calls.
struct Types {
    typelib_TypeDescriptionReference* any = type(typelib_TypeClass_ANY);
    typelib_TypeDescriptionReference* number = type(typelib_TypeClass_DOUBLE);
    typelib_TypeDescriptionReference* row = sequence_type("[]any");
    typelib_TypeDescriptionReference* block = sequence_type("[][]any");
};
Types const& types() {
    static Types const all;
    return all;
}

uno_Any any_of(double number) {
    uno_Any any;
    uno_type_any_construct(&any, &number, types().number, nullptr);
    return any;
}

uno_Any any_of(std::string_view text) {
    rtl_uString* wide = nullptr;
    rtl_convertStringToUString(&wide, text.data(), sal_Int32(text.size()), RTL_TEXTENCODING_UTF8, 0);
    uno_Any any;
    uno_type_any_construct(&any, static_cast<void*>(&wide), type(typelib_TypeClass_STRING), nullptr);
    return any;
}

/// In a column an empty cell is an empty text.
uno_Sequence* block_of(Cell const& cell) {
    std::vector<uno_Any> cells;
    if (cell.kind == CellKind::number)
        cells.push_back(any_of(cell.number));
    else if (cell.kind == CellKind::text)
        cells.push_back(any_of(cell.text));
    for (double const reading : cell.column)
        cells.push_back(std::isnan(reading) ? any_of(std::string_view()) : any_of(reading));
    uno_Sequence* rows = nullptr;
    uno_type_sequence_construct(&rows, types().block, nullptr, sal_Int32(cells.size()), nullptr);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        uno_Sequence*& row = reinterpret_cast<uno_Sequence**>(rows->elements)[i];
        uno_type_sequence_realloc(&row, types().row, 1, nullptr, nullptr);
        uno_Any& place = reinterpret_cast<uno_Any*>(row->elements)[0];
        uno_type_any_assign(&place, cells[i].pData, cells[i].pType, nullptr, nullptr);
    }
    return rows;
}

uno_Any any_of(Cell const& cell) {
    if (cell.kind == CellKind::number)
        return any_of(cell.number);
    if (cell.kind == CellKind::text)
        return any_of(cell.text);
    uno_Any any;
    if (cell.kind == CellKind::omitted) {
        uno_type_any_construct(&any, nullptr, nullptr, nullptr);
        return any;
    }
    uno_Sequence* rows = block_of(cell);
    uno_type_any_construct(&any, static_cast<void*>(&rows), types().block, nullptr);
    return any;
}

/// One call: its description and its arguments, each in the way that the package's types declare it.
class Called {
public:
    Called(std::string_view method, typelib_TypeDescriptionReference* returns) {
        rtl_uString* name = nullptr;
        rtl_convertStringToUString(&name, method.data(), sal_Int32(method.size()), RTL_TEXTENCODING_UTF8, 0);
        method_.aBase.aBase.eTypeClass = typelib_TypeClass_INTERFACE_METHOD;
        method_.aBase.pMemberName = name;
        method_.pReturnTypeRef = returns;
    }

    template <class Value> void add(typelib_TypeDescriptionReference* kind, Value value) {
        parameters_.push_back({nullptr, kind, 1, 0});
        auto kept = std::make_shared<Value>(value);
        places_.push_back(kept.get());
        kept_.push_back(kept);
    }

    /// Whether it went without an exception.
    bool carry_out(uno_Interface* object, void* result) {
        method_.nParams = sal_Int32(parameters_.size());
        method_.pParams = parameters_.data();
        uno_Any place;
        uno_Any* exception = &place;
        object->pDispatcher(object, &method_.aBase.aBase, result, places_.data(), &exception);
        return exception == nullptr;
    }

private:
    typelib_InterfaceMethodTypeDescription method_{};
    std::vector<typelib_MethodParameter> parameters_;
    std::vector<void*> places_;
    std::vector<std::shared_ptr<void>> kept_;
};

void add_arguments(Called& call, Function const& function, Example const& example) {
    std::size_t const given = example.arguments.size();
    for (std::size_t i = 0; i < function.arguments.size(); ++i) {
        Cell const cell = i < given ? example.arguments[i] : Cell();
        if (function.arguments[i].kind == ArgumentKind::rest) {
            uno_Sequence* further = nullptr;
            std::size_t const count = given > i ? given - i : 0;
            uno_type_sequence_construct(&further, types().row, nullptr, sal_Int32(count), nullptr);
            for (std::size_t k = 0; k < count; ++k)
                reinterpret_cast<uno_Any*>(further->elements)[k] = any_of(example.arguments[i + k]);
            call.add(types().row, further);
        } else if (function.arguments[i].optional) {
            call.add(types().any, any_of(cell));
        } else {
            call.add(types().block, block_of(cell));
        }
    }
}

std::uint32_t code_of(Error error) {
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
    return 0;
}

bool agrees(double number, Expected const& expected) {
    if (expected.kind == ExpectedKind::error)
        return std::isnan(number) && std::uint32_t(std::bit_cast<std::uint64_t>(number)) == code_of(expected.error);
    return expected.kind == ExpectedKind::number && std::abs(number - expected.number) <= expected.tolerance;
}

bool agrees(uno_Any const& any, Expected const& expected) {
    if (any.pType->eTypeClass == typelib_TypeClass_DOUBLE)
        return agrees(*static_cast<double*>(any.pData), expected);
    if (any.pType->eTypeClass == typelib_TypeClass_STRING) {
        rtl_String* bytes = nullptr;
        rtl_uString const* const text = *static_cast<rtl_uString**>(any.pData);
        rtl_uString2String(&bytes, text->buffer, text->length, RTL_TEXTENCODING_UTF8, 0);
        return expected.kind == ExpectedKind::text && expected.text == bytes->buffer;
    }
    if (any.pType->eTypeClass != typelib_TypeClass_SEQUENCE)
        return false;
    uno_Sequence const* const rows = *static_cast<uno_Sequence**>(any.pData);
    bool const is_block = expected.kind == ExpectedKind::block;
    std::size_t const columns = is_block ? expected.columns : 1;
    Expected const* const elements = is_block ? expected.elements : &expected; // a cell shows the first
    bool all = !is_block || std::size_t(rows->nElements) == expected.rows;
    for (std::size_t i = 0; all && i < (is_block ? expected.rows * columns : 1); ++i) {
        uno_Sequence const* const row = reinterpret_cast<uno_Sequence* const*>(rows->elements)[i / columns];
        all = std::size_t(row->nElements) > i % columns &&
              agrees(reinterpret_cast<uno_Any const*>(row->elements)[i % columns], elements[i]);
    }
    return all;
}

bool answers(uno_Interface* object, Function const& function, Example const& example) {
    if (std::holds_alternative<Numeric>(function.kernel)) {
        Called call(function.stored, types().number);
        add_arguments(call, function, example);
        double number = 0;
        return call.carry_out(object, &number) && agrees(number, example.expected);
    }
    Called call(function.stored, types().any);
    add_arguments(call, function, example);
    uno_Any result;
    return call.carry_out(object, &result) && agrees(result, example.expected);
}

uno_Interface* make(uno_Interface* factory) {
    Called call("createInstanceWithContext", type(typelib_TypeClass_INTERFACE));
    call.add(type(typelib_TypeClass_INTERFACE), static_cast<uno_Interface*>(nullptr));
    uno_Interface* object = nullptr;
    return call.carry_out(factory, static_cast<void*>(&object)) ? object : nullptr;
}

int answer_all(uno_Interface* object) {
    int functions = 0, right = 0, wrong = 0;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions) {
            ++functions;
            for (Example const& example : function.examples) {
                bool const agreed = answers(object, function, example);
                ++(agreed ? right : wrong);
                if (!agreed)
                    std::printf("%s: an example has another answer\n", std::string(function.name).c_str());
            }
        }
    std::printf("%d functions: %d examples agree, %d do not\n", functions, right, wrong);
    return wrong == 0 && right > functions ? 0 : 1;
}

} // namespace
} // namespace hearthcell::tests

int main(int count, char** words) {
    using namespace hearthcell::tests;
    GetFactory const get_factory = count == 2 ? load(words[1]) : nullptr;
    void* const factory = get_factory == nullptr ? nullptr : get_factory("hearthcell.Stove", nullptr, nullptr);
    uno_Interface* const object = factory == nullptr ? nullptr : make(static_cast<uno_Interface*>(factory));
    if (object == nullptr) {
        std::puts("the library cannot be loaded");
        return 2;
    }
    return answer_all(object);
}
