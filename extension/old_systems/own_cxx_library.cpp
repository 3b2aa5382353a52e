// What the C++ library would bring along that an add-in may not have: it is linked in, so these take their places.

#include <cstdlib>

/// The words of an exception, which it would look up in the files of a translation. Nobody reads them.
extern "C" char* __wrap_gettext(char const*);
extern "C" char* __wrap_gettext(char const* words) {
    return const_cast<char*>(words);
}

/// Newer C libraries tell by this whether the process has one thread only, in which numbers can be counted faster. An
/// office has several.
extern "C" char const __libc_single_threaded;
extern "C" char const __libc_single_threaded = 0;

/// Where an object is called that is not made yet. It would write a line.
extern "C" void __cxa_pure_virtual();
extern "C" void __cxa_pure_virtual() {
    std::abort();
}

namespace __gnu_cxx {

/// Where no exception may be and one is. It would print its type, by way of a whole reader of names.
void __verbose_terminate_handler();
void __verbose_terminate_handler() {
    std::abort();
}

} // namespace __gnu_cxx
