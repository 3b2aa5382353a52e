#include "extension/office/questions.hpp"

#include "extension/office/text.hpp"

#include <com/sun/star/task/DocumentMSPasswordRequest.hpp>
#include <com/sun/star/task/DocumentPasswordRequest.hpp>
#include <com/sun/star/task/ErrorCodeRequest.hpp>
#include <com/sun/star/task/PasswordRequest.hpp>
#include <com/sun/star/task/XInteractionAbort.hpp>
#include <com/sun/star/task/XInteractionRequest.hpp>

namespace css = com::sun::star;

namespace hearthcell::office {
namespace {

void refuse(css::uno::Reference<css::task::XInteractionRequest> const& request) {
    for (auto const& answer : request->getContinuations()) {
        css::uno::Reference<css::task::XInteractionAbort> const abort(answer, css::uno::UNO_QUERY);
        if (abort.is()) {
            abort->select();
            return;
        }
    }
}

/// What the request says of itself. Error codes are the office's own and hardly documented; better than nothing.
std::string words(css::uno::Any const& asked) {
    css::task::ErrorCodeRequest code;
    if (asked >>= code)
        return "LibreOffice's error " + std::to_string(code.ErrCode);
    css::uno::Exception general;
    if ((asked >>= general) && !general.Message.isEmpty())
        return narrow(general.Message);
    return narrow(asked.getValueTypeName());
}

} // namespace

void Questions::handle(css::uno::Reference<css::task::XInteractionRequest> const& request) {
    css::uno::Any const asked = request->getRequest();
    {
        std::lock_guard const hold(guard_);
        css::task::PasswordRequest plain;
        css::task::DocumentPasswordRequest of_document;
        css::task::DocumentMSPasswordRequest of_other_format;
        // Types that derive from these are taken by >>=, too.
        if ((asked >>= plain) || (asked >>= of_document) || (asked >>= of_other_format))
            password_ = true;
        else
            said_ += (said_.empty() ? "" : "; ") + words(asked);
    }
    refuse(request);
}

bool Questions::password_wanted() const {
    std::lock_guard const hold(guard_);
    return password_;
}

std::string Questions::messages() const {
    std::lock_guard const hold(guard_);
    return said_.empty() ? std::string() : " (" + said_ + ")";
}

} // namespace hearthcell::office
