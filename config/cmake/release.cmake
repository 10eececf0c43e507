# First settings: what people run; no tests, asserts off. cmake -S . -B build/release -C config/cmake/release.cmake
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CMAKE_CXX_FLAGS_RELEASE "-O2 -DNDEBUG" CACHE STRING "")
set(PAIRSTAND_TESTS OFF CACHE BOOL "")
