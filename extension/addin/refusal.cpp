#include "extension/addin/refusal.hpp"

#include "extension/addin/type.hpp"

#include <rtl/ustring.hxx>
#include <uno/dispatcher.h>

namespace hearthcell::addin {
namespace {

/// Both kinds in one: com.sun.star.lang.IllegalArgumentException adds the last member to those of every exception.
struct Members {
    rtl_uString* message;
    uno_Interface* context;
    sal_Int16 position;
};

} // namespace

void raise(Refusal const& refusal, uno_Any* place) {
    Type const type(typelib_TypeClass_EXCEPTION, refusal.type);
    rtl::OUString const words = rtl::OUString::createFromAscii(refusal.words);
    Members members{words.pData, nullptr, 0};
    uno_type_any_construct(place, &members, type.reference(), nullptr); // takes a copy
}

} // namespace hearthcell::addin
