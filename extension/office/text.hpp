#pragma once
// Texts between ours and the office's, and its exceptions as ours.

#include <com/sun/star/lang/DisposedException.hpp>
#include <com/sun/star/uno/Exception.hpp>
#include <rtl/ustring.hxx>

#include <stdexcept>
#include <string>
#include <string_view>

namespace hearthcell::office {

/// The office ended, crashed or was killed while it was being asked something.
class Gone : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

rtl::OUString wide(std::string_view utf8);
std::string narrow(rtl::OUString const& text);

/// Does some work with the office. The office's exceptions are not std::exceptions: what is thrown here is one, and
/// says what was being done.
template <class Work> auto asking(std::string_view doing, Work work) {
    try {
        return work();
    } catch (com::sun::star::lang::DisposedException const& gone) {
        throw Gone(std::string(doing) + ": LibreOffice is gone (" + narrow(gone.Message) + ")");
    } catch (com::sun::star::uno::Exception const& problem) {
        throw std::runtime_error(std::string(doing) + ": " + narrow(problem.Message));
    }
}

} // namespace hearthcell::office
