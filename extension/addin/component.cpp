// The UNO component, named in the package's components file: what makes the add-in when LibreOffice asks for it.

#include "extension/addin/identity.hpp"
#include "extension/addin/refusal.hpp"
#include "extension/addin/stove.hpp"

#include <uno/sequence2.h>

#include <cstring>

namespace hearthcell::addin {
namespace {

class Factory final : public Object {
public:
    Factory() : Object({"com.sun.star.lang.XSingleComponentFactory"}) {}

private:
    bool carry_out(Call const& call) const override {
        std::u16string_view const name = call.name();
        if (name == u"createInstanceWithArgumentsAndContext")
            refuse_arguments(**static_cast<uno_Sequence**>(call.arguments[0]));
        else if (name != u"createInstanceWithContext")
            return false;
        *static_cast<uno_Interface**>(call.result) = (new Stove)->face();
        return true;
    }

    static void refuse_arguments(uno_Sequence const& given) {
        if (given.nElements > 0)
            throw Refusal{illegal_argument, "Hearthcell's cell functions are made without arguments"};
    }
};

void* make_factory(char const* implementation) noexcept {
    try {
        return std::strcmp(implementation, service) == 0 ? (new Factory)->face() : nullptr;
    } catch (...) { // no memory: LibreOffice says that there is no factory
        return nullptr;
    }
}

} // namespace
} // namespace hearthcell::addin

// The only symbol that the library exports.
extern "C" SAL_DLLPUBLIC_EXPORT void* SAL_CALL component_getFactory(char const* implementation, void*, void*) {
    return hearthcell::addin::make_factory(implementation);
}
