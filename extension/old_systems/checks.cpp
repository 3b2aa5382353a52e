// Where the checks inside of C++'s containers end a process that has spoilt its memory. The C++ library has this from
// gcc 12 on.

#include <cassert>
#include <cstddef> // for the library's own declaration of it

namespace std {

void __glibcxx_assert_fail(char const* file, int line, char const* function, char const* condition) noexcept {
    ::__assert_fail(condition, file, unsigned(line), function);
}

} // namespace std
