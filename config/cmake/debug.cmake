# First settings: what contributors build all day; asserts on, quick to compile, benchmarks with it.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS "-D_GLIBCXX_ASSERTIONS" CACHE STRING "")
set(PAIRSTAND_BENCH ON CACHE BOOL "")
