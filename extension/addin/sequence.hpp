#pragma once
// A sequence of UNO's binary interface, to be filled and handed over.

#include "extension/addin/type.hpp"

#include <uno/sequence2.h>

#include <new>

namespace hearthcell::addin {

/// Freed with this object, but for what the call that it was handed to has kept of it.
class Sequence {
public:
    /// With so many elements, each of them empty. The type must outlive it.
    Sequence(Type const& type, sal_Int32 length) : type_(type) {
        if (!uno_type_sequence_construct(&sequence_, type.reference(), nullptr, length, nullptr))
            throw std::bad_alloc();
    }
    ~Sequence() {
        if (sequence_ != nullptr)
            uno_type_destructData(static_cast<void*>(&sequence_), type_.reference(), nullptr);
    }
    Sequence(Sequence const&) = delete;
    Sequence& operator=(Sequence const&) = delete;

    template <class Element> Element* elements() {
        return static_cast<Element*>(static_cast<void*>(sequence_->elements));
    }
    uno_Sequence** place() { return &sequence_; }

    /// Into the place of a result: the caller has it from then on.
    void give(void* result) && { *static_cast<uno_Sequence**>(result) = std::exchange(sequence_, nullptr); }

private:
    Type const& type_;
    uno_Sequence* sequence_ = nullptr;
};

} // namespace hearthcell::addin
