// The UNO component: hearthcell.Menu, which LibreOffice hands the commands vnd.hearthcell:… to.

#include "extension/menu/run.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/frame/DispatchResultState.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XNotifyingDispatch.hpp>
#include <com/sun/star/lang/XInitialization.hpp>
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <cppuhelper/implbase4.hxx>
#include <cppuhelper/supportsservice.hxx>
#include <cppuhelper/weakref.hxx>

namespace {

namespace css = com::sun::star;
using css::beans::PropertyValue;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using rtl::OUString;
namespace menu = hearthcell::menu;

constexpr char implementation[] = "hearthcell.Menu";
constexpr char service[] = "com.sun.star.frame.ProtocolHandler";

menu::Entry const* entry_of(css::util::URL const& url) {
    for (menu::Entry const& entry : menu::entries)
        if (url.Complete == menu::wide(menu::url_of(entry)))
            return &entry;
    return nullptr;
}

sal_Int16 state_of(menu::Answer const& answer) {
    using namespace css::frame::DispatchResultState;
    if (answer.done)
        return SUCCESS;
    return answer.words.isEmpty() ? DONTKNOW : FAILURE; // nothing to say: the user gave it up
}

class Menu final : public cppu::WeakImplHelper4<css::frame::XDispatchProvider, css::frame::XNotifyingDispatch,
                                                css::lang::XInitialization, css::lang::XServiceInfo> {
public:
    explicit Menu(Reference<css::uno::XComponentContext> const& office) : context_(office) {}

    void SAL_CALL initialize(Sequence<Any> const& arguments) override {
        if (arguments.hasElements())
            frame_ = Reference<css::frame::XFrame>(arguments[0], css::uno::UNO_QUERY);
    }

    Reference<css::frame::XDispatch> SAL_CALL queryDispatch(css::util::URL const& url, OUString const&,
                                                            sal_Int32) override {
        return entry_of(url) != nullptr ? this : nullptr;
    }
    Sequence<Reference<css::frame::XDispatch>>
        SAL_CALL queryDispatches(Sequence<css::frame::DispatchDescriptor> const& wanted) override {
        Sequence<Reference<css::frame::XDispatch>> found(wanted.getLength());
        for (sal_Int32 place = 0; place < wanted.getLength(); ++place)
            found.getArray()[place] = queryDispatch(wanted[place].FeatureURL, {}, 0);
        return found;
    }

    void SAL_CALL dispatch(css::util::URL const& url, Sequence<PropertyValue> const& arguments) override {
        dispatchWithNotification(url, arguments, {});
    }
    void SAL_CALL dispatchWithNotification(css::util::URL const& url, Sequence<PropertyValue> const& arguments,
                                           Reference<css::frame::XDispatchResultListener> const& listener) override {
        // The frame can be closed while the command runs, and this object would go with it.
        Reference<css::frame::XNotifyingDispatch> const alive(this);
        menu::Answer answer{false, {}};
        if (menu::Entry const* const entry = entry_of(url))
            answer = carry_out(entry->command, arguments);
        if (listener.is())
            listener->dispatchFinished({alive, state_of(answer), Any(answer.words)});
    }

    /// The commands are always there: what they cannot do they say in words.
    void SAL_CALL addStatusListener(Reference<css::frame::XStatusListener> const& listener,
                                    css::util::URL const& url) override {
        if (listener.is())
            listener->statusChanged(
                {Reference<css::uno::XInterface>(static_cast<cppu::OWeakObject*>(this)), url, {}, true, false, {}});
    }
    void SAL_CALL removeStatusListener(Reference<css::frame::XStatusListener> const&, css::util::URL const&) override {}

    OUString SAL_CALL getImplementationName() override { return implementation; }
    sal_Bool SAL_CALL supportsService(OUString const& name) override { return cppu::supportsService(this, name); }
    Sequence<OUString> SAL_CALL getSupportedServiceNames() override {
        OUString const name(service);
        return {&name, 1};
    }

private:
    /// Target: the address of the copy or of the results. Source: of the folder to be recalculated, or of the sheet to
    /// start from. Original: of the sheet that was started from. Confirmed: the values that go into every sheet hold.
    /// Unattended: no dialogs, documents out of sight.
    menu::Answer carry_out(menu::Command command, Sequence<PropertyValue> const& arguments) const {
        menu::Surroundings surroundings{context_, Reference<css::frame::XFrame>(frame_),
                                        menu::language_of_office(context_)};
        OUString target;
        for (PropertyValue const& argument : arguments) {
            if (argument.Name == "Target")
                argument.Value >>= target;
            else if (argument.Name == "Source")
                argument.Value >>= surroundings.source;
            else if (argument.Name == "Original")
                argument.Value >>= surroundings.original;
            else if (argument.Name == "Confirmed")
                argument.Value >>= surroundings.confirmed;
            else if (argument.Name == "Unattended")
                argument.Value >>= surroundings.unattended;
        }
        return run(command, surroundings, target);
    }

    Reference<css::uno::XComponentContext> const context_;
    css::uno::WeakReference<css::frame::XFrame> frame_;
};

} // namespace

// Named in the package's components file; with the entry point below the only symbol that the library exports.
extern "C" SAL_DLLPUBLIC_EXPORT css::uno::XInterface* hearthcell_menu_create(css::uno::XComponentContext* context,
                                                                             Sequence<Any> const&) {
    return cppu::acquire(static_cast<cppu::OWeakObject*>(new Menu(context)));
}
