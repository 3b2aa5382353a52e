// Mathematics by the names that glibc has had from its first edition for a processor. Since 2.29 exp, log and pow
// (hypot since 2.35) are there a second time, without the old ways of telling errors, and a program that is linked
// today gets those, so that it does not start on an older system. Both compute the same, to the last bit. The linker
// sends every call here
// (--wrap).

#if defined(__x86_64__)
#define HEARTHCELL_FIRST_EDITION "GLIBC_2.2.5"
#elif defined(__aarch64__)
#define HEARTHCELL_FIRST_EDITION "GLIBC_2.17"
#else
#error "say which edition of glibc was the first for this processor"
#endif

__asm__(".symver first_exp, exp@" HEARTHCELL_FIRST_EDITION);
__asm__(".symver first_hypot, hypot@" HEARTHCELL_FIRST_EDITION);
__asm__(".symver first_log, log@" HEARTHCELL_FIRST_EDITION);
__asm__(".symver first_pow, pow@" HEARTHCELL_FIRST_EDITION);

extern "C" {

double first_exp(double);
double first_hypot(double, double);
double first_log(double);
double first_pow(double, double);

double __wrap_exp(double);
double __wrap_hypot(double, double);
double __wrap_log(double);
double __wrap_pow(double, double);

double __wrap_exp(double x) {
    return first_exp(x);
}
double __wrap_hypot(double x, double y) {
    return first_hypot(x, y);
}
double __wrap_log(double x) {
    return first_log(x);
}
double __wrap_pow(double x, double y) {
    return first_pow(x, y);
}
}
