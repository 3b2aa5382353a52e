// The UNO component: hearthcell.Stove, a Calc add-in whose methods are made from the catalogue.

#include "extension/addin/adapter.hpp"

#include <com/sun/star/lang/XServiceInfo.hpp>
#include <com/sun/star/lang/XServiceName.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <cppuhelper/implbase3.hxx>
#include <cppuhelper/supportsservice.hxx>
#include <hearthcell/XStove.hpp>

namespace {

using com::sun::star::uno::Any;
using com::sun::star::uno::Sequence;
using hearthcell::adapter::Cells;
using rtl::OUString;
namespace adapter = hearthcell::adapter;
namespace lang = com::sun::star::lang;

constexpr char service[] = "hearthcell.Stove";

class Stove final : public cppu::WeakImplHelper3<hearthcell::XStove, lang::XServiceName, lang::XServiceInfo> {
public:
#include "stove_methods.inc"

    OUString SAL_CALL getServiceName() override {
        return service;
    }
    OUString SAL_CALL getImplementationName() override {
        return service;
    }
    sal_Bool SAL_CALL supportsService(OUString const& name) override {
        return cppu::supportsService(this, name);
    }
    Sequence<OUString> SAL_CALL getSupportedServiceNames() override {
        Sequence<OUString> names(2);
        names[0] = "com.sun.star.sheet.AddIn";
        names[1] = service;
        return names;
    }
};

} // namespace

// Named in the package's components file; with the entry point below the only symbol that the library exports.
extern "C" SAL_DLLPUBLIC_EXPORT com::sun::star::uno::XInterface*
hearthcell_stove_create(com::sun::star::uno::XComponentContext*, Sequence<Any> const&) {
    return cppu::acquire(new Stove);
}
