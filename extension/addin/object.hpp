#pragma once
// An object of UNO's binary interface: it counts its references, tells which interfaces it has, and is called by the
// name of a method. Its one face stands for all of its interfaces, since what is called comes with every call.

#include "extension/addin/type.hpp"

#include <uno/dispatcher.h>

#include <atomic>
#include <initializer_list>
#include <string_view>
#include <vector>

namespace hearthcell::addin {

inline std::u16string_view view(rtl_uString const* text) {
    return {reinterpret_cast<char16_t const*>(text->buffer), std::size_t(text->length)};
}

/// One call. The place of the result holds nothing yet, and the arguments stay the caller's.
struct Call {
    typelib_InterfaceMethodTypeDescription const& method;
    void* result;
    void** arguments;

    [[nodiscard]] std::u16string_view name() const { return view(method.aBase.pMemberName); }
};

/// Born with one reference, and gone with the last. Calls may come from several threads at once.
class Object {
public:
    struct Face : uno_Interface {
        Object* owner;
    };

    Object(Object const&) = delete;
    Object& operator=(Object const&) = delete;

    /// What UNO holds of it.
    uno_Interface* face() { return &face_; }

    void hold() noexcept { references_.fetch_add(1, std::memory_order_relaxed); }
    void let_go() noexcept;

    /// Lets nothing out but an exception of UNO in its place, which else becomes null.
    void be_called(typelib_TypeDescription const* member, void* result, void** arguments, uno_Any** exception) noexcept;

protected:
    /// The names of its interfaces besides XInterface and XTypeProvider, which every object has.
    explicit Object(std::initializer_list<char const*> interfaces);
    virtual ~Object() = default;

    /// Whether there is such a method, which then has been carried out.
    virtual bool carry_out(Call const& call) const = 0;

private:
    bool carry_out_for_any_object(Call const& call);
    void query(Call const& call);
    void list_interfaces(void* result) const;

    Face face_;
    std::atomic<unsigned> references_ = 1;
    std::vector<Type> interfaces_;
};

} // namespace hearthcell::addin
