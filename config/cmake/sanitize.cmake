# First settings: every test under AddressSanitizer and UndefinedBehaviorSanitizer, and the fuzz targets of libFuzzer. With
# clang, which is the only one to have both and takes half of GCC's time with them.
set(CMAKE_C_COMPILER clang CACHE STRING "")
set(CMAKE_CXX_COMPILER clang++ CACHE STRING "")
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS "-D_GLIBCXX_ASSERTIONS" CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1" CACHE STRING "") # line numbers are all that a report needs; builds in half the time
set(PAIRSTAND_SANITIZE "address,undefined" CACHE STRING "")
set(PAIRSTAND_PRECOMPILE "all" CACHE STRING "")
set(PAIRSTAND_FUZZ ON CACHE BOOL "")
