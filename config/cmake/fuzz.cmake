# First settings: the fuzz targets alone, with clang's libFuzzer and the sanitizers.
set(CMAKE_C_COMPILER clang CACHE STRING "")
set(CMAKE_CXX_COMPILER clang++ CACHE STRING "")
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS "-D_GLIBCXX_ASSERTIONS" CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1" CACHE STRING "")
set(PAIRSTAND_SANITIZE "address,undefined,fuzzer-no-link" CACHE STRING "")
set(PAIRSTAND_TESTS OFF CACHE BOOL "")
set(PAIRSTAND_FUZZ ON CACHE BOOL "")
