#pragma once
// What a cell hands over, in UNO's binary form, as the functions take it. Nothing of it is kept.

#include "functions/call/scalar.hpp"

#include <typelib/typedescription.h>
#include <uno/any2.h>

namespace hearthcell::addin {

/// One argument of a call: what it was declared as, and where it stands.
struct Given {
    typelib_TypeDescriptionReference const* type;
    void const* value;
};

/// Calc has already turned into a number, or into an error, what is declared as a number; all else is looked at before
/// it is believed. Allocates nothing unless it is a text or a block.
Scalar scalar(Argument const& argument, Given const& given);

/// An argument of any kind. For the last one of a function of any number of them, it is one after the other.
void append(std::vector<Value>& values, Argument const& argument, Given const& given);

} // namespace hearthcell::addin
