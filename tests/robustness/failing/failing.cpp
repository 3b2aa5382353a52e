// Loaded before other libraries (LD_PRELOAD): lets one allocation, or one write, of hearthcell-archive fail.
//   FAILING=allocation|write   what
//   FAILING_IN=scheduler|worker   in which of its processes; LibreOffice and others are left alone
//   FAILING_AT=N   the Nth since main() or the fork
// When it has happened, the file that FAILING_SAYS names is there.

#include <dlfcn.h>
#include <fcntl.h>
#include <pthread.h>
#include <stdlib.h>
#include <string.h>
#include <sys/uio.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>

extern "C" {
void* __libc_malloc(std::size_t size);
void* __libc_calloc(std::size_t count, std::size_t size);
void* __libc_realloc(void* memory, std::size_t size);
}

namespace {

enum class What { nothing, allocation, write };

What what = What::nothing;
bool wanted_in_worker = false;
std::atomic<bool> counting = false;
std::atomic<long> until = 0;
char const* says = nullptr;

bool fails_now(What kind) {
    if (!counting || kind != what || --until != 0)
        return false;
    ::close(::open(says, O_WRONLY | O_CREAT | O_CLOEXEC, 0666));
    return true;
}

void in_child() {
    counting = wanted_in_worker;
}

template <class Function> Function* next(char const* name) {
    return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, name));
}

bool is(char const* variable, char const* value) {
    char const* const text = ::getenv(variable);
    return text != nullptr && ::strcmp(text, value) == 0;
}

using Main = int(int, char**, char**);
Main* true_main = nullptr;

int counted_main(int count, char** words, char** environment) {
    char const *const at = ::getenv("FAILING_AT"), *const name = ::strrchr(words[0], '/');
    says = ::getenv("FAILING_SAYS");
    if (at != nullptr && says != nullptr && name != nullptr && ::strcmp(name, "/hearthcell-archive") == 0) {
        what = is("FAILING", "write") ? What::write : What::allocation;
        wanted_in_worker = is("FAILING_IN", "worker");
        until = ::atol(at);
        ::pthread_atfork(nullptr, nullptr, in_child);
        counting = !wanted_in_worker;
    }
    return true_main(count, words, environment);
}

} // namespace

#define EXPORTED extern "C" __attribute__((visibility("default")))

EXPORTED int __libc_start_main(Main* main, int count, char** words, void (*init)(), void (*fini)(), void (*end)(),
                               void* stack) {
    true_main = main;
    using Start = int(Main*, int, char**, void (*)(), void (*)(), void (*)(), void*);
    return next<Start>("__libc_start_main")(counted_main, count, words, init, fini, end, stack);
}

// What libraries do as they are loaded is not ours: one of them (GLib) ends the process when it finds no memory.
EXPORTED void* dlopen(char const* file, int mode) {
    static auto* const real = next<void*(char const*, int)>("dlopen");
    bool const before = counting.exchange(false);
    void* const library = real(file, mode);
    counting = before;
    return library;
}

EXPORTED void* malloc(std::size_t size) {
    if (fails_now(What::allocation)) {
        errno = ENOMEM;
        return nullptr;
    }
    return __libc_malloc(size);
}

EXPORTED void* calloc(std::size_t count, std::size_t size) {
    if (fails_now(What::allocation)) {
        errno = ENOMEM;
        return nullptr;
    }
    return __libc_calloc(count, size);
}

EXPORTED void* realloc(void* memory, std::size_t size) {
    if (fails_now(What::allocation)) {
        errno = ENOMEM;
        return nullptr;
    }
    return __libc_realloc(memory, size);
}

EXPORTED ssize_t write(int file, void const* bytes, std::size_t size) {
    if (fails_now(What::write)) {
        errno = ENOSPC;
        return -1;
    }
    static auto* const real = next<ssize_t(int, void const*, std::size_t)>("write");
    return real(file, bytes, size);
}

EXPORTED ssize_t writev(int file, iovec const* parts, int count) {
    if (fails_now(What::write)) {
        errno = ENOSPC;
        return -1;
    }
    static auto* const real = next<ssize_t(int, iovec const*, int)>("writev");
    return real(file, parts, count);
}

EXPORTED int fsync(int file) {
    if (fails_now(What::write)) {
        errno = EIO;
        return -1;
    }
    static auto* const real = next<int(int)>("fsync");
    return real(file);
}

EXPORTED int rename(char const* from, char const* to) {
    if (fails_now(What::write)) {
        errno = EDQUOT;
        return -1;
    }
    static auto* const real = next<int(char const*, char const*)>("rename");
    return real(from, to);
}
