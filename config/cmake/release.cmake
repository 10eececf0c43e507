# First settings: what people run. cmake -S . -B build -C config/cmake/release.cmake
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CMAKE_INTERPROCEDURAL_OPTIMIZATION OFF CACHE BOOL "")
