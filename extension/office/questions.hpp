#pragma once
// Answers for an office that nobody sits before.

#include <com/sun/star/task/XInteractionHandler.hpp>
#include <cppuhelper/implbase1.hxx>

#include <mutex>
#include <string>

namespace hearthcell::office {

/// Stands where a person would be asked while a file is opened. Says 'no' to every question, so that nothing waits for
/// an answer, and remembers what was asked: that is the reason why a file could not be opened.
class Questions : public cppu::WeakImplHelper1<com::sun::star::task::XInteractionHandler> {
public:
    void SAL_CALL
    handle(com::sun::star::uno::Reference<com::sun::star::task::XInteractionRequest> const& request) override;

    [[nodiscard]] bool password_wanted() const;
    [[nodiscard]] std::string messages() const; // " (…)", empty when nothing was said

private:
    mutable std::mutex guard_; // the office calls from a thread of its connection
    bool password_ = false;
    std::string said_;
};

} // namespace hearthcell::office
