#pragma once
// Stands in for the adapter in the empty twin: takes the same arguments and computes nothing.

#include "functions/about/the_record.hpp"
#include "functions/catalogue/catalogue.hpp"
#include "functions/catalogue/subjects.hpp"

#include <com/sun/star/uno/Any.hxx>
#include <com/sun/star/uno/Sequence.hxx>
#include <rtl/ustring.hxx>

namespace hearthcell::adapter {

using com::sun::star::uno::Any;
using com::sun::star::uno::Sequence;
using Cells = Sequence<Sequence<Any>>;

template <class... Arguments> double number(Function const&, Arguments const&...) {
    return 1;
}
template <class... Arguments> double one_number(Function const&, Arguments const&...) {
    return 1;
}
template <class... Arguments> Any anything(Function const&, Arguments const&...) {
    return Any(1.0);
}

} // namespace hearthcell::adapter
