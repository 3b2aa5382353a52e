// The C++ library has this from gcc 11 on.

#include <new>

namespace std {

void __throw_bad_array_new_length() {
    throw bad_array_new_length();
}

} // namespace std
