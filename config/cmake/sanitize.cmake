# First settings: every test under AddressSanitizer and UndefinedBehaviorSanitizer.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS "-O1 -D_GLIBCXX_ASSERTIONS" CACHE STRING "")
set(PAIRSTAND_SANITIZE "address,undefined" CACHE STRING "")
