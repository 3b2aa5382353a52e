# Linux on 64-bit ARM, by Debian's g++-aarch64-linux-gnu.
set(CMAKE_SYSTEM_NAME Linux)
set(CMAKE_SYSTEM_PROCESSOR aarch64)
set(CMAKE_CXX_COMPILER aarch64-linux-gnu-g++)
set(CMAKE_CXX_FLAGS_INIT -Wno-psabi) # says that something changed in gcc 10
set(CMAKE_FIND_ROOT_PATH_MODE_PROGRAM NEVER)
