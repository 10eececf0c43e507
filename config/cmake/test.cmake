# First settings: what people run, with its tests.
include(${CMAKE_CURRENT_LIST_DIR}/release.cmake)
set(PAIRSTAND_TESTS ON CACHE BOOL "" FORCE)
set(PAIRSTAND_PRECOMPILE "tests" CACHE STRING "")
