#include "extension/addin/object.hpp"

#include "extension/addin/refusal.hpp"
#include "extension/addin/sequence.hpp"

namespace hearthcell::addin {
namespace {

Object& object_of(uno_Interface* face) {
    return *static_cast<Object::Face*>(face)->owner;
}

// How UNO reaches the object: functions of C.
extern "C" {
static void SAL_CALL hold_object(uno_Interface* face) {
    object_of(face).hold();
}
static void SAL_CALL let_go_of_object(uno_Interface* face) {
    object_of(face).let_go();
}
static void SAL_CALL call_object(uno_Interface* face, typelib_TypeDescription const* member, void* result,
                                 void** arguments, uno_Any** exception) {
    object_of(face).be_called(member, result, arguments, exception);
}
}

} // namespace

Object::Object(std::initializer_list<char const*> interfaces)
    : face_{{hold_object, let_go_of_object, call_object}, this} {
    interfaces_.reserve(interfaces.size() + 2);
    interfaces_.emplace_back(typelib_TypeClass_INTERFACE, "com.sun.star.uno.XInterface");
    interfaces_.emplace_back(typelib_TypeClass_INTERFACE, "com.sun.star.lang.XTypeProvider");
    for (char const* const name : interfaces)
        interfaces_.emplace_back(typelib_TypeClass_INTERFACE, name);
}

void Object::let_go() noexcept {
    if (references_.fetch_sub(1, std::memory_order_acq_rel) == 1)
        delete this;
}

void Object::be_called(typelib_TypeDescription const* member, void* result, void** arguments,
                       uno_Any** exception) noexcept {
    uno_Any* const place = *exception;
    *exception = nullptr;
    Refusal refusal{};
    try {
        if (member->eTypeClass == typelib_TypeClass_INTERFACE_METHOD) {
            Call const call{*reinterpret_cast<typelib_InterfaceMethodTypeDescription const*>(member), result,
                            arguments};
            if (carry_out(call) || carry_out_for_any_object(call))
                return;
        }
        refusal = {runtime_exception, "Hearthcell has no such method"};
    } catch (Refusal const& thrown) {
        refusal = thrown;
    } catch (...) { // only memory can have run out
        refusal = {runtime_exception, "Hearthcell has no memory for it"};
    }
    raise(refusal, place);
    *exception = place;
}

bool Object::carry_out_for_any_object(Call const& call) {
    std::u16string_view const name = call.name();
    if (name == u"queryInterface")
        query(call);
    else if (name == u"acquire")
        hold();
    else if (name == u"release")
        let_go();
    else if (name == u"getTypes")
        list_interfaces(call.result);
    else if (name == u"getImplementationId")
        Sequence(Type(typelib_TypeClass_SEQUENCE, "[]byte"), 0).give(call.result);
    else
        return false;
    return true;
}

void Object::query(Call const& call) {
    auto* const wanted = *static_cast<typelib_TypeDescriptionReference**>(call.arguments[0]);
    auto* const result = static_cast<uno_Any*>(call.result);
    for (Type const& type : interfaces_) {
        if (typelib_typedescriptionreference_equals(type.reference(), wanted)) {
            uno_Interface* found = face();
            uno_type_any_construct(result, static_cast<void*>(&found), wanted, nullptr); // holds it
            return;
        }
    }
    uno_type_any_construct(result, nullptr, nullptr, nullptr);
}

void Object::list_interfaces(void* result) const {
    Type const list(typelib_TypeClass_SEQUENCE, "[]type");
    Sequence types(list, sal_Int32(interfaces_.size()));
    for (std::size_t place = 0; place < interfaces_.size(); ++place)
        typelib_typedescriptionreference_assign(types.elements<typelib_TypeDescriptionReference*>() + place,
                                                interfaces_[place].reference());
    std::move(types).give(result);
}

} // namespace hearthcell::addin
