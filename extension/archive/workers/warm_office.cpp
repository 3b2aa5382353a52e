#include "extension/archive/workers/warm_office.hpp"

#include "extension/office/confinement.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/sheet/XFunctionAccess.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::archive {
namespace {

office::Settings settings(std::filesystem::path const& package) {
    // Everything is recalculated anyway, once and by our order: not while a file is opened. Several offices share the
    // processors, so that none needs threads. A preview picture in each copy would cost four times what saving costs.
    return {.package = package,
            .opening_ods = office::Recalculation::never,
            .opening_xlsx = office::Recalculation::never,
            .preferences = {{"Office.Common/Save/Document", "GenerateThumbnail", "false"},
                            {"Office.Common/Misc", "UseOpenCL", "false"},
                            {"Office.Common/Security/Scripting", "MacroSecurityLevel", "3"},
                            {"Office.Calc/Formula/Calculation", "UseThreadedCalculationForFormulaGroups", "false"},
                            // Whatever it would fetch from the net is asked for where nobody answers.
                            {"Inet/Settings", "ooInetProxyType", "2"},
                            {"Inet/Settings", "ooInetNoProxy", ""},
                            {"Inet/Settings", "ooInetHTTPProxyName", "127.0.0.1"},
                            {"Inet/Settings", "ooInetHTTPProxyPort", "9"},
                            {"Inet/Settings", "ooInetHTTPSProxyName", "127.0.0.1"},
                            {"Inet/Settings", "ooInetHTTPSProxyPort", "9"},
                            {"Inet/Settings", "ooInetFTPProxyName", "127.0.0.1"},
                            {"Inet/Settings", "ooInetFTPProxyPort", "9"}},
            .confining = office::confining(),
            .only_folder = std::filesystem::temp_directory_path()};
}

/// Without our functions every result would become an error.
void check_functions(office::Office const& office) {
    office::asking("calling Hearthcell in LibreOffice", [&] {
        Reference<css::sheet::XFunctionAccess> const calc(
            office.context()->getServiceManager()->createInstanceWithContext("com.sun.star.sheet.FunctionAccess",
                                                                             office.context()),
            UNO_QUERY_THROW);
        rtl::OUString edition;
        if (!(calc->callFunction("HEARTHCELL.STOVE.VERSION", {}) >>= edition))
            throw std::runtime_error("it does not answer");
    });
}

} // namespace

WarmOffice::WarmOffice(std::filesystem::path package, unsigned files_each, Watchdog& watchdog)
    : package_(std::move(package)), files_each_(files_each), watchdog_(watchdog) {}

WarmOffice::~WarmOffice() {
    watchdog_.watch(nullptr);
}

office::Office& WarmOffice::get() {
    if (office_ && !office_->alive())
        drop();
    if (!office_) {
        start();
    } else if (files_ >= files_each_) {
        watchdog_.watch(nullptr);
        try {
            office_->restart();
            files_ = 0;
            watchdog_.watch(office_.get());
        } catch (std::exception const&) { // a fresh profile, then
            drop();
            start();
        }
    }
    ++files_;
    return *office_;
}

void WarmOffice::start() {
    try {
        office_ = std::make_unique<office::Office>(settings(package_));
        check_functions(*office_);
    } catch (std::exception const& problem) {
        office_.reset();
        throw NoOffice(problem.what());
    }
    files_ = 0;
    watchdog_.watch(office_.get());
}

void WarmOffice::drop() {
    watchdog_.watch(nullptr);
    if (office_)
        office_->kill();
    office_.reset();
}

} // namespace hearthcell::archive
