#include "extension/addin/stove.hpp"

#include "extension/addin/cell_call.hpp"
#include "extension/addin/identity.hpp"
#include "extension/addin/sequence.hpp"

#include "functions/catalogue/catalogue.hpp"

#include <rtl/ustring.hxx>

#include <algorithm>

namespace hearthcell::addin {
namespace {

constexpr char add_in[] = "com.sun.star.sheet.AddIn";

void give(rtl::OUString const& text, void* result) {
    rtl_uString_acquire(text.pData);
    *static_cast<rtl_uString**>(result) = text.pData;
}

void give_service_names(void* result) {
    Type const list(typelib_TypeClass_SEQUENCE, "[]string");
    Sequence names(list, 2);
    rtl_uString_newFromAscii(names.elements<rtl_uString*>(), add_in);
    rtl_uString_newFromAscii(names.elements<rtl_uString*>() + 1, service);
    std::move(names).give(result);
}

bool is_service(rtl::OUString const& name) {
    return name.equalsAscii(service) || name.equalsAscii(add_in);
}

} // namespace

Stove::Stove() : Object({cell_functions, "com.sun.star.lang.XServiceName", "com.sun.star.lang.XServiceInfo"}) {
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            methods_.push_back({{function.stored.begin(), function.stored.end()}, &function});
    std::ranges::sort(methods_, {}, &Method::name);
}

Function const* Stove::function_called(std::u16string_view name) const {
    auto const found = std::ranges::lower_bound(methods_, name, {}, &Method::name);
    return found != methods_.end() && found->name == name ? found->function : nullptr;
}

bool Stove::carry_out(Call const& call) const {
    std::u16string_view const name = call.name();
    if (Function const* const function = function_called(name))
        call_from_cell(*function, call, results_);
    else if (name == u"getServiceName" || name == u"getImplementationName")
        give(rtl::OUString::createFromAscii(service), call.result);
    else if (name == u"getSupportedServiceNames")
        give_service_names(call.result);
    else if (name == u"supportsService")
        *static_cast<sal_Bool*>(call.result) = is_service(*static_cast<rtl_uString**>(call.arguments[0]));
    else
        return false;
    return true;
}

} // namespace hearthcell::addin
