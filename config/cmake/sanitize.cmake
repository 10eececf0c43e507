# First settings: every test under AddressSanitizer and UndefinedBehaviorSanitizer.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS "-D_GLIBCXX_ASSERTIONS" CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1" CACHE STRING "") # line numbers are all that a report needs; builds in half the time
set(PAIRSTAND_SANITIZE "address,undefined" CACHE STRING "")
