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

/// One value, declared as a block of which this is the only cell, or as a value of any kind. Calc would turn a text
/// into a number, by the office's language, where a number is declared. Allocates nothing unless it is a text.
Scalar scalar(Argument const& argument, Given const& given);

/// An argument of any kind. What the open end of a function of any number of them holds comes one after the other.
void append(std::vector<Value>& values, Argument const& argument, Given const& given);

} // namespace hearthcell::addin
