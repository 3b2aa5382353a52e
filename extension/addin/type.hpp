#pragma once
// A type of UNO's binary interface.

#include <typelib/typedescription.h>

#include <utility>

namespace hearthcell::addin {

/// One that lives as long as the office.
inline typelib_TypeDescriptionReference* plain(typelib_TypeClass kind) {
    return *typelib_static_type_getByTypeClass(kind);
}

/// One that is known by its name, and given back with this object.
class Type {
public:
    Type(typelib_TypeClass kind, char const* name) {
        typelib_typedescriptionreference_newByAsciiName(&reference_, kind, name);
    }
    ~Type() {
        if (reference_ != nullptr)
            typelib_typedescriptionreference_release(reference_);
    }
    Type(Type&& other) noexcept : reference_(std::exchange(other.reference_, nullptr)) {}
    Type(Type const&) = delete;
    Type& operator=(Type const&) = delete;

    [[nodiscard]] typelib_TypeDescriptionReference* reference() const { return reference_; }

private:
    typelib_TypeDescriptionReference* reference_ = nullptr;
};

} // namespace hearthcell::addin
